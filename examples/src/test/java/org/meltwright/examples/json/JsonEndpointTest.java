// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import jakarta.validation.constraints.NotBlank;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an endpoint answers over HTTP, also to those who ask wrongly, slowly or too much. */
class JsonEndpointTest {

  private static final int LIMIT_SECONDS = 2;

  record Greeting(@NotBlank @Nullable String name) {}

  record Answer(String text) {}

  private HttpServer server;

  /** The limit is read when the first server of the process is made. */
  @BeforeAll
  static void shorten() {
    System.setProperty(LoopbackServer.LIMIT, Integer.toString(LIMIT_SECONDS));
  }

  @BeforeEach
  void start() throws IOException {
    server = LoopbackServer.create(0);
    server.createContext(
        "/greet", JsonEndpoint.of(Greeting.class, (g, locale) -> new Answer(greeting(g.name()))));
    server.start();
  }

  private static String greeting(@Nullable String name) {
    if ("Nobody".equals(name)) {
      throw new IllegalStateException("the secret of nobody");
    }
    return "Hello " + name;
  }

  @AfterEach
  void stop() {
    server.stop(0);
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(
            URI.create("http://localhost:" + server.getAddress().getPort() + path))
        .timeout(Duration.ofSeconds(30));
  }

  private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String json) throws Exception {
    return send(
        request("/greet")
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(json)));
  }

  @Test
  void a_good_draft_is_answered_with_the_result() throws Exception {
    HttpResponse<String> answer = post("{\"name\":\"Ada\"}");

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/json");
    assertThat(answer.body()).isEqualTo("{\"text\":\"Hello Ada\"}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "\"\"", "1", "true", "", "{}", "{\"name\":null}"})
  void what_is_no_draft_is_answered_with_a_problem(String json) throws Exception {
    HttpResponse<String> answer = post(json);

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("\"json.");
  }

  @Test
  void a_defect_is_logged_and_the_answer_tells_nothing_of_it() throws Exception {
    Logger logger = Logger.getLogger(JsonEndpoint.class.getName());
    List<LogRecord> logged = new ArrayList<>();
    Handler handler = handler(logged);
    logger.addHandler(handler);
    logger.setUseParentHandlers(false);
    try {
      HttpResponse<String> answer = post("{\"name\":\"Nobody\"}");

      assertThat(answer.statusCode()).isEqualTo(500);
      assertThat(answer.body()).isEqualTo("{\"error\":\"internal\"}");
    } finally {
      logger.setUseParentHandlers(true);
      logger.removeHandler(handler);
    }
    assertThat(logged)
        .singleElement()
        .satisfies(r -> assertThat(r.getThrown()).hasMessage("the secret of nobody"));
    assertThat(post("{\"name\":\"Ada\"}").statusCode()).isEqualTo(200);
  }

  private static Handler handler(List<LogRecord> logged) {
    return new Handler() {
      @Override
      public void publish(LogRecord entry) {
        logged.add(entry);
      }

      @Override
      public void flush() {}

      @Override
      public void close() {}
    };
  }

  @ParameterizedTest
  @ValueSource(strings = {"GET", "HEAD", "PUT", "DELETE", "OPTIONS"})
  void a_method_that_is_not_post_is_told_which_is_allowed(String method) throws Exception {
    HttpResponse<String> answer = send(request("/greet").method(method, BodyPublishers.noBody()));

    assertThat(answer.statusCode()).isEqualTo(405);
    assertThat(answer.headers().firstValue("Allow")).hasValue("POST");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/greeting", "/greet/anything", "/greet/", "/"})
  void another_path_is_not_found(String path) throws Exception {
    HttpResponse<String> answer =
        send(
            request(path)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString("{\"name\":\"Ada\"}")));

    assertThat(answer.statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @CsvSource({
    "application/json, 200",
    "Application/JSON; charset=utf-8, 200",
    "application/json-seq, 415",
    "text/plain, 415",
    "application/x-www-form-urlencoded, 415"
  })
  void only_json_is_taken(String type, int status) throws Exception {
    HttpResponse<String> answer =
        send(
            request("/greet")
                .header("Content-Type", type)
                .POST(BodyPublishers.ofString("{\"name\":\"Ada\"}")));

    assertThat(answer.statusCode()).isEqualTo(status);
  }

  @Test
  void content_of_no_stated_type_is_not_taken() throws Exception {
    HttpResponse<String> answer = send(request("/greet").POST(BodyPublishers.ofString("{}")));

    assertThat(answer.statusCode()).isEqualTo(415);
  }

  @ParameterizedTest
  @ValueSource(ints = {JsonTree.MOST_BYTES + 1, 3 * JsonTree.MOST_BYTES})
  void a_body_past_the_limit_is_too_large(int bytes) throws Exception {
    HttpResponse<String> answer = post(" ".repeat(bytes));

    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(answer.body()).contains("json.too-large");
  }

  @Test
  void a_body_at_the_limit_is_read() throws Exception {
    String json = "{\"name\":\"Ada\"}";

    assertThat(post(json + " ".repeat(JsonTree.MOST_BYTES - json.length())).statusCode())
        .isEqualTo(200);
  }

  /** A client that says it will send ten bytes and sends one. */
  private Socket slowClient() throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.getAddress().getPort());
    String head =
        "POST /greet HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
            + "Content-Length: 10\r\n\r\n{";
    socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
    socket.getOutputStream().flush();
    return socket;
  }

  @Test
  @Timeout(30)
  void a_slow_client_stops_nobody() throws Exception {
    try (Socket slow = slowClient()) {
      assertThat(post("{\"name\":\"Ada\"}").statusCode()).isEqualTo(200);
      assertThat(slow.isConnected()).isTrue();
    }
  }

  @Test
  @Timeout(30)
  void a_client_that_is_too_slow_loses_its_connection() throws Exception {
    try (Socket slow = slowClient()) {
      slow.setSoTimeout(20_000);

      assertThat(slow.getInputStream().read()).isEqualTo(-1);
    }
  }
}
