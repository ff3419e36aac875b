// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class TemperaturePointTest {

  @Test
  void ofFahrenheit_200_is_93_3_and_not_90() {
    TemperaturePoint hard = TemperaturePoint.ofFahrenheit(200);

    assertThat(hard.celsius()).isCloseTo(93 + 1.0 / 3, within(1e-12));
    assertThat(Limit.exceeds(hard, TemperaturePoint.ofCelsius(90))).isTrue();
  }

  @Test
  void ofFahrenheit_194_is_90_and_not_above_it() {
    TemperaturePoint target = TemperaturePoint.ofCelsius(90);

    assertThat(Limit.exceeds(TemperaturePoint.ofFahrenheit(194), target)).isFalse();
    assertThat(Limit.reaches(TemperaturePoint.ofFahrenheit(194), target)).isTrue();
  }

  @Test
  void ofCelsius_below_absolute_zero_is_refused_in_two_languages() {
    assertThatThrownBy(() -> TemperaturePoint.ofCelsius(-300))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              Problem problem = e.problems().get(0);
              assertThat(problem.code()).isEqualTo(UnitsProblem.TEMPERATURE_BELOW_ABSOLUTE_ZERO);
              assertThat(problem.what(Locale.GERMAN)).contains("absoluten Nullpunkt");
              assertThat(problem.what(Locale.ENGLISH)).contains("absolute zero");
            });
  }

  @Test
  void of_a_decimal_in_each_scale_is_the_same_point() {
    assertThat(TemperaturePoint.ofFahrenheit(33.8)).isEqualTo(TemperaturePoint.ofCelsius(1));
    assertThat(TemperaturePoint.ofFahrenheit(194)).isEqualTo(TemperaturePoint.ofCelsius(90));
    assertThat(TemperaturePoint.ofKelvin(363.15)).isEqualTo(TemperaturePoint.ofCelsius(90));
    assertThat(TemperaturePoint.ofKelvin(300)).isEqualTo(TemperaturePoint.ofCelsius(26.85));
    assertThat(TemperatureDifference.ofFahrenheitDegrees(1.8))
        .isEqualTo(TemperatureDifference.ofKelvin(1));
  }

  @Test
  void point_plus_difference_and_point_less_point() {
    TemperaturePoint seventy = TemperaturePoint.ofCelsius(70);
    TemperatureDifference five = TemperatureDifference.ofKelvin(5);

    assertThat(seventy.plus(five)).isEqualTo(TemperaturePoint.ofCelsius(75));
    assertThat(seventy.minus(five)).isEqualTo(TemperaturePoint.ofCelsius(65));
    assertThat(seventy.minus(TemperaturePoint.ofCelsius(75))).isEqualTo(five.negated());
    assertThat(five.plus(five).kelvin()).isEqualTo(10);
    assertThatThrownBy(() -> seventy.minus(TemperatureDifference.ofKelvin(400)))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void range_overlap_and_margin() {
    TemperatureRange beeswax = TemperatureRange.ofCelsius(62, 65);
    TemperatureRange window = TemperatureRange.ofCelsius(64, 80);

    assertThat(beeswax.overlap(window)).contains(TemperatureRange.ofCelsius(64, 65));
    assertThat(beeswax.overlap(TemperatureRange.ofCelsius(65, 66)))
        .contains(TemperatureRange.ofCelsius(65, 65));
    assertThat(beeswax.overlap(TemperatureRange.ofCelsius(66, 70))).isEmpty();
    assertThat(beeswax.marginBelow(TemperaturePoint.ofCelsius(90)).kelvin()).isEqualTo(25);
    assertThat(beeswax.marginBelow(TemperaturePoint.ofCelsius(64)).isNegative()).isTrue();
    assertThat(beeswax.middle().celsius()).isEqualTo(63.5);
    assertThat(beeswax.width().kelvin()).isEqualTo(3);
    assertThat(beeswax.contains(TemperaturePoint.ofCelsius(65))).isTrue();
    assertThatThrownBy(() -> TemperatureRange.ofCelsius(65, 62))
        .isInstanceOf(ProblemException.class);
  }
}
