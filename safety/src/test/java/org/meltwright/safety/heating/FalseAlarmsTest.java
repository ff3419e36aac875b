// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an ordinary careful plan does not draw: a warning that comes always is read never. */
class FalseAlarmsTest {

  private static final String AT_EASE =
      "plate 84 +4; liquid 82; thermometer 1; pot stainless-steel none flat; full 60; hours 2;"
          + " room 60 480; people 0 1 0; no-others";

  private static List<String> said(String plan) {
    HeatingReview review = Plans.review(plan);
    return Stream.concat(
            review.findings().stream().map(f -> f.severity() + " " + f.ruleId()),
            review.notAssessed().stream().map(n -> "? " + n.property()))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "beeswax-yellow 8, damar 1",
        "beeswax-yellow 8, damar 1, phthalo-blue 1",
        "beeswax-yellow 8, damar 1, quinacridone 1",
        "beeswax-yellow 8, damar 1, ivory-black 1",
        "beeswax-yellow 8, damar 1, carbon-black 1",
        "beeswax-yellow 8, damar 1, prussian-blue 1",
        "beeswax-yellow 8, damar 1, arylide-yellow 1",
        "beeswax-yellow 8, damar 1, chalk 1",
        "paraffin 85, stearic-acid 15",
        "own:\"sonnengebleichtes Wachs\"/wax/flash=204 8, damar 1",
      })
  void ordinary_mix_at_ordinary_heat_draws_nothing(String mix) {
    assertThat(said("mix " + mix + "; " + AT_EASE)).isEmpty();
  }

  @Test
  void resin_of_which_nobody_knows_a_flash_point_is_said_once_in_the_standing_advice() {
    HeatingReview review = Plans.review("mix beeswax-yellow 3, damar 1; liquid 82");
    assertThat(review.isNotAssessed("flash-margin")).isFalse();
    assertThat(review.standingAdvice()).contains(StandingAdvice.RESIN);
    assertThat(
            Plans.review("mix beeswax-yellow 2, damar 1; liquid 82").isNotAssessed("flash-margin"))
        .isTrue();
  }

  @Test
  void own_material_without_a_flash_point_stays_not_assessed() {
    assertThat(said("mix beeswax-yellow 9, own:\"my oil\" 1; " + AT_EASE))
        .containsExactly("? flash-point");
  }

  @ParameterizedTest
  @CsvSource({
    "beeswax-bleached, NOTICE bleached-wax",
    "own:\"bleached wax\"/wax/flash=204, NOTICE bleached-wax",
    "own:\"sun bleached wax\"/wax/flash=204, ''",
    "own:\"sonnengebleichtes Wachs\"/wax/flash=204, ''",
    "own:\"unbleached wax\"/wax/flash=204, ''",
  })
  void bleached_wax_is_a_notice_and_sun_bleached_is_none(String wax, String expected) {
    assertThat(String.join("|", said("mix " + wax + " 8, damar 1; " + AT_EASE)))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "75 +5, ''",
    "90 +3, ''",
    "90 +4, CAUTION iron-too-hot",
    "150 +3, CAUTION iron-too-hot",
    "150 +4, WARNING iron-within-flash-margin",
    "200 +3, WARNING iron-within-flash-margin",
    "200 +4, DANGER iron-at-flash-point",
  })
  void iron_on_the_usual_medium_ranks_by_its_heat(String iron, String expected) {
    String plan = "mix beeswax-yellow 8, damar 1; " + AT_EASE + "; iron " + iron;
    assertThat(String.join("|", said(plan))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "raw-umber, NOTICE harmful-powder",
    "burnt-umber, NOTICE harmful-powder",
    "viridian, NOTICE harmful-powder",
    "chromium-oxide-green, NOTICE harmful-powder",
    "cadmium-red, WARNING toxic-powder",
    "cobalt-blue, WARNING toxic-powder",
    "yellow-ochre, ''",
  })
  void powder_ranks_by_what_its_dust_does(String pigment, String expected) {
    String plan = "mix beeswax-yellow 8, " + pigment + " 1; dry-powder; " + AT_EASE;
    assertThat(said(plan))
        .filteredOn(s -> !s.equals("NOTICE dry-powder"))
        .containsExactlyElementsOf(expected.isEmpty() ? List.of() : List.of(expected));
  }

  @Test
  void water_bath_that_is_watched_draws_nothing() {
    assertThat(said("mix beeswax-yellow 8, damar 1; " + AT_EASE.replace("plate 84 +4", "bath")))
        .isEmpty();
  }

  /** Own policy: below a tenth its vapour is thinned; with a flame it blocks 15 K earlier. */
  @ParameterizedTest
  @CsvSource({
    "2, 93, 82, '', ''",
    "2, 82, 82, '', WARNING fragrance-warm",
    "6, 98, 82, '', ''",
    "6, 97, 82, '', WARNING fragrance-warm",
    "6, 83, 82, '', WARNING fragrance-warm",
    "6, 82, 82, '', DANGER fragrance-too-hot",
    "6, 97, 82, gun 40 +5, DANGER fragrance-too-hot",
    "2, 82, 82, gun 40 +5, DANGER fragrance-too-hot",
    "2, 83, 82, gun 40 +5, ''",
    "10, 133, 82, '', ''",
    "10, 132, 82, '', DANGER flash-margin",
  })
  void fragrance_ranks_by_share_heat_and_tools(
      double percent, int flash, int wax, String tool, String expected) {
    String plan =
        "mix paraffin %s, own:\"scent\"/fragrance/flash=%s %s; %s; %s"
            .formatted(
                100 - percent, flash, percent, AT_EASE.replace("liquid 82", "liquid " + wax), tool);
    assertThat(said(plan))
        .filteredOn(s -> s.contains("fragrance") || s.contains("flash"))
        .containsExactlyElementsOf(expected.isEmpty() ? List.of() : List.of(expected));
  }
}
