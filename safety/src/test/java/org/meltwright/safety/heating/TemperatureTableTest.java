// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.BindingTemperature.Basis;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.safety.heating.TemperatureTable.FloorBand;
import org.meltwright.units.TemperaturePoint;

/** The one temperature table, which is policy after common practice, held at each of its edges. */
class TemperatureTableTest {

  private static final String MEDIUM = "mix beeswax-yellow 8, damar 1; plate 80 +5; ";

  private static final TemperatureTable TABLE = TemperatureTable.STANDARD;

  @ParameterizedTest
  @CsvSource({
    "20,     WORKING,      WORKING",
    "85,     WORKING,      WORKING",
    "85.01,  DARKENING,    WORKING",
    "90,     DARKENING,    WORKING",
    "194F,   DARKENING,    WORKING",
    "90.01,  ABOVE_TARGET, WORKING",
    "93.29,  ABOVE_TARGET, WORKING",
    "93.3,   AT_CEILING,   AT_CEILING",
    "200F,   AT_CEILING,   AT_CEILING",
    "109.99, AT_CEILING,   AT_CEILING",
    "110,    FUME,         TOO_HOT",
    "500,    FUME,         TOO_HOT",
  })
  void band_at_each_edge(String point, Band wax, FloorBand floor) {
    assertThat(TABLE.band(Plans.point(point))).isEqualTo(wax);
    assertThat(TABLE.floorBand(Plans.point(point))).isEqualTo(floor);
  }

  @ParameterizedTest
  @EnumSource(Band.class)
  void hasBegun_hotter_neverEndsABand(Band band) {
    boolean begun = false;
    for (double celsius = 80; celsius < 115; celsius += 0.1) {
      boolean stillOrNow = TABLE.hasBegun(band, TemperaturePoint.ofCelsius(celsius));
      assertThat(stillOrNow || !begun).as("%s ends at %s °C", band, celsius).isTrue();
      begun = stillOrNow;
    }
    assertThat(begun).isTrue();
  }

  @Test
  void limits_are_those_of_the_policy() {
    assertThat(HeatingLimits.standard().target()).isEqualTo(TemperaturePoint.ofFahrenheit(194));
    assertThat(HeatingLimits.standard().hardCeiling().celsius()).isEqualTo(93.3);
    assertThat(TABLE.flashLimit(TemperaturePoint.ofCelsius(204)).celsius()).isEqualTo(154);
    assertThat(HeatingLimits.standard().leastWidth().kelvin()).isEqualTo(5);
    assertThat(HeatingLimits.standard().floorLimit().celsius()).isEqualTo(110);
  }

  @Test
  void window_begins_ten_kelvin_above_the_clear_point() {
    WorkingWindow window =
        TABLE.window(Plans.mix("beeswax-yellow"), HeatingLimits.standard().target()).get();
    assertThat(window.lowerBound().low().minus(window.clearPoint().low()).kelvin())
        .isCloseTo(10, Offset.offset(1e-9));
    assertThat(window.upperBound()).isEqualTo(HeatingLimits.standard().target());
  }

  @ParameterizedTest
  @CsvSource({
    "85, ''",
    "85.1, NOTICE darkening",
    "88, NOTICE darkening",
    "90, NOTICE darkening",
    "90.0, NOTICE darkening",
    "194F, NOTICE darkening",
    "90.1, CAUTION above-target|NOTICE darkening",
    "93.2, CAUTION above-target|NOTICE darkening",
    "93.3, DANGER hard-ceiling|NOTICE darkening",
    "200F, DANGER hard-ceiling|NOTICE darkening",
    "97, DANGER hard-ceiling|NOTICE darkening",
    "109.9, DANGER hard-ceiling|NOTICE darkening",
    "110, DANGER fume|DANGER hard-ceiling|NOTICE darkening",
    "153.9, DANGER fume|DANGER hard-ceiling|NOTICE darkening",
    "154, DANGER flash-margin|DANGER fume|DANGER hard-ceiling|NOTICE darkening",
  })
  void wax_at_temperature_has_these_findings(String liquid, String expected) {
    HeatingReview review = Plans.review(MEDIUM + "liquid " + liquid);
    List<String> limits =
        review.findings().stream()
            .filter(f -> f.info().topic() == RuleInfo.Topic.UPPER_LIMIT)
            .map(f -> f.severity() + " " + f.ruleId())
            .toList();
    assertThat(String.join("|", limits)).isEqualTo(expected);
    assertThat(review.isBlocked()).isEqualTo(expected.contains("DANGER"));
  }

