// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may not go into the pot, and how much oil paint a mix takes: policy and common practice. */
class OrdinaryRulesTest {

  @ParameterizedTest
  @CsvSource({
    "10, ''",
    "11.9, ''",
    "12, NOTICE oil-paint-noted",
    "19.9, NOTICE oil-paint-noted",
    "20, CAUTION oil-paint-soft",
    "29.9, CAUTION oil-paint-soft",
    "30, NOTICE oil-paint-too-much",
    "50, NOTICE oil-paint-too-much",
  })
  void oil_paint_share_has_this_finding(double percent, String expected) {
    String mix = "mix beeswax-yellow " + (100 - percent) + ", oil-paint-titanium-white " + percent;
    HeatingReview review = Plans.review(mix + "; plate 80 +5; liquid 84");
    assertThat(String.join("|", oilPaint(review))).isEqualTo(expected);
    assertThat(review.isBlocked()).isEqualTo(percent >= 30);
  }

  @Test
  void usual_recipe_of_27_8_g_in_250_g_does_not_flicker() {
    HeatingReview review =
        Plans.review(
            "mix beeswax-yellow 222.2, damar 27.8, oil-paint-titanium-white 27.8; plate 80 +5; liquid 84");
    assertThat(oilPaint(review)).isEmpty();
  }

  private static List<String> oilPaint(HeatingReview review) {
    return review.findings().stream()
        .filter(f -> f.ruleId().startsWith("oil-paint"))
        .map(f -> f.severity() + " " + f.ruleId())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "'mix beeswax-yellow 9, acrylic-dispersion 1', acrylic",
    "'mix beeswax-yellow 99, water 1', water",
    "'mix beeswax-yellow 9, gum-turpentine 1', solvent",
    "'mix beeswax-yellow; pot steel plastic flat', plastic-lined-can",
  })
  void forbidden_blocks_by_a_rule_of_its_own(String plan, String rule) {
    HeatingReview review = Plans.review(plan + "; plate 80 +5; liquid 80");
    assertThat(review.finding(rule)).hasValueSatisfying(f -> assertThat(f.isBlocking()).isTrue());
    assertThat(review.isBlocked()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "mix beeswax-yellow; torch, true",
    "'mix beeswax-yellow 10, damar 1; torch', true",
    "'mix beeswax-yellow 8, damar 1; torch', false",
    "mix beeswax-yellow; lamp, false",
  })
  void low_heat_wax_under_a_torch_is_a_caution(String plan, boolean found) {
    HeatingReview review = Plans.review(plan);
    assertThat(review.finding("low-heat-wax-under-flame").isPresent()).isEqualTo(found);
  }

  @ParameterizedTest
  @CsvSource({
    "50, ''",
    "66.7, vessel-too-full",
    "66.6, ''",
    "89.9, vessel-too-full",
    "90, vessel-overflows",
    "101, vessel-overflows"
  })
  void vessel_holds_two_thirds(double percent, String expected) {
    HeatingReview review = Plans.review("mix beeswax-yellow; full " + percent);
    List<String> found =
        review.findings().stream()
            .map(Finding::ruleId)
            .filter(id -> id.startsWith("vessel"))
            .toList();
    assertThat(String.join("|", found)).isEqualTo(expected);
  }
}
