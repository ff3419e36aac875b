// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.safety.exposure.BurnThresholds.Lacquer;
import org.meltwright.safety.exposure.BurnThresholds.Outcome;
import org.meltwright.safety.exposure.BurnThresholds.Surface;
import org.meltwright.safety.exposure.SkinDamage.Degree;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/** Burns: published tables and own arithmetic, each named. */
class BurnTest {

  private static TemperaturePoint celsius(double value) {
    return TemperaturePoint.ofCelsius(value);
  }

  /**
   * Constant temperature where the skin lives, time to Ω = 1, ΔE ⁄ R = 75 000 K; own arithmetic.
   */
  @ParameterizedTest
  @CsvSource({
    "44, 16260",
    "45, 7732",
    "48, 854.9",
    "50, 201.5",
    "52, 48.33",
    "55, 5.867",
    "60, 0.190",
    "70, 2.69e-4",
  })
  void damage_at_constant_temperature(double skin, double seconds) {
    assertThat(SkinDamage.secondsAtConstant(celsius(skin), Degree.SECOND))
        .isCloseTo(seconds, within(seconds * 3e-3));
  }

  /** The rewrite with 75 535 K would be five times slower; the two sets must not be mixed. */
  @Test
  void damage_uses_the_original_set() {
    double rewritten = Math.exp(Math.log(3.1) + 98 * Math.log(10) - 75_535 / (50 + 273.15));
    assertThat(SkinDamage.ratePerSecond(celsius(50)) / rewritten).isBetween(5.0, 5.4);
  }

  /** Contact through 80 µm of skin of 33 °C; own arithmetic, the model of the class. */
  @ParameterizedTest
  @CsvSource({"45, 7950", "47, 1890", "48, 942", "49, 477", "51, 131", "55, 14.7", "60, 2.3"})
  void damage_of_contact_counts_the_depth_of_skin(double surface, double seconds) {
    assertThat(SkinDamage.secondsOfContact(celsius(surface), Degree.SECOND))
        .isCloseTo(seconds, within(seconds * 0.03));
  }

  /**
   * A plumbing page quoting a public-health journal, second degree; read. Within a factor of two.
   */
  @ParameterizedTest
  @CsvSource({"45, 7200", "47, 1200", "48, 900", "49, 480", "51, 120", "55, 17", "60, 3"})
  void damage_of_contact_agrees_with_the_public_health_table(double surface, double seconds) {
    assertThat(SkinDamage.secondsOfContact(celsius(surface), Degree.SECOND))
        .isBetween(seconds / 2, seconds * 2);
  }

  /** Hospital scald table, 140 °F, 130 °F, 120 °F; read. */
  @Test
  void damage_of_contact_agrees_with_the_scald_table() {
    assertThat(SkinDamage.secondsOfContact(TemperaturePoint.ofFahrenheit(140), Degree.SECOND))
        .isLessThan(5);
    assertThat(SkinDamage.secondsOfContact(TemperaturePoint.ofFahrenheit(130), Degree.SECOND))
        .isBetween(15.0, 60.0);
    assertThat(SkinDamage.secondsOfContact(TemperaturePoint.ofFahrenheit(120), Degree.SECOND))
        .isGreaterThan(300);
  }

  @Test
  void damage_is_capped_and_starts_at_44_degrees() {
    assertThat(SkinDamage.omegaAfter(celsius(90), 10)).isEqualTo(1e6);
    assertThat(SkinDamage.omegaAfter(celsius(43), 1000)).isZero();
    assertThat(SkinDamage.secondsOfContact(celsius(43), Degree.FIRST)).isInfinite();
    assertThat(SkinDamage.omegaAfter(celsius(51), 131)).isCloseTo(1, within(0.03));
    assertThat(Degree.FIRST.omega()).isEqualTo(0.53);
  }

