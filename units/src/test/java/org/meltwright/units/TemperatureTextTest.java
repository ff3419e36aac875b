// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.Refusals.problemOf;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Temperatures, their ranges and differences as people write them. */
class TemperatureTextTest {

  private static final QuantityParser PARSER = QuantityParser.localeFree();

  @ParameterizedTest
  @CsvSource({
    "90 °C,90",
    "90 C,90",
    "200 F,93.33333333333333",
    "194 °F,90",
    "363.15 K,90",
    "90 ℃,90",
    "90 º C,90",
    "-10 °C,-10",
    "62 1/2 °C,62.5",
    "90degC,90",
    "90 Grad Celsius,90",
    "90 celsius,90",
    "90 CELSIUS,90",
    "90 Grad,90",
    "30 degrees celsius,30",
    "90 degrees C.,90",
    "90 grad celsius,90",
    "90 °c,90",
    "90 C°,90",
    "194 °f,90",
    "194 fahrenheit,90",
    "194 deg. F,90",
    "363.15 °K,90",
    "minus 18 °C,-18"
  })
  void parseTemperature_reads_the_scales(String text, double celsius) {
    assertThat(PARSER.parseTemperature(text).celsius()).isCloseTo(celsius, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "62–65 °C         | 62 | 65",
        "62-65°C          | 62 | 65",
        "62 - 65 °C       | 62 | 65",
        "62 °C – 65 °C    | 62 | 65",
        "62 to 65 °C      | 62 | 65",
        "62 bis 65 °C     | 62 | 65",
        "62 °C to 65 °C   | 62 | 65",
        "62 °C            | 62 | 62",
        "-10–-5 °C        | -10 | -5",
        "-10 °C to 5 °C   | -10 | 5",
        "194–203 °F       | 90 | 95",
        "90 °C–203 °F     | 90 | 95",
        "70 °C ± 2 K      | 68 | 72",
        "70 ± 2 °C        | 68 | 72",
        "62...65 °C       | 62 | 65",
        "62 … 65 °C       | 62 | 65",
        "between 62 and 65 °C | 62 | 65",
        "von 62 bis 65 Grad   | 62 | 65",
      })
  void parseTemperatureRange_reads_dashes_and_words(String text, double low, double high) {
    TemperatureRange range = PARSER.parseTemperatureRange(text);

    assertThat(range.low().celsius()).isCloseTo(low, within(1e-12));
    assertThat(range.high().celsius()).isCloseTo(high, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "65–62 °C         | range.reversed",
        "62–65            | quantity.missing-unit",
        "62–65–70 °C      | quantity.range",
        "62 °C 65 °C      | quantity.unknown-unit",
        "62– °C           | number.malformed",
        "-300 °C          | temperature.below-absolute-zero",
        "62–65 g          | quantity.wrong-kind",
      })
  void parseTemperatureRange_refuses_the_rest(String text, String code) {
    assertThat(problemOf(() -> PARSER.parseTemperatureRange(text)).code().id()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"5 K,5", "5 °C,5", "9 °F,5", "-9 F,-5"})
  void parseTemperatureDifference_takes_degrees_without_offset(String text, double kelvin) {
    assertThat(PARSER.parseTemperatureDifference(text).kelvin()).isCloseTo(kelvin, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"97°", "97 degrees", "97 deg"})
  void bare_degrees_are_refused_naming_both_scales(String text) {
    Problem point = problemOf(() -> PARSER.parseTemperature(text));
    Problem difference = problemOf(() -> PARSER.parseTemperatureDifference(text));

    assertThat(point.code()).isEqualTo(UnitsProblem.AMBIGUOUS_UNIT);
    assertThat(difference.code()).isEqualTo(UnitsProblem.AMBIGUOUS_UNIT);
    assertThat(point.allowed(Locale.GERMAN)).contains("°C").contains("°F");
  }
}
