// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/** Numbers of findings, as readers see them: never rounded onto a limit, never to nothing. */
class TextsTest {

  @ParameterizedTest
  @CsvSource({
    "0.04,'0.04','0,04'",
    "99.96,'99.96','99,96'",
    "5,'5.0','5,0'",
    "0.25,'0.25','0,25'",
    "4.8379310345,'4.8','4,8'",
    "4.9999379,'4.9999','4,9999'",
    "-0.04,'-0.04','-0,04'"
  })
  void number_keeps_what_tells_it_from_a_whole_one(double number, String english, String german) {
    assertThat(Texts.write(number, Locale.ENGLISH)).isEqualTo(english);
    assertThat(Texts.write(number, Locale.GERMANY)).isEqualTo(german);
  }

  @ParameterizedTest
  @CsvSource({"5.04,'5,04 %'", "5,'5,0 %'", "11.11111111,'11,1 %'", "0.004,'0,004 %'"})
  void share_is_never_shown_as_the_limit_that_it_passes(double percent, String german) {
    assertThat(Texts.write(MassFraction.ofPercent(percent), Locale.GERMAN)).isEqualTo(german);
  }

  @ParameterizedTest
  @CsvSource({"0.04,'0,04 K'", "3.3,'3,3 K'"})
  void difference_is_never_shown_as_none(double kelvin, String german) {
    assertThat(Texts.write(TemperatureDifference.ofKelvin(kelvin), Locale.GERMAN))
        .isEqualTo(german);
  }

  @ParameterizedTest
  @CsvSource({
    "97,'97,0 °C (206,6 °F)'",
    "93.26,'93,26 °C (199,87 °F)'",
    "28.85,'28,9 °C (83,9 °F)'"
  })
  void temperature_is_shown_on_both_scales(double celsius, String german) {
    assertThat(Texts.write(TemperaturePoint.ofCelsius(celsius), Locale.GERMAN)).isEqualTo(german);
  }
}