  /** ISO 13732-1, hot water, as a consultant's page restates it. */
  @ParameterizedTest
  @CsvSource({"64, 1", "54, 10", "51, 60"})
  void hot_water_is_at_its_threshold(double temperature, double seconds) {
    assertThat(BurnThresholds.threshold(Surface.WATER, seconds).low().celsius())
        .isEqualTo(temperature);
    assertThat(BurnThresholds.outcome(Surface.WATER, celsius(temperature - 0.1), seconds))
        .isEqualTo(Outcome.BELOW_THRESHOLD);
    assertThat(BurnThresholds.outcome(Surface.WATER, celsius(temperature), seconds))
        .isEqualTo(Outcome.MAY_BURN);
  }

  /** EN 563, bare metal and 100 µm of lacquer at 0.5 s, as secondary pages restate them. */
  @Test
  void lacquer_raises_the_threshold_of_metal() {
    assertThat(BurnThresholds.ofLacqueredMetal(Lacquer.MICROMETRES_100).low().celsius())
        .isEqualTo(89);
    assertThat(BurnThresholds.ofLacqueredMetal(Lacquer.NONE).low().celsius()).isEqualTo(67);
  }

  @Test
  void thresholds_are_ranges_and_times_between_columns_take_the_longer_one() {
    assertThat(BurnThresholds.outcome(Surface.BARE_METAL, celsius(70), 0.5))
        .isEqualTo(Outcome.MAY_BURN);
    assertThat(BurnThresholds.outcome(Surface.BARE_METAL, celsius(74), 0.5))
        .isEqualTo(Outcome.BURNS);
    assertThat(BurnThresholds.threshold(Surface.WOOD, 3))
        .isEqualTo(BurnThresholds.threshold(Surface.WOOD, 5));
    assertThat(BurnThresholds.threshold(Surface.PLASTIC, 1e6).low().celsius()).isEqualTo(43);
  }

  @Test
  void longer_contact_never_raises_a_threshold() {
    double[] times = {0.5, 1, 2, 5, 10, 60, 600, 28_800};
    for (Surface surface : Surface.values()) {
      for (int i = 1; i < times.length; i++) {
        assertThat(BurnThresholds.threshold(surface, times[i]).low())
            .as("%s after %s s", surface, times[i])
            .isLessThanOrEqualTo(BurnThresholds.threshold(surface, times[i - 1]).low());
      }
    }
  }

  /** Two-body contact temperatures of 90 °C against skin of 33 °C; own arithmetic. */
  @ParameterizedTest
  @CsvSource({"620, 53.5", "1500, 65.9", "7800, 83.0", "23000, 87.4"})
  void contact_without_freezing(double effusivity, double meets) {
    assertThat(WaxContact.withoutFreezing(effusivity, celsius(90)).celsius())
        .isCloseTo(meets, within(0.05));
  }

  /** With the heat of freezing: 58.7 °C or more by another set of figures; own arithmetic. */
  @Test
  void contact_of_molten_wax_with_freezing_is_far_above_the_plain_formula() {
    double meets = WaxContact.lowerBoundWithFreezing(celsius(90)).celsius();
    assertThat(meets).isCloseTo(58.6, within(0.15));
    assertThat(meets).isGreaterThan(WaxContact.withoutFreezing(620, celsius(90)).celsius() + 5);
    assertThat(SkinDamage.secondsAtConstant(celsius(meets), Degree.SECOND)).isLessThan(0.5);
    assertThat(WaxContact.lowerBoundWithFreezing(celsius(70)).celsius()).isLessThan(meets);
    assertThatThrownBy(() -> WaxContact.lowerBoundWithFreezing(celsius(60)))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void molten_wax_on_skin_is_always_an_immediate_burn() {
    assertThat(WaxContact.text(Locale.ENGLISH))
        .contains("burns at once", "20 minutes", "do not pull");
    assertThat(WaxContact.text(Locale.GERMAN)).contains("sofort", "20 Minuten");
  }
}