  @Test
  void plate_at_90_with_overshoot_cautions_of_the_floor_and_not_of_the_liquid() {
    HeatingReview review = Plans.review("mix beeswax-yellow 8, damar 1; plate 90 +10; liquid 88");
    assertThat(review.finding("above-target")).isEmpty();
    assertThat(review.finding("hard-ceiling")).isEmpty();
    assertThat(review.finding("pot-floor"))
        .hasValueSatisfying(
            floor -> {
              assertThat(floor.severity()).isEqualTo(Severity.CAUTION);
              assertThat(floor.isBlocking()).isFalse();
              assertThat(floor.summary(Locale.ENGLISH)).contains("100.0 °C (212.0 °F)");
            });
    assertThat(review.finding("darkening")).isPresent();
    assertThat(review.isBlocked()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "plate 83 +10, ''",
    "plate 83.3 +10, pot-floor",
    "plate 99.9 +10, pot-floor",
    "plate 100 +10, pot-floor-hot",
    "plate 93.3, pot-floor",
    "plate 110, pot-floor-hot",
    "plate 80 +5; surface 96, pot-floor",
    "palette 100 +10, ''",
  })
  void floor_is_set_point_and_overshoot(String heat, String expected) {
    HeatingReview review = Plans.review("mix beeswax-yellow; liquid 80; " + heat);
    List<String> found =
        review.findings().stream()
            .map(Finding::ruleId)
            .filter(id -> id.startsWith("pot-floor"))
            .toList();
    assertThat(String.join("|", found)).isEqualTo(expected);
  }

  @Test
  void overshoot_that_is_not_stated_is_not_zero() {
    HeatingReview review = Plans.review("mix beeswax-yellow; plate 88; liquid 80");
    assertThat(review.isNotAssessed("pot-floor")).isTrue();
    assertThat(review.isNotAssessed("pot-floor-hot")).isTrue();
    assertThat(review.notAssessed()).extracting(NotAssessed::property).contains("overshoot");
    assertThat(review.notAssessed().get(0).severity()).isEqualTo(Severity.CAUTION);
  }

  @ParameterizedTest
  @CsvSource({
    "plate 90 +10; liquid 88,              88,  LIQUID_MEASURED",
    "plate 110 +5; offset -18,             92,  PLATE_AND_OFFSET",
    "plate 90 +10; surface 101; offset -9, 92,  PLATE_AND_OFFSET",
    "plate 80 +7,                          87,  AS_HOT_AS_FLOOR",
    "plate 80,                             80,  AT_LEAST_SET_POINT",
    "palette 80 +7,                        87,  PALETTE_SET_POINT_AND_OVERSHOOT",
    "palette 80 +7; surface 91 probe,      91,  PALETTE_MEASURED",
    "palette 80 +7; surface 91 probe; liquid 85, 91,  PALETTE_MEASURED",
    "palette; liquid 85,                   85,  LIQUID_ON_PALETTE",
    "liquid 200F,                          93.33333333333333, LIQUID_MEASURED",
  })
  void table_binds(String stated, double celsius, Basis basis) {
    BindingTemperature wax =
        Plans.parse("mix beeswax-yellow; " + stated).bindingTemperature().orElseThrow();
    assertThat(wax.value().celsius()).isEqualTo(celsius);
    assertThat(wax.basis()).isEqualTo(basis);
  }

