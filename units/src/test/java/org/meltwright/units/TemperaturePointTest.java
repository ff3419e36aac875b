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
}
