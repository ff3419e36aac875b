// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemDataTest {

  private static Problem problem() {
    return catchThrowableOfType(
            ProblemException.class, () -> QuantityParser.localeFree().parseMass("8 fl oz US"))
        .problems()
        .get(0)
        .under("/recipes/0/amount");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr"})
  void of_anyLanguage_saysWhatTheProblemSays(String language) {
    Locale locale = Locale.forLanguageTag(language);
    Problem problem = problem();
    ProblemData data = ProblemData.of(problem, locale);

    assertThat(data.code()).isEqualTo("quantity.wrong-kind");
    assertThat(data.path()).isEqualTo("/recipes/0/amount");
    assertThat(data.found()).isEqualTo("8 fl oz US");
    assertThat(data.what()).isEqualTo(problem.what(locale)).isNotBlank();
    assertThat(data.allowed()).isEqualTo(problem.allowed(locale)).isNotBlank();
    assertThat(data.remedy()).isEqualTo(problem.remedy(locale)).isNotBlank();
  }

  @Test
  void allOf_severalProblems_keepsTheirOrder() {
    Problem empty = Problem.of(UnitsProblem.TEXT_EMPTY, "").under("/name");

    assertThat(ProblemData.allOf(List.of(problem(), empty), Locale.ENGLISH))
        .extracting(ProblemData::path)
        .containsExactly("/recipes/0/amount", "/name");
  }
}
