// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.TemperaturePoint;

class TextsTest {

  /** A tenth, and more where a tenth would stand on the other side of a limit. */
  @ParameterizedTest
  @CsvSource({
    "93.3, 93.3 °C (199.9 °F)",
    "93.25, 93.25 °C (199.85 °F)",
    "93.299, 93.299 °C (199.938 °F)",
    "90, 90.0 °C (194.0 °F)",
    "90.04, 90.04 °C (194.07 °F)",
    "89.96, 89.96 °C (193.93 °F)",
    "88.04, 88.0 °C (190.5 °F)",
    "109.97, 109.97 °C (229.95 °F)",
  })
  void temperature_is_not_rounded_onto_a_limit_or_off_it(double celsius, String text) {
    assertThat(Texts.write(TemperaturePoint.ofCelsius(celsius), Locale.ENGLISH)).isEqualTo(text);
  }
}
