// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.examples.json.DraftReader.Reading;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

class DraftReaderTest {

  record ShelfDraft(
      @NotBlank @Nullable String name,
      @Positive @Nullable Integer count,
      @Nullable Boolean open,
      @Nullable List<@NotNull @Valid ShelfDraft> below,
      @Nullable Map<String, String> notes) {}

  private static Reading<ShelfDraft> read(String json) throws IOException {
    return DraftReader.validating(ShelfDraft.class)
        .read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void read_a_good_text_gives_the_draft_and_no_problem() throws IOException {
    Reading<ShelfDraft> reading =
        read("{\"name\":\"a\",\"count\":2,\"open\":true,\"notes\":{\"x\":\"y\"}}");

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.draft()).isEqualTo(new ShelfDraft("a", 2, true, null, Map.of("x", "y")));
  }

  @Test
  void read_reports_all_problems_at_once_each_at_its_path() throws IOException {
    Reading<ShelfDraft> reading =
        read(
            "{\"name\":7,\"nmae\":\"a\",\"count\":-1,"
                + "\"below\":[{\"count\":1.5},{\"name\":\"b\",\"name\":\"c\"}],\"notes\":{\"x\":1}}");

    assertThat(reading.problems())
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactlyInAnyOrder(
            "/name json.wrong-type",
            "/nmae json.unknown-field",
            "/count json.invalid-value",
            "/below/0/count json.wrong-type",
            "/below/0/name json.missing-field",
            "/below/1/name json.duplicate-key",
            "/notes/x json.wrong-type");
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "[1]", "\"\"", "1", "1.5", "true", " null "})
  void read_what_is_no_object_is_refused(String json) {
    assertThatThrownBy(() -> read(json))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems())
                    .singleElement()
                    .satisfies(p -> assertThat(p.code()).isEqualTo(JsonProblem.WRONG_TYPE))
                    .satisfies(
                        p -> assertThat(p.allowed(Locale.ENGLISH)).contains("curly brackets")));
  }

  @ParameterizedTest
  @CsvSource({"'',EMPTY", "' ',EMPTY", "nul,BARE_WORD", "{,ENDS_EARLY", "{} {},SYNTAX"})
  void read_what_is_no_json_is_refused(String json, JsonProblem code) {
    assertThatThrownBy(() -> read(json))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems()).extracting(Problem::code).containsExactly(code));
  }

  @Test
  void read_a_null_where_a_record_is_needed_is_a_problem() throws IOException {
    assertThat(read("{\"name\":\"a\",\"below\":[null]}").problems())
        .extracting(p -> p.path() + " " + p.code().id())
        .containsExactly("/below/0 json.missing-field");
  }
}
