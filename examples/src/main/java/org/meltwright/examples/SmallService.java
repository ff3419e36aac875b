// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import jakarta.validation.constraints.NotBlank;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.examples.json.DraftReader;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.constraint.QuantityText;
import org.meltwright.units.constraint.TextKind;
import tools.jackson.databind.json.JsonMapper;

/** Answers: how does an app embed the library behind HTTP? JSON in; results or all problems out. */
public final class SmallService {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** What is asked, as it was written. */
  record Question(
      @NotBlank @Nullable String material,
      @NotBlank @Nullable String to,
      @NotBlank @Nullable String ratio,
      @NotBlank @QuantityText(kind = TextKind.MASS, positive = true) @Nullable String mass) {}

  private SmallService() {}

  /**
   * Serves on the loopback interface until stopped.
   *
   * @param args the port; 0 or none for any that is free
   * @throws IOException if the port is taken
   */
  public static void main(String[] args) throws IOException {
    HttpServer server = start(args.length == 0 ? 0 : Integer.parseInt(args[0]));
    System.out.println("POST to http://localhost:" + server.getAddress().getPort() + "/weigh");
  }

  static HttpServer start(int port) throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    server.createContext("/weigh", SmallService::answer);
    server.start();
    return server;
  }

  private static void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      List<Problem> problems;
      try {
        var reading = DraftReader.of(Question.class).read(exchange.getRequestBody());
        problems = reading.problems();
        if (problems.isEmpty()) {
          send(exchange, 200, weigh(reading.draft()));
          return;
        }
      } catch (ProblemException e) {
        problems = e.problems();
      }
      send(exchange, 400, problems.stream().map(SmallService::text).toList());
    }
  }

  private static Map<String, Double> weigh(Question question) {
    QuantityParser parser = QuantityParser.localeFree();
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    MixingRatio ratio =
        parser.parseMixingRatio(
            text(question.ratio()), text(question.to()), text(question.material()));
    Recipe recipe =
        Recipe.ofRatio(
            "mix",
            ratio,
            catalogue.require(ratio.firstSide()),
            catalogue.require(ratio.secondSide()));
    Batch batch =
        Batch.ofIngredient(
            recipe,
            catalogue.require(ratio.secondSide()),
            parser.parseMass(text(question.mass())),
            Losses.NONE);
    return batch.lines().stream()
        .collect(Collectors.toMap(l -> l.ingredient().name(), l -> l.massKilograms() * 1000));
  }

  private static String text(@Nullable String checked) {
    return checked == null ? "" : checked;
  }

  private static Map<String, String> text(Problem problem) {
    return Map.of(
        "code", problem.code().id(),
        "path", problem.path(),
        "what", problem.what(Locale.ENGLISH),
        "found", problem.found(),
        "allowed", problem.allowed(Locale.ENGLISH),
        "remedy", problem.remedy(Locale.ENGLISH));
  }

  private static void send(HttpExchange exchange, int status, Object body) throws IOException {
    byte[] bytes = JSON.writeValueAsBytes(body);
    exchange.getResponseHeaders().add("Content-Type", "application/json; charset=utf-8");
    exchange.sendResponseHeaders(status, bytes.length);
    exchange.getResponseBody().write(bytes);
  }
}
