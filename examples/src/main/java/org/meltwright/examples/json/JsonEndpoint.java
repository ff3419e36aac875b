// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemData;
import org.meltwright.units.ProblemException;
import tools.jackson.databind.json.JsonMapper;

/**
 * A path of the JDK's own HTTP server that reads a draft and answers in JSON, in English, or in
 * German to those who ask for it first.
 *
 * <ul>
 *   <li>200: the result;
 *   <li>400: all problems of the draft;
 *   <li>404, 405 and 415, without a body: another path, a method that is not POST, content that is
 *       not {@code application/json};
 *   <li>413: the problem that the body is larger than {@link JsonTree#MOST_BYTES};
 *   <li>500: a defect, which is logged and of which the answer tells nothing.
 * </ul>
 *
 * @param <T> the draft record
 */
public final class JsonEndpoint<T extends Record> implements HttpHandler {

  private static final System.Logger LOG = System.getLogger(JsonEndpoint.class.getName());
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String NOTHING = "";
  private static final String DEFECT = "{\"error\":\"internal\"}";

  /** A body past its limit is read as far as this, so that who sent it comes to hear the answer. */
  private static final long MOST_DRAINED = 4L * JsonTree.MOST_BYTES;

  private final DraftReader<T> reader;
  private final BiFunction<T, Locale, ? extends Record> work;

  private record Reply(int status, String body) {}

  /**
   * Returns an endpoint.
   *
   * @param <T> the draft record
   * @param draft the draft record's class
   * @param work makes the result of a checked draft, in the reader's language
   * @return the endpoint
   */
  public static <T extends Record> JsonEndpoint<T> of(
      Class<T> draft, BiFunction<T, Locale, ? extends Record> work) {
    return new JsonEndpoint<>(DraftReader.validating(draft), work);
  }

  private JsonEndpoint(DraftReader<T> reader, BiFunction<T, Locale, ? extends Record> work) {
    this.reader = reader;
    this.work = work;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      send(exchange, reply(exchange));
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    if (!exchange.getRequestURI().getPath().equals(exchange.getHttpContext().getPath())) {
      return new Reply(404, NOTHING);
    } else if (!exchange.getRequestMethod().equals("POST")) {
      exchange.getResponseHeaders().add("Allow", "POST");
      return new Reply(405, NOTHING);
    }
    return isJson(exchange) ? worked(exchange) : new Reply(415, NOTHING);
  }

  private Reply worked(HttpExchange exchange) throws IOException {
    Locale locale = locale(exchange);
    try {
      return new Reply(200, JSON.writeValueAsString(answer(exchange, locale)));
    } catch (ProblemException e) {
      return new Reply(
          status(e, exchange), JSON.writeValueAsString(ProblemData.allOf(e.problems(), locale)));
    } catch (RuntimeException e) {
      LOG.log(System.Logger.Level.ERROR, "A request ended in a defect.", e);
      return new Reply(500, DEFECT);
    }
  }

  private static int status(ProblemException e, HttpExchange exchange) throws IOException {
    if (e.problems().stream().noneMatch(p -> p.code() == JsonProblem.TOO_LARGE)) {
      return 400;
    }
    drain(exchange.getRequestBody());
    return 413;
  }

  /** By reading: the JDK server's streams do not count what is skipped. */
  private static void drain(InputStream body) throws IOException {
    byte[] sink = new byte[8192];
    int read = 0;
    for (long left = MOST_DRAINED; left > 0 && read >= 0; left -= read) {
      read = body.read(sink);
    }
  }

  private Record answer(HttpExchange exchange, Locale locale) throws IOException {
    DraftReader.Reading<T> reading = reader.read(exchange.getRequestBody());
    List<Problem> problems = reading.problems();
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    return work.apply(reading.draft(), locale);
  }

  private static Locale locale(HttpExchange exchange) {
    String wanted = exchange.getRequestHeaders().getFirst("Accept-Language");
    return wanted != null && wanted.matches("(?i)de\\b.*") ? Locale.GERMAN : Locale.ENGLISH;
  }

  private static boolean isJson(HttpExchange exchange) {
    String type = exchange.getRequestHeaders().getFirst("Content-Type");
    return type != null && type.matches("(?i)\\s*application/json\\s*(;.*)?");
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    if (reply.body().isEmpty()) {
      exchange.sendResponseHeaders(reply.status(), -1);
      return;
    }
    byte[] bytes = reply.body().getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().add("Content-Type", "application/json");
    exchange.sendResponseHeaders(reply.status(), bytes.length);
    exchange.getResponseBody().write(bytes);
  }
}
