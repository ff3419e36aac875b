// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.ProblemException;

class IdentifierSchemeTest {

  @ParameterizedTest
  @CsvSource({
    "CAS, 8012-89-3, true",
    "CAS, 8012-89-4, false",
    "CAS, 8012893, false",
    "CAS, 7732-18-5, true",
    "CAS, '', false",
    "EC, 232-383-7, true",
    "EC, 232-383-8, false",
    "EC, 231-791-2, true",
    "COLOUR_INDEX_NAME, PW6, true",
    "COLOUR_INDEX_NAME, PBk7, true",
    "COLOUR_INDEX_NAME, PV19:1, true",
    "COLOUR_INDEX_NAME, XW6, false",
    "COLOUR_INDEX_NUMBER, 77891, true",
    "COLOUR_INDEX_NUMBER, 7789, false",
  })
  void accepts_text_byItsFormAndCheckDigit(IdentifierScheme scheme, String text, boolean good) {
    assertThat(scheme.accepts(text)).isEqualTo(good);
  }

  /** The worked number of the documentation: 83 ends in 3. */
  @Test
  void casCheckDigit_ofBleachedBeeswax_is3() {
    int sum = 9 * 1 + 8 * 2 + 2 * 3 + 1 * 4 + 0 * 5 + 8 * 6;
    assertThat(sum).isEqualTo(83);
    assertThat(IdentifierScheme.CAS.require("8012-89-3")).isEqualTo("8012-89-3");
  }

  @Test
  void require_wrongCheckDigit_isAProblem() {
    assertThatThrownBy(() -> Material.builder("x").cas("8012-89-4"))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.IDENTIFIER));
  }

  @Test
  void oneDigitChanged_inAnyCasOfTheCatalogue_isNoticed() {
    int tried = 0;
    for (Material material : MaterialCatalogue.standard().all()) {
      for (var cas : material.identifiers(IdentifierScheme.CAS)) {
        String wrong = oneDigitMore(cas.value());
        tried++;
        assertThat(IdentifierScheme.CAS.accepts(wrong)).as(wrong).isFalse();
      }
    }
    assertThat(tried).isGreaterThan(50);
  }

  /** Raises the digit before the check digit, whose weight is 1. */
  private static String oneDigitMore(String cas) {
    int place = cas.length() - 3;
    int digit = (cas.charAt(place) - '0' + 1) % 10;
    return cas.substring(0, place) + digit + cas.substring(place + 1);
  }
}
