// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.WeighingSheetData;
import tools.jackson.databind.json.JsonMapper;

class SmallServiceTest {

  private HttpServer server;

  @BeforeEach
  void start() throws IOException {
    server = SmallService.start(0);
  }

  @AfterEach
  void stop() {
    server.stop(0);
  }

  private HttpResponse<String> post(String json) throws Exception {
    return post(json, "en-GB");
  }

  private HttpResponse<String> post(String json, String language) throws Exception {
    URI uri = URI.create("http://localhost:" + server.getAddress().getPort() + "/weigh");
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(uri)
                .header("Accept-Language", language)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(json))
                .build(),
            BodyHandlers.ofString());
  }

  @Test
  void a_good_question_is_answered_with_the_weighing_sheet() throws Exception {
    HttpResponse<String> answer =
        post(
            "{\"material\":\"beeswax-yellow\",\"to\":\"damar\",\"ratio\":\"1:8\",\"mass\":\"730 g\"}");

    assertThat(answer.statusCode()).isEqualTo(200);
    WeighingSheetData sheet =
        JsonMapper.builder().build().readValue(answer.body(), WeighingSheetData.class);
    assertThat(sheet.lines())
        .extracting(WeighingSheetData.Line::ingredient, WeighingSheetData.Line::exactKilograms)
        .containsExactly(tuple("beeswax-yellow", 0.73), tuple("damar", 0.09125));
    assertThat(sheet.printedTotalKilograms()).isEqualTo(0.821);
  }

  @Test
  void a_reader_of_german_is_answered_in_german() throws Exception {
    String good =
        "{\"material\":\"beeswax-yellow\",\"to\":\"damar\",\"ratio\":\"1:8\",\"mass\":\"730 g\"}";

    assertThat(post(good, "de-AT,de;q=0.9").body()).contains("Dammar").doesNotContain("Damar ");
    assertThat(post("{}", "de").body()).contains("fehlt");
  }

  @Test
  void a_bad_question_is_answered_with_all_problems_and_their_paths() throws Exception {
    HttpResponse<String> answer =
        post("{\"material\":\"\",\"mass\":\"8 fl oz US\",\"colour\":\"red\"}");

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body())
        .contains("\"/material\"", "\"/mass\"", "\"/colour\"", "\"/ratio\"", "quantity.wrong-kind");
  }

  @Test
  void an_unknown_material_is_answered_with_a_problem_too() throws Exception {
    HttpResponse<String> answer =
        post("{\"material\":\"beeswox\",\"to\":\"damar\",\"ratio\":\"1:8\",\"mass\":\"730 g\"}");

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("material.unknown");
  }

  @Test
  void text_that_is_no_json_is_a_problem_and_not_a_failure() throws Exception {
    assertThat(post("weigh me").body()).contains("json.bare-word");
  }
}