  @Test
  void no_thermometer_in_the_wax_is_a_caution_and_the_table_holds_for_the_estimate() {
    HeatingReview review = Plans.review("mix beeswax-yellow; plate 84 +10");
    assertThat(review.finding("estimated-temperature"))
        .hasValueSatisfying(f -> assertThat(f.severity()).isEqualTo(Severity.CAUTION));
    assertThat(review.finding("hard-ceiling")).isPresent();
    assertThat(
            Plans.review("mix beeswax-yellow; plate 84 +10; liquid 80")
                .finding("estimated-temperature"))
        .isEmpty();
  }

  @Test
  void nothing_that_tells_the_temperature_is_a_warning_that_cannot_be_switched_off() {
    HeatingReview review = Plans.review("mix beeswax-yellow");
    assertThat(review.finding("missing-temperature"))
        .hasValueSatisfying(f -> assertThat(f.info().fixed()).isTrue());
    assertThat(review.isNotAssessed("hard-ceiling")).isTrue();
    assertThat(review.marginToTarget()).isEmpty();
  }

  @Test
  void margins_are_those_of_the_liquid() {
    HeatingReview review = Plans.review(MEDIUM + "liquid 88");
    assertThat(review.marginToTarget().orElseThrow().kelvin()).isEqualTo(2);
    assertThat(review.marginToHardCeiling().orElseThrow().kelvin())
        .isCloseTo(5.3, Offset.offset(1e-12));
    assertThat(review.target().fahrenheit()).isEqualTo(194);
    assertThat(Plans.review(MEDIUM + "liquid 200F").marginToTarget().orElseThrow().kelvin())
        .isCloseTo(-10.0 / 3, Offset.offset(1e-12));
  }

  @Test
  void resin_that_melts_at_120_asks_for_nothing_above_90() {
    HeatingReview review = Plans.review("mix beeswax-yellow 8, damar 1; plate 85 +3; liquid 88");
    for (Finding finding : review.findings()) {
      for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
        assertThat(finding.summary(locale) + finding.reason(locale) + finding.remedy(locale))
            .doesNotContain("120");
      }
    }
  }

  @Test
  void what_burns_without_a_usable_flash_point_is_one_line_that_names_it() {
    HeatingReview review =
        Plans.review(
            "mix beeswax-yellow 8, own:house-fat 1, titanium-white-rutile 1; plate 80 +5; liquid 88");
    List<NotAssessed> flash =
        review.notAssessed().stream().filter(n -> n.property().equals("flash-point")).toList();
    assertThat(flash).hasSize(1);
    assertThat(flash.get(0).material().orElseThrow().id()).isEqualTo("house-fat");
    assertThat(flash.get(0).ruleIds()).containsExactly("flash-margin");
  }

  @Test
  void resin_that_nobody_knows_is_standing_advice_up_to_a_quarter_of_the_mix() {
    HeatingReview quarter = Plans.review("mix beeswax-yellow 3, damar 1; liquid 85");
    assertThat(quarter.isNotAssessed("flash-margin")).isFalse();
    assertThat(quarter.standingAdvice()).contains(StandingAdvice.RESIN);
    HeatingReview more = Plans.review("mix beeswax-yellow 2, damar 1; liquid 85");
    assertThat(more.isNotAssessed("flash-margin")).isTrue();
    assertThat(more.standingAdvice()).doesNotContain(StandingAdvice.RESIN);
  }

  @Test
  void dry_pigment_is_not_asked_for_a_flash_point() {
    assertThat(
            Plans.review("mix beeswax-yellow 9, phthalo-blue 1; liquid 85")
                .isNotAssessed("flash-margin"))
        .isFalse();
  }

  @Test
  void oil_paint_is_judged_by_its_oil() {
    HeatingReview review =
        Plans.review("mix beeswax-yellow 9, oil-paint-titanium-white 1; plate 80 +5; liquid 88");
    assertThat(review.notAssessed())
        .extracting(NotAssessed::property)
        .doesNotContain("flash-point");
  }
}
