// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemData;
import org.meltwright.units.ProblemException;
import tools.jackson.databind.json.JsonMapper;

/**
 * A path of the JDK's own HTTP server that reads a draft and answers with a result (200) or with
 * all problems (400), in English, or in German to those who ask for it first.
 *
 * @param <T> the draft record
 */
public final class JsonEndpoint<T extends Record> implements HttpHandler {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final DraftReader<T> reader;
  private final BiFunction<T, Locale, ? extends Record> work;

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
    return new JsonEndpoint<>(DraftReader.of(draft), work);
  }

  private JsonEndpoint(DraftReader<T> reader, BiFunction<T, Locale, ? extends Record> work) {
    this.reader = reader;
    this.work = work;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Locale locale = locale(exchange);
      try {
        send(exchange, 200, answer(exchange, locale));
      } catch (ProblemException e) {
        send(exchange, 400, ProblemData.allOf(e.problems(), locale));
      }
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

  private static void send(HttpExchange exchange, int status, Object body) throws IOException {
    byte[] bytes = JSON.writeValueAsBytes(body);
    exchange.getResponseHeaders().add("Content-Type", "application/json");
    exchange.sendResponseHeaders(status, bytes.length);
    exchange.getResponseBody().write(bytes);
  }
}
