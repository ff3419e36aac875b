// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.meltwright.units.Nearest;
import org.meltwright.units.ProblemException;

class PropertyTextProperties {

  @Property
  void aDensityOfFourDecimals_isReadAsTheNearestNumber_andWrittenAsItWas(
      @ForAll @IntRange(min = 1, max = 99_999) int low,
      @ForAll @IntRange(max = 9_999) int width,
      @ForAll @IntRange(min = 0, max = 99) int celsius) {
    String text =
        decimals(low) + " to " + decimals(low + width + 1) + " g/ml at " + celsius + " °C";
    var value = PropertyKey.SOLID_DENSITY.parse(text);
    assertThat(value.range().lowSi()).isEqualTo(low / 10.0);
    assertThat(PropertyKey.SOLID_DENSITY.format(value)).isEqualTo(text);
  }

  private static String decimals(int tenThousandths) {
    return java.math.BigDecimal.valueOf(tenThousandths, 4).stripTrailingZeros().toPlainString();
  }

  @Property
  void aTemperature_writtenAndReadBack_isTheSame(
      @ForAll @DoubleRange(min = -200, max = 2000) double low,
      @ForAll @DoubleRange(min = 0, max = 500) double width,
      @ForAll TemperatureDefinition definition) {
    double roundLow = Math.round(low * 100) / 100.0;
    double roundHigh = Math.round((low + width) * 100) / 100.0;
    var value =
        new DefinedTemperature(
            org.meltwright.units.TemperatureRange.ofCelsius(roundLow, roundHigh), definition);
    for (PropertyKey<DefinedTemperature> key :
        java.util.List.of(
            PropertyKey.FLASH_POINT, PropertyKey.MELTING_RANGE, PropertyKey.AUTOIGNITION)) {
      if (isAllowed(key, value)) {
        assertThat(key.parse(key.format(value))).isEqualTo(value);
      } else {
        assertThatThrownBy(() -> key.parse(key.format(value))).isInstanceOf(ProblemException.class);
      }
    }
  }

  /** A text is refused for its definition if and only if the value is, made in code. */
  private static boolean isAllowed(PropertyKey<DefinedTemperature> key, DefinedTemperature value) {
    try {
      return key.require(value) == value;
    } catch (ProblemException refused) {
      return false;
    }
  }

  @Property
  void aShare_writtenAndReadBack_isTheSame(@ForAll @IntRange(max = 100_000) int thousandths) {
    String text =
        java.math.BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString() + " %";
    var value = PropertyKey.OIL_CONTENT.parse(text);
    assertThat(PropertyKey.OIL_CONTENT.parse(PropertyKey.OIL_CONTENT.format(value)))
        .isEqualTo(value);
    assertThat(PropertyKey.OIL_CONTENT.format(value)).isEqualTo(text);
  }

  @Property
  void anEditDistance_isZeroForTheSameText_andOneForOneLetterMore(
      @ForAll @net.jqwik.api.constraints.AlphaChars String text, @ForAll char extra) {
    assertThat(Nearest.distance(text, text)).isZero();
    assertThat(Nearest.distance(text, text + extra)).isEqualTo(1);
    assertThat(Nearest.distance(text + extra, text)).isEqualTo(1);
  }
}
