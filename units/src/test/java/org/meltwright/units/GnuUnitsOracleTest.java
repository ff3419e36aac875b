// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every row of GNU Units' printed conversions; the data file names tool, version and command. */
class GnuUnitsOracleTest {

  private static final Map<String, Unit<?>> UNITS =
      Map.ofEntries(
          Map.entry("mg", MetricUnits.MILLIGRAM),
          Map.entry("g", MetricUnits.GRAM),
          Map.entry("kg", MetricUnits.KILOGRAM),
          Map.entry("tonne", MetricUnits.TONNE),
          Map.entry("grain", UsCustomaryUnits.GRAIN),
          Map.entry("oz", UsCustomaryUnits.OUNCE),
          Map.entry("troyounce", UsCustomaryUnits.TROY_OUNCE),
          Map.entry("lb", UsCustomaryUnits.POUND),
          Map.entry("ton", UsCustomaryUnits.SHORT_TON),
          Map.entry("ml", MetricUnits.MILLILITRE),
          Map.entry("liter", MetricUnits.LITRE),
          Map.entry("cm^3", MetricUnits.CUBIC_CENTIMETRE),
          Map.entry("m^3", MetricUnits.CUBIC_METRE),
          Map.entry("in^3", UsCustomaryUnits.CUBIC_INCH),
          Map.entry("ft^3", UsCustomaryUnits.CUBIC_FOOT),
          Map.entry("ustsp", UsCustomaryUnits.TEASPOON),
          Map.entry("ustbsp", UsCustomaryUnits.TABLESPOON),
          Map.entry("usfloz", UsCustomaryUnits.FLUID_OUNCE),
          Map.entry("uscup", UsCustomaryUnits.CUP),
          Map.entry("uspint", UsCustomaryUnits.PINT),
          Map.entry("usquart", UsCustomaryUnits.QUART),
          Map.entry("usgallon", UsCustomaryUnits.GALLON),
          Map.entry("brfloz", ImperialUnits.FLUID_OUNCE),
          Map.entry("brpint", ImperialUnits.PINT),
          Map.entry("brgallon", ImperialUnits.GALLON),
          Map.entry("mm", MetricUnits.MILLIMETRE),
          Map.entry("cm", MetricUnits.CENTIMETRE),
          Map.entry("m", MetricUnits.METRE),
          Map.entry("mil", UsCustomaryUnits.THOU),
          Map.entry("in", UsCustomaryUnits.INCH),
          Map.entry("ft", UsCustomaryUnits.FOOT),
          Map.entry("cm^2", MetricUnits.SQUARE_CENTIMETRE),
          Map.entry("m^2", MetricUnits.SQUARE_METRE),
          Map.entry("in^2", UsCustomaryUnits.SQUARE_INCH),
          Map.entry("ft^2", UsCustomaryUnits.SQUARE_FOOT),
          Map.entry("g/ml", MetricUnits.GRAM_PER_MILLILITRE),
          Map.entry("kg/m^3", MetricUnits.KILOGRAM_PER_CUBIC_METRE),
          Map.entry("lb/ft^3", UsCustomaryUnits.POUND_PER_CUBIC_FOOT),
          Map.entry("lb/in^3", UsCustomaryUnits.POUND_PER_CUBIC_INCH),
          Map.entry("lb/usgallon", UsCustomaryUnits.POUND_PER_GALLON),
          Map.entry("oz/usfloz", UsCustomaryUnits.OUNCE_PER_FLUID_OUNCE),
          Map.entry("J", MetricUnits.JOULE),
          Map.entry("kJ", MetricUnits.KILOJOULE),
          Map.entry("kWh", MetricUnits.KILOWATT_HOUR),
          Map.entry("kcal", MetricUnits.THERMOCHEMICAL_KILOCALORIE),
          Map.entry("btu", UsCustomaryUnits.INTERNATIONAL_TABLE_BTU));

  @ParameterizedTest
  @CsvFileSource(resources = "gnu-units.csv", numLinesToSkip = 1)
  void convert_agrees_with_gnu_units(String kind, String from, String to, double expected) {
    switch (kind) {
      case "temperature" -> assertThat(temperature(from, to)).isCloseTo(expected, within(1e-12));
      case "tempinterval" ->
          assertThat(difference(from, to)).isCloseTo(expected, within(1e-14 * expected));
      default -> assertThat(factor(kind, from, to)).isCloseTo(expected, within(1e-14 * expected));
    }
  }

  @Test
  void the_data_file_holds_306_rows_and_its_header() {
    assertThat(getClass().getResourceAsStream("gnu-units.csv"))
        .asString(java.nio.charset.StandardCharsets.UTF_8)
        .startsWith("# Expected unit conversions by GNU Units 2.22")
        .hasLineCount(309);
  }

  private static double factor(String kind, String from, String to) {
    QuantityKind<?> ours =
        QuantityKind.all().stream().filter(k -> k.id().equals(kind)).findFirst().orElseThrow();
    return convert(ours, from, to);
  }

  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> double convert(
      QuantityKind<Q> kind, String from, String to) {
    Unit<Q> source = (Unit<Q>) UNITS.get(from);
    Unit<Q> target = (Unit<Q>) UNITS.get(to);
    return kind.fromSi(kind.toSi(1, source), target);
  }

  /** GNU Units writes points as tempF(200), tempC. */
  private static double temperature(String from, String to) {
    double degrees = Double.parseDouble(from.substring(6, from.length() - 1));
    return scale(to).degrees(scale(from).point(degrees));
  }

  private static double difference(String from, String to) {
    TemperatureDifference one = scale("temp" + from.charAt(from.length() - 1)).difference(1);
    return scale("temp" + to.charAt(to.length() - 1)).degrees(one);
  }

  private static TemperatureScale scale(String gnu) {
    return switch (gnu.charAt(4)) {
      case 'C' -> TemperatureScale.CELSIUS;
      case 'F' -> TemperatureScale.FAHRENHEIT;
      case 'K' -> TemperatureScale.KELVIN;
      default -> throw new IllegalArgumentException(gnu);
    };
  }
}
