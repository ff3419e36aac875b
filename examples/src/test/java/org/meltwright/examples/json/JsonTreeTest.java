// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

class JsonTreeTest {

  private static InputStream text(String json) {
    return new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8));
  }

  private static Problem refusal(InputStream in) {
    try {
      JsonTree.read(in);
    } catch (ProblemException e) {
      return e.problems().get(0);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    throw new AssertionError("was read");
  }

  /** What was typed, the code of what is told, the place, and what is shown of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"a": 1,↵  "b" 2}          | json.syntax          | 2 | 7  | 2
          {"a": 1,↵  "b": 2 "c": 3}  | json.comma-missing   | 2 | 10 | "c": 3}
          {"a": [1↵ [2]]}            | json.comma-missing   | 2 | 2  | [2]]}
          {"a":↵ [1, 2               | json.ends-early      | 2 | 7  | [1, 2
          {"a": "b                   | json.ends-early      | 1 | 9  | {"a": "b
          {↵"a": NaN}                | json.bare-word       | 2 | 9  | NaN
          {↵"a": -Infinity, "b": 1}  | json.bare-word       | 2 | 15 | -Infinity
          {"a": yes}                 | json.bare-word       | 1 | 7  | yes
          {"a": TRUE}                | json.bare-word       | 1 | 7  | TRUE
          wax: 730 g                 | json.bare-word       | 1 | 1  | wax
          {a: 1}                     | json.bare-word       | 1 | 2  | a
          {"a": 1,}                  | json.comma-too-many  | 1 | 9  | {"a": 1,}
          {"a": [1, 2,]}             | json.comma-too-many  | 1 | 13 | {"a": [1, 2,]
          {"a": 1,, "b": 2}          | json.comma-too-many  | 1 | 9  | {"a": 1,,
          {"a": “b”}                 | json.quotation-marks | 1 | 7  | “
          {„a“: 1}                   | json.quotation-marks | 1 | 2  | „
          {'a': 1}                   | json.quotation-marks | 1 | 2  | '
          {"é": 1, // one↵ "b": 2}   | json.comment         | 1 | 10 | // one
          {↵# one↵ "b": 2}           | json.comment         | 2 | 1  | # one
          {"a": 1} {"b": 2}          | json.syntax          | 1 | 10 | {"b": 2}
          <html>                     | json.syntax          | 1 | 1  | <
          """)
  void read_tells_a_slip_in_the_words_of_who_typed_it(
      String typed, String code, String line, String column, String found) {
    Problem problem = refusal(text(typed.replace('↵', '\n')));

    assertThat(problem.code().id()).isEqualTo(code);
    assertThat(problem.details()).containsEntry("line", line).containsEntry("column", column);
    assertThat(problem.found(Locale.ENGLISH)).isEqualTo(found);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n\t"})
  void read_an_empty_text_is_told_so(String empty) {
    assertThat(refusal(text(empty)).code()).isEqualTo(JsonProblem.EMPTY);
  }

  @Test
  void read_another_encoding_is_told_so_with_its_line() {
    byte[] latin = "{\n \"town\": \"Überlingen\" }".getBytes(StandardCharsets.ISO_8859_1);
    Problem problem = refusal(new ByteArrayInputStream(latin));

    assertThat(problem.code()).isEqualTo(JsonProblem.ENCODING);
    assertThat(problem.details()).containsEntry("line", "2");
    assertThat(problem.remedy(Locale.GERMAN)).contains("UTF-8");
  }

  @Test
  void read_finds_every_double_key_and_keeps_the_first_value() throws IOException {
    JsonTree tree = JsonTree.read(text("{\"a\":1,\"a\":2,\"b/c\":{\"d\":3,\"d\":4}}"));

    assertThat(tree.problems()).extracting(Problem::path).containsExactly("/a", "/b~1c/d");
    assertThat(tree.root().get("a").asInt()).isEqualTo(1);
  }

  @Test
  void read_refuses_ten_thousand_levels_in_bounded_time() {
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> assertThat(refusal(text("[".repeat(10_000))).code()).isEqualTo(JsonProblem.TOO_DEEP));
  }

  @Test
  void read_refuses_fifty_megabytes_after_reading_one() {
    long[] served = {0};
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            throw new UnsupportedOperationException();
          }

          @Override
          public int read(byte[] buffer, int offset, int length) {
            if (served[0] > 50_000_000) {
              return -1;
            }
            Arrays.fill(buffer, offset, offset + length, (byte) ' ');
            served[0] += length;
            return length;
          }
        };

    assertThat(refusal(endless).code()).isEqualTo(JsonProblem.TOO_LARGE);
    assertThat(served[0]).isLessThan(JsonTree.MOST_BYTES + 10_000L);
  }

  @Test
  void read_a_huge_number_stays_a_number_that_no_field_takes() throws IOException {
    assertThat(JsonTree.read(text("{\"cups\": 1e400}")).root().get("cups").isInt()).isFalse();
    assertThat(JsonTree.read(text("{\"cups\": 99999999999999999999}")).root().get("cups").isInt())
        .isFalse();
  }

  @Test
  void read_of_a_stream_that_fails_says_so() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("gone");
          }

          @Override
          public int read(byte[] buffer, int offset, int length) throws IOException {
            throw new IOException("gone");
          }
        };

    assertThatThrownBy(() -> JsonTree.read(broken)).isInstanceOf(IOException.class);
  }
}
