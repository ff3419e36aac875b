// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What {@code toString} shows of a value: no dust, and within 1e-12 of the value. */
class ShownProperties {

  private static double number(String text) {
    return Double.parseDouble(text.substring(0, text.indexOf(' ')));
  }

  private static void assertShows(String text, double value) {
    assertThat(number(text)).as(text).isCloseTo(value, within(1e-12 * Math.abs(value)));
    String digits = text.replaceAll("[eE].*| .*|[-.]", "").replaceFirst("^0+", "");
    assertThat(digits.length()).as(text).isLessThanOrEqualTo(13 + 1);
  }

  @Property
  void value_shown_is_the_value_to_a_part_in_a_million_millions(
      @ForAll @DoubleRange(min = -273.15, max = 1e6) double value,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    assertShows(TemperaturePoint.ofCelsius(value).toString(), value);
    assertShows(TemperatureDifference.ofKelvin(value).toString(), value);
    assertShows(MassFraction.of(share).toString(), share * 100);
    assertShows(VolumeFraction.of(share).toString(), share * 100);
  }

  /**
   * A value of few digits is shown as it was given. What is left of a difference of near values is
   * as exact as these were: 93.3 less 93.2 is 0.1 within the last bits of 93.3.
   */
  @Property
  void value_of_few_digits_comes_back(@ForAll @DoubleRange(min = 0, max = 100) double any) {
    double percent = Math.rint(any * 1000) / 1000;
    assertThat(number(MassFraction.ofPercent(percent).toString())).isEqualTo(percent);
    assertThat(number(VolumeFraction.ofPercent(percent).toString())).isEqualTo(percent);
    TemperaturePoint point = TemperaturePoint.ofCelsius(percent);
    assertThat(QuantityParser.localeFree().parseTemperature(point.toString())).isEqualTo(point);
    TemperatureDifference margin = TemperaturePoint.ofCelsius(93.3).minus(point);
    double exact = Math.rint((93.3 - percent) * 1000) / 1000;
    assertThat(number(margin.toString())).isCloseTo(exact, within(16 * Math.ulp(93.3)));
  }

  @Example
  void sums_leave_no_dust() {
    TemperaturePoint ceiling = TemperaturePoint.ofCelsius(93.3);
    assertThat(ceiling.minus(TemperaturePoint.ofCelsius(97))).hasToString("-3.7 K");
    assertThat(MassFraction.of(0.03)).hasToString("3.0 % by mass");
    assertThat(MassFraction.of(0.1 + 0.2)).hasToString("30.0 % by mass");
    assertThat(VolumeFraction.of(0.07)).hasToString("7.0 % by volume");
    assertThat(TemperaturePoint.ofFahrenheit(194)).hasToString("90.0 °C");
    assertThat(new MixingRatio(0.1 + 0.2, 8, "resin", "wax")).hasToString("0.3:8.0 resin:wax");
    assertThat(TemperatureRange.ofCelsius(0.1 + 0.2, 65)).hasToString("0.3–65.0 °C");
    assertThat(TemperatureDifference.ofKelvin(1e-20)).hasToString("1.0E-20 K");
    assertThat(TemperatureDifference.ofKelvin(Double.MAX_VALUE))
        .hasToString("1.797693134862E308 K");
  }
}
