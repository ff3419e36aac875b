// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.apidocs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an example states is really checked, wherever it stands. */
class ExampleWriterTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "int a = 1; // 3 | Stated.is(a, \"3\");",
        "a.plus(b); // 5 g | Stated.is(a.plus(b), \"5 g\");",
        "List<String> a = List.of(\"x;\"); // [x;] | Stated.is(a, \"[x;]\");",
        "Price.parse(\"x\"); // throws ProblemException"
            + " | Stated.fails(() -> { Price.parse(\"x\"); }, ProblemException.class);",
      })
  void stated_value_becomes_a_check(String code, String check) {
    assertThat(source(code)).contains(check);
    assertThat(source("// first a word\n" + code)).contains(check);
    assertThat(source("call();\n" + code + "\ncall();")).contains(check);
  }

  @Test
  void statement_over_several_lines_is_one() {
    assertThat(source("int a =\n    sum(\n        1, 2); // 3")).contains("Stated.is(a, \"3\");");
  }

  @Test
  void number_is_checked_to_its_digits() {
    assertThatCode(() -> Stated.is(0.5312, "0.53 m")).doesNotThrowAnyException();
    assertThatThrownBy(() -> Stated.is(0.536, "0.53 m")).isInstanceOf(AssertionError.class);
  }

  private static String source(String code) {
    return ExampleWriter.source(new ApiExample("Some", 1, code));
  }
}
