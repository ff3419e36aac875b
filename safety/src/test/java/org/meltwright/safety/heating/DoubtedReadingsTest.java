// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.safety.heating.BindingTemperature.Basis;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;

/** What is read where it does not tell all counts upwards, and never rules a limit out: policy. */
class DoubtedReadingsTest {

  private static Basis basis(String plan) {
    return Plans.review(plan).bindingTemperature().orElseThrow().basis();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "; surface 80 probe", "; surface 80 metal", "; surface 99"})
  void ring_with_numbers_without_a_probe_in_the_wax_blocks(String surface) {
    HeatingReview review = Plans.review("mix beeswax-yellow; numbers" + surface);
    assertThat(review.finding("ring-with-numbers")).isPresent();
    assertThat(review.isBlocked()).isTrue();
    assertThat(review.isNotAssessed("pot-floor-hot")).isTrue();
    assertThat(review.notAssessed()).extracting(NotAssessed::property).contains("degrees");
  }

  @Test
  void reading_on_a_ring_with_numbers_counts_upwards() {
    HeatingReview review = Plans.review("mix beeswax-yellow; numbers; surface 120 probe");
    assertThat(review.finding("pot-floor-hot")).isPresent();
    assertThat(review.finding("fume")).isPresent();
    assertThat(review.isNotAssessed("flash-margin")).isTrue();
  }

  @Test
  void ring_with_numbers_and_a_probe_in_the_wax_is_assessed() {
    HeatingReview review = Plans.review("mix beeswax-yellow; numbers; liquid 82");
    assertThat(review.finding("missing-temperature")).isEmpty();
    assertThat(review.isNotAssessed("hard-ceiling")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"palette 80; surface 78 probe", "palette 80 +2; surface 60 probe"})
  void liquid_on_a_palette_whose_surface_reading_is_doubted_is_a_lower_bound(String palette) {
    String plan = "mix beeswax-yellow; " + palette + "; liquid 89";
    assertThat(basis(plan)).isEqualTo(Basis.LIQUID_ON_PALETTE);
    assertThat(Plans.review(plan).isNotAssessed("hard-ceiling")).isTrue();
  }

  @Test
  void reading_too_cold_for_molten_wax_at_a_lowered_ceiling_rules_nothing_out() {
    String child = "mix beeswax-yellow; liquid 42; people 1 0 1 5";
    assertThat(Plans.review(child).finding("hard-ceiling")).isPresent();
    assertThat(Plans.review(child).isNotAssessed("fume")).isTrue();
    assertThat(basis(child)).isEqualTo(Basis.AT_LEAST_LIQUID);
  }

  @Test
  void reading_too_cold_for_molten_wax_gives_way_to_a_hotter_floor() {
    HeatingReview review =
        Plans.review("mix beeswax-yellow; plate 110 +5; liquid 42; people 1 0 1 5");
    assertThat(review.bindingTemperature().orElseThrow().value().celsius()).isEqualTo(115);
    assertThat(review.finding("fume")).isPresent();
  }

  @Test
  void mix_of_which_nothing_is_known_is_molten_from_40_degrees_on() {
    assertThat(Plans.review("mix own:stuff; liquid 36").finding("reading-not-molten")).isPresent();
    assertThat(Plans.review("mix own:stuff; liquid 40").finding("reading-not-molten")).isEmpty();
    assertThat(Plans.review("mix titanium-white-rutile; liquid 36").finding("reading-not-molten"))
        .isEmpty();
  }

  @Test
  void surface_that_was_read_counts_though_nobody_says_what_heats() {
    HeatingReview review = Plans.review("mix beeswax-yellow; surface 120 probe");
    assertThat(review.finding("pot-floor-hot")).isPresent();
    assertThat(review.finding("hard-ceiling")).isPresent();
    assertThat(Plans.review("mix beeswax-yellow; surface 80 probe").isNotAsked("pot-floor-hot"))
        .isTrue();
  }

  @Test
  void what_heats_is_not_asked_by_each_rule_that_it_decides() {
    HeatingReview review = Plans.review("mix beeswax-yellow; liquid 82; people 1 0 1 14");
    for (String id : List.of("flame-under-pot", "open-coil-or-gas", "minors-with-flame", "fume")) {
      assertThat(review.isNotAsked(id)).as(id).isTrue();
    }
    assertThat(Plans.review("mix beeswax-yellow; plate 80 +5").isNotAsked("flame-under-pot"))
        .isFalse();
  }

  @Test
  void vessel_of_unknown_make_may_be_paper_or_non_stick() {
    HeatingReview review =
        Plans.review("mix beeswax-yellow; torch; pot unknown unknown flat; no-others");
    assertThat(review.isNotAssessed("paper-liner-flame")).isTrue();
    assertThat(review.isNotAssessed("non-stick-open-heat")).isTrue();
  }

  @Test
  void tolerance_of_a_reading_that_does_not_bind_is_not_assessed() {
    HeatingReview review = Plans.review("mix beeswax-yellow; palette 80; liquid 82; thermometer 1");
    assertThat(review.isNotAssessed("ceiling-within-tolerance")).isTrue();
  }

  @Test
  void plate_and_offset_below_absolute_zero_are_a_problem() {
    HeatingPlanBuilder plan = Plans.parse("mix beeswax-yellow; plate 80").toBuilder();
    plan.measuredOffset(TemperatureDifference.ofKelvin(-400));
    assertThatThrownBy(plan::build)
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("below-absolute-zero");
  }

  @Test
  void finding_on_the_other_scale_names_the_tightened_ceiling_that_it_rests_on() {
    HeatingReview review = Plans.review("mix beeswax-yellow; liquid 180; limits 80 85 100 60 8");
    assertThat(review.finding("reading-other-scale").orElseThrow().reason(Locale.ENGLISH))
        .contains("85.0 °C", "house rule");
  }
}
