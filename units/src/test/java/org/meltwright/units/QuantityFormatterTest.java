// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.meltwright.units.MetricUnits.grams;

import java.math.BigDecimal;
import java.util.Locale;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class QuantityFormatterTest {

  private static final QuantityFormatter EXACT = QuantityFormatter.exact();

  @Test
  void format_unit_digits_and_decimal_sign_are_the_callers() {
    assertThat(EXACT.format(grams(730))).isEqualTo("730 g");
    assertThat(EXACT.format(grams(730), MetricUnits.KILOGRAM)).isEqualTo("0.73 kg");
    assertThat(EXACT.withDecimalComma().format(grams(730), MetricUnits.KILOGRAM))
        .isEqualTo("0,73 kg");
    assertThat(
            QuantityFormatter.ofDecimals(1)
                .withLocale(Locale.GERMANY)
                .format(grams(1234.56), UsCustomaryUnits.OUNCE))
        .isEqualTo("43,5 oz");
    assertThat(QuantityFormatter.ofSignificantDigits(3).format(grams(1234.5))).isEqualTo("1230 g");
    assertThat(QuantityFormatter.ofDecimals(2).format(grams(5))).isEqualTo("5.00 g");
    assertThat(QuantityFormatter.ofDecimals(1).withLocale(Locale.UK).format(grams(0.25)))
        .isEqualTo("0.3 g");
  }

  @ParameterizedTest
  @CsvSource({"1e300,1e300 g", "1.5e-300,1.5e-300 g", "0,0 g", "-2.5,-2.5 g", "100000,100000 g"})
  void exact_writes_few_digits_without_grouping(double grams, String text) {
    assertThat(EXACT.format(grams(grams))).isEqualTo(text);
  }

  @Test
  void format_a_unit_of_others_takes_the_symbol_of_the_same_unit_here() {
    assertThat(EXACT.format(Quantities.getQuantity(2, Units.GRAM))).isEqualTo("2 g");
    assertThat(EXACT.format(Quantities.getQuantity(2, Units.KILOGRAM))).isEqualTo("2 kg");
    assertThatThrownBy(() -> EXACT.format(Quantities.getQuantity(2, Units.GRAM.multiply(7))))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void format_values_of_the_other_types() {
    assertThat(EXACT.format(TemperaturePoint.ofFahrenheit(200), TemperatureScale.FAHRENHEIT))
        .isEqualTo("200 °F");
    assertThat(
            QuantityFormatter.ofDecimals(1)
                .format(TemperaturePoint.ofFahrenheit(200), TemperatureScale.CELSIUS))
        .isEqualTo("93.3 °C");
    assertThat(EXACT.format(TemperatureRange.ofCelsius(62, 65), TemperatureScale.CELSIUS))
        .isEqualTo("62–65 °C");
    assertThat(EXACT.format(TemperatureDifference.ofKelvin(5), TemperatureScale.FAHRENHEIT))
        .isEqualTo("9 °F");
    assertThat(EXACT.format(MassFraction.of(0.1))).isEqualTo("10 % by mass");
    assertThat(EXACT.format(VolumeFraction.ofPercent(12.5))).isEqualTo("12.5 % by volume");
    assertThat(EXACT.format(new MixingRatio(1, 8, "resin", "wax"))).isEqualTo("1:8 resin:wax");
    assertThat(
            EXACT.format(
                QuantityParser.localeFree().parseRange("0.82–0.86 g/ml", QuantityKind.DENSITY),
                MetricUnits.KILOGRAM_PER_CUBIC_METRE))
        .isEqualTo("820–860 kg/m³");
  }

  @ParameterizedTest
  @CsvSource({
    "199.4,FAHRENHEIT",
    "0.1,CELSIUS",
    "-459.67,FAHRENHEIT",
    "363.15,KELVIN",
    "98.6,FAHRENHEIT",
    "123456789.012,FAHRENHEIT",
    "0.00000000001,FAHRENHEIT",
    "0.00000012345,KELVIN",
    "-273.15,CELSIUS",
    "93.3333333333,CELSIUS",
    "1234567.89012,KELVIN",
    "0,KELVIN"
  })
  void text_of_12_digits_comes_back_as_typed(String typed, TemperatureScale scale) {
    TemperaturePoint point =
        QuantityParser.localeFree().parseTemperature(typed + " " + scale.symbol());
    int decimals = typed.contains(".") ? typed.length() - typed.indexOf('.') - 1 : 0;

    assertThat(QuantityFormatter.ofDecimals(decimals).format(point, scale))
        .isEqualTo(typed + " " + scale.symbol());
  }

  @Test
  void ofDecimals_out_of_range_is_refused() {
    assertThatThrownBy(() -> QuantityFormatter.ofDecimals(-1)).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> QuantityFormatter.ofSignificantDigits(0))
        .isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "-12442404876144000000 atm",
    "1.60074e21 g",
    "-5.46016e22 g",
    "9007199254740993 g",
    "1.2e40 lb/gal US"
  })
  void exact_of_a_whole_number_beyond_2_to_53_reads_back_bit_for_bit(String text) {
    int space = text.indexOf(' ');
    UnitDefinition<?> unit = UnitTables.find(UnitTable.key(text.substring(space + 1)));
    readBack(text, unit);
    for (double value : new double[] {1, Math.nextUp(1.0), Math.nextDown(1.0)}) {
      exactReadsBack(Double.parseDouble(text.substring(0, space)) * value, unit);
    }
  }

  /** The SI value is that of the number written, rounded once. */
  private static <Q extends Quantity<Q>> void readBack(String text, UnitDefinition<Q> unit) {
    Quantity<Q> read = QuantityParser.localeFree().parse(text, unit.kind());
    BigDecimal written = new BigDecimal(text.substring(0, text.indexOf(' ')));

    assertThat(unit.kind().toSi(read)).isEqualTo(unit.toSiExact(written).doubleValue());
    exactReadsBack(unit.kind().toSi(read), unit);
  }

  private static <Q extends Quantity<Q>> void exactReadsBack(double si, UnitDefinition<Q> unit) {
    String text = QuantityFormatter.exact().format(unit.kind(), si, unit.unit());
    Quantity<Q> back = QuantityParser.localeFree().parse(text, unit.kind());

    assertThat(unit.kind().toSi(back)).as(text).isEqualTo(si);
  }

  @ParameterizedTest
  @CsvSource({"918604,mbar", "-3954570,mbar", "-494864,mbar"})
  void exact_of_few_digits_that_a_double_misses_reads_back_bit_for_bit(double si, String unit) {
    exactReadsBack(si, UnitTables.find(unit));
  }
}
