// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.units.constraint.ConstraintProblem;

class ProblemTest {

  private static Properties bundle(Class<?> anchor, String language) throws IOException {
    Properties texts = new Properties();
    try (Reader reader =
        new InputStreamReader(
            anchor.getResourceAsStream("messages_" + language + ".properties"),
            StandardCharsets.UTF_8)) {
      texts.load(reader);
    }
    return texts;
  }

  @Test
  void both_languages_have_the_same_texts_with_the_same_places() throws IOException {
    for (Class<?> anchor : List.of(UnitsProblem.class, ConstraintProblem.class)) {
      Properties english = bundle(anchor, "en");
      Properties german = bundle(anchor, "de");
      german.keySet().removeIf(key -> key.toString().startsWith("what."));

      assertThat(german.keySet()).isEqualTo(english.keySet());
      for (String key : english.stringPropertyNames()) {
        assertThat(places(german.getProperty(key)))
            .as(key)
            .isEqualTo(places(english.getProperty(key)));
      }
    }
  }

  private static Set<String> places(String text) {
    return Pattern.compile("\\{[^}]*}")
        .matcher(text)
        .results()
        .map(place -> place.group())
        .collect(java.util.stream.Collectors.toSet());
  }

  @ParameterizedTest
  @EnumSource(UnitsProblem.class)
  void each_code_speaks_both_languages(UnitsProblem code) {
    speaks(code);
  }

  @ParameterizedTest
  @EnumSource(ConstraintProblem.class)
  void each_code_of_the_constraints_speaks_both_languages(ConstraintProblem code) {
    speaks(code);
  }

  private static void speaks(ProblemCode code) {
    Problem problem = Problem.of(code, "x");
    for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      assertThat(problem.what(locale)).isNotBlank();
      assertThat(problem.remedy(locale)).isNotBlank();
    }
    assertThat(problem.what(Locale.GERMAN)).isNotEqualTo(problem.what(Locale.ENGLISH));
    assertThat(code.id()).matches("[a-z-]+\\.[a-z-]+");
  }

  @Test
  void each_kind_has_a_name_in_both_languages() {
    for (QuantityKind<?> kind : QuantityKind.all()) {
      assertThat(kind.name(Locale.ENGLISH)).startsWith("a");
      assertThat(kind.name(Locale.GERMAN)).startsWith("ein");
    }
    assertThat(QuantityKind.MASS.name(Locale.FRENCH)).isEqualTo("a mass");
  }

  @Test
  void under_prepends_the_pointer_and_keeps_the_rest() {
    Problem problem = Problem.of(UnitsProblem.TEXT_EMPTY, "").under("/amount").under("/recipes/0");

    assertThat(problem.path()).isEqualTo("/recipes/0/amount");
    assertThat(problem.toString()).startsWith("/recipes/0/amount: text.empty: There is no text.");
    assertThat(problem)
        .isEqualTo(Problem.of(UnitsProblem.TEXT_EMPTY, "").under("/recipes/0/amount"));
    assertThat(problem)
        .hasSameHashCodeAs(Problem.of(UnitsProblem.TEXT_EMPTY, "").under("/recipes/0/amount"));
  }

  @Test
  void an_exception_carries_many_problems_and_at_least_one() {
    Problem first = Problem.of(UnitsProblem.TEXT_EMPTY, "");
    Problem second = Problem.of(UnitsProblem.NUMBER_MALFORMED, "x");
    ProblemException both = new ProblemException(List.of(first, second)).under("/a");

    assertThat(both.problems()).containsExactly(first.under("/a"), second.under("/a"));
    assertThat(both.getMessage()).hasLineCount(2).contains("text.empty", "number.malformed");
    assertThatThrownBy(() -> new ProblemException(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void found_text_is_shown_short_and_on_one_line() {
    assertThat(Shown.text("a\nb\u202ec")).isEqualTo("a\ufffdb\ufffdc");
    assertThat(Shown.text("x".repeat(500))).hasSize(61).endsWith("…");
  }

  @Test
  void a_guard_names_its_value_in_the_readers_language() {
    ProblemException refused =
        org.assertj.core.api.Assertions.catchThrowableOfType(
            ProblemException.class, () -> UnitsProblem.CHECK.between(-1, 0, 1, "mass in kg"));
    Problem problem = refused.problems().get(0);

    assertThat(problem.what(java.util.Locale.GERMAN)).contains("Masse in kg");
    assertThat(problem.what(java.util.Locale.ENGLISH)).contains("mass in kg");
  }
}
