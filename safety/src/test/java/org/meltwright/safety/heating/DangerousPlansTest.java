// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.HeatingReading.Place;
import org.meltwright.units.TemperaturePoint;

/**
 * Plans that someone would act on with a hot pot in front of them, and what must be said of them.
 */
class DangerousPlansTest {

  private static final String MEDIUM = "mix beeswax-yellow 8, damar 1; ";

  private static void blocks(String plan, String rule) {
    assertThat(Plans.review(plan).finding(rule))
        .as("%s of %s", rule, plan)
        .hasValueSatisfying(f -> assertThat(f.isBlocking()).isTrue());
  }

  // A flame that is the heat is a flame

  @Test
  void torch_under_a_pot_blocks_whatever_the_wax_reads() {
    blocks(MEDIUM + "heat-torch; liquid 82", "flame-under-pot");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heat-torch", "torch", "ring", "ring-beside"})
  void flame_is_seen_as_heat_and_as_tool_alike(String flame) {
    String hot = MEDIUM + flame + "; liquid 82; ";
    blocks(hot + "people 1 0 4 14", "minors-with-flame");
    blocks(hot + "open-solvent-near", "flame-near-solvent");
    blocks(hot + "pot paper none flat", "paper-liner-flame");
    blocks(hot + "pot aluminium non-stick flat", "non-stick-open-heat");
    assertThat(Plans.review(hot + "paper-near").finding("flame-near-paper")).isPresent();
  }

  @Test
  void torch_as_heat_over_a_pigment_that_takes_none_is_found() {
    assertThat(
            Plans.review("mix beeswax-yellow 9, cadmium-red 1; heat-torch; liquid 82")
                .finding("pigment-melt-only"))
        .isPresent();
  }

  @Test
  void heat_gun_as_heat_without_set_point_is_not_assessed() {
    assertThat(Plans.review(MEDIUM + "heat-gun; liquid 82").isNotAssessed("heat-gun-outlet"))
        .isTrue();
  }

  // What is said of a palette is not talked down by a reading

  @ParameterizedTest
  @ValueSource(strings = {"60", "85", "60 probe", "85 probe", "60 metal", "85 matt"})
  void reading_below_set_point_and_overshoot_does_not_bind(String reading) {
    blocks(MEDIUM + "palette 150 +20; surface " + reading, "hard-ceiling");
  }

  @Test
  void reading_of_bare_metal_by_infrared_counts_upwards_only() {
    HeatingReview low = Plans.review(MEDIUM + "palette; surface 34 metal");
    assertThat(low.isNotAssessed("hard-ceiling")).isTrue();
    blocks(MEDIUM + "palette; surface 95 metal", "hard-ceiling");
  }

  @Test
  void ring_with_numbers_is_not_assessed_without_a_probe_in_the_wax() {
    HeatingReview review = Plans.review(MEDIUM + "numbers");
    assertThat(review.isNotAssessed("hard-ceiling")).isTrue();
    assertThat(review.isNotAssessed("pot-floor-hot")).isTrue();
    assertThat(Plans.review(MEDIUM + "numbers; liquid 84").isNotAssessed("hard-ceiling")).isFalse();
  }

  // A reading that cannot be is no ground for more heat

  @ParameterizedTest
  @ValueSource(strings = {"97F", "36.1", "20", "-10"})
  void reading_too_cold_to_be_molten_counts_as_not_measured(String reading) {
    HeatingReview review = Plans.review(MEDIUM + "plate 95 +5; liquid " + reading);
    assertThat(review.finding("reading-not-molten")).isPresent();
    assertThat(review.finding("colder-than-window")).isEmpty();
    assertThat(review.isBlocking()).isTrue(); // as hot as the floor, 100 °C
    for (Locale reader : List.of(Locale.ENGLISH, Locale.GERMAN)) {
      assertThat(texts(review, reader))
          .noneMatch(t -> t.contains("Warm the panel") || t.contains("anwärmen"));
    }
  }

  @Test
  void reading_whose_number_fits_on_the_other_scale_says_so() {
    assertThat(
            Plans.review("mix beeswax-yellow; liquid 97F")
                .finding("reading-not-molten")
                .get()
                .reason(Locale.ENGLISH))
        .endsWith("If the thermometer shows °C, 97 means 97.0 °C (206.6 °F).");
    assertThat(
            Plans.review("mix beeswax-yellow; liquid 187")
                .finding("reading-other-scale")
                .get()
                .summary(Locale.GERMAN))
        .endsWith("Zeigt das Thermometer °F, so bedeutet 187: 86,1 °C (187,0 °F).");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-10, 20, 36.1})
  void cold_reading_is_answered_with_a_look_at_the_probe(double celsius) {
    HeatingAction action =
        HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(celsius)).action();
    assertThat(action.level()).isEqualTo(HeatingAction.Level.CHECK_THE_PROBE);
    assertThat(action.atOnce(Locale.ENGLISH)).contains("Check unit and probe");
  }

  // Hotter is worse

  @Test
  void action_changes_at_the_flash_margin_the_flash_point_and_autoignition() {
    Composition paraffin = Composition.of(MaterialCatalogue.standard().require("gum-turpentine"));
    HeatingLimits limits = HeatingLimits.standard();
    assertThat(level(160)).isEqualTo(HeatingAction.Level.OUT_AND_WATCH);
    assertThat(level(210)).isEqualTo(HeatingAction.Level.OUT_AND_CALL);
    assertThat(
            HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(253))
                .action(limits, paraffin)
                .level())
        .isEqualTo(HeatingAction.Level.OUT_AND_STAY_OUT);
  }

  private static HeatingAction.Level level(double celsius) {
    return HeatingReading.of(Place.LIQUID, TemperaturePoint.ofCelsius(celsius)).action().level();
  }

  @ParameterizedTest
  @ValueSource(doubles = {93.3, 97, 110, 154, 204, 245, 500})
  void nobody_is_told_to_stir_above_the_hard_ceiling(double celsius) {
    for (Place place : new Place[] {Place.LIQUID, Place.PALETTE_SURFACE, Place.POT_FLOOR}) {
      HeatingAction action = HeatingReading.of(place, TemperaturePoint.ofCelsius(celsius)).action();
      if (place != Place.POT_FLOOR || celsius >= 110) {
        assertThat(action.atOnce(Locale.ENGLISH))
            .doesNotContainPattern("(?<!not )\\bstir\\b|(?<!not )\\bStir\\b");
      }
    }
  }

  // A water bath is its own case

  @Test
  void water_bath_is_not_recommended_where_it_is_warned_of() {
    for (String bath : List.of("bath", "bath; liquid 84", "bath; liquid 97", "bath; liquid 20")) {
      HeatingReview review = Plans.review(MEDIUM + bath);
      assertThat(review.isBlocking()).isEqualTo(bath.endsWith("97"));
      assertThat(review.finding("pot-floor")).isEmpty();
      assertThat(texts(review, Locale.ENGLISH))
          .noneMatch(t -> t.contains("use a water bath") || t.contains("or a water bath"));
    }
  }

  // Every double is a temperature

  @ParameterizedTest
  @ValueSource(doubles = {-273.15, -273, 1e-300, 1e9, 1e15, 1e308, Double.MAX_VALUE})
  void temperature_that_no_thermometer_shows_has_a_review_with_texts(double celsius) {
    TemperaturePoint point = TemperaturePoint.ofCelsius(celsius);
    HeatingPlan plan =
        Plans.parse(MEDIUM + "plate 80 +5").toBuilder()
            .liquidReading(point)
            .surfaceReading(point, SurfaceMethod.PROBE)
            .build();
    assertThatCode(
            () -> {
              texts(HeatingRules.standard().review(plan), Locale.GERMAN);
              HeatingReading.of(Place.LIQUID, point).action().atOnce(Locale.GERMAN);
            })
        .doesNotThrowAnyException();
  }

  // Two versions of one material are two

  @Test
  void own_wax_with_a_lower_flash_point_blocks_whatever_the_order_of_the_parts() {
    Material standard = MaterialCatalogue.standard().require("beeswax-yellow");
    Material own =
        MaterialCatalogue.standard()
            .plus(
                "material: beeswax-yellow\n  flash-point: 120 °C, flash-closed-cup | user | read\n")
            .require("beeswax-yellow");
    for (Composition mix :
        List.of(
            Composition.ofParts(List.of(standard, own), 1, 99),
            Composition.ofParts(List.of(own, standard), 99, 1))) {
      HeatingPlan plan =
          HeatingPlan.builder(mix).liquidReading(TemperaturePoint.ofCelsius(88)).build();
      assertThat(HeatingRules.standard().review(plan).finding("flash-margin")).isPresent();
    }
  }

  private static List<String> texts(HeatingReview review, Locale reader) {
    return Stream.concat(
            review.findings().stream()
                .flatMap(f -> Stream.of(f.summary(reader), f.reason(reader), f.remedy(reader))),
            review.notAssessed().stream().flatMap(n -> Stream.of(n.what(reader), n.remedy(reader))))
        .toList();
  }
}
