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

  @ParameterizedTest
  @ValueSource(strings = {"{\"a\": 1,\n  \"b\" 2}", "{\"a\":\n [1, 2", "{\n\"a\": NaN}", "{}\n {}"})
  void read_names_line_and_column_of_broken_json(String json) {
    Problem problem = refusal(text(json));

    assertThat(problem.code()).isEqualTo(JsonProblem.SYNTAX);
    assertThat(problem.what(Locale.ENGLISH)).contains("line 2, column ");
    assertThat(Integer.parseInt(problem.details().get("column"))).isBetween(1, 12);
  }

  @Test
  void read_an_empty_text_is_refused() {
    assertThat(refusal(text("")).code()).isEqualTo(JsonProblem.SYNTAX);
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
