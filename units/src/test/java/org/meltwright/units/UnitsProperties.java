// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import tech.units.indriya.quantity.Quantities;

class UnitsProperties {

  private static final QuantityParser PARSER = QuantityParser.localeFree();
  private static final QuantityFormatter EXACT = QuantityFormatter.exact();
  private static final List<QuantityKind<?>> KINDS = QuantityKind.all();

  @Provide
  Arbitrary<UnitDefinition<?>> units() {
    return Arbitraries.of(UnitTables.all());
  }

  @Provide
  Arbitrary<Double> numbers() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-1e6, 1e6).ofScale(3),
        Arbitraries.longs().map(Double::longBitsToDouble).filter(UnitsProperties::isOrdinary));
  }

  private static boolean isOrdinary(double value) {
    double size = Math.abs(value);
    return size == 0 || (size > 1e-200 && size < 1e200);
  }

  @Property(tries = 3000)
  void exact_text_in_the_own_unit_parses_back_to_the_same_quantity(
      @ForAll("units") UnitDefinition<?> unit, @ForAll("numbers") double value) {
    backInOwnUnit(unit, value);
  }

  private static <Q extends Quantity<Q>> void backInOwnUnit(UnitDefinition<Q> unit, double value) {
    Quantity<Q> quantity = Quantities.getQuantity(value, unit.unit());
    Quantity<Q> back = PARSER.parse(EXACT.format(quantity), unit.kind());

    assertThat(unit.kind().toSi(back)).isEqualTo(unit.kind().toSi(quantity));
    assertThat(back.getUnit()).isSameAs(unit.unit());
    assertThat(back.getValue().doubleValue()).isEqualTo(value);
  }

  @Property(tries = 3000)
  void exact_text_in_any_unit_parses_back_to_the_same_si_value(
      @ForAll("units") UnitDefinition<?> unit, @ForAll("numbers") double si) {
    backInAnyUnit(unit, si);
  }

  private static <Q extends Quantity<Q>> void backInAnyUnit(UnitDefinition<Q> unit, double si) {
    String text = EXACT.format(unit.kind(), si, unit.unit());
    String german = EXACT.withDecimalComma().format(unit.kind(), si, unit.unit());

    assertThat(unit.kind().toSi(PARSER.parse(text, unit.kind()))).as(text).isEqualTo(si);
    assertThat(unit.kind().toSi(QuantityParser.withDecimalComma().parse(german, unit.kind())))
        .as(german)
        .isEqualTo(si);
  }

  @Property(tries = 2000)
  void conversion_there_and_back_loses_at_most_the_last_digits(
      @ForAll("units") UnitDefinition<?> unit, @ForAll("numbers") double value) {
    assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(1e-15 * Math.abs(value)));
  }

  @Property(tries = 2000)
  void conversion_keeps_the_order(
      @ForAll("units") UnitDefinition<?> unit,
      @ForAll("numbers") double first,
      @ForAll("numbers") double second) {
    if (first <= second) {
      assertThat(unit.toSi(first)).isLessThanOrEqualTo(unit.toSi(second));
    }
  }

  @Property(tries = 2000)
  void conversion_over_a_third_unit_is_conversion(
      @ForAll("units") UnitDefinition<?> from,
      @ForAll("units") UnitDefinition<?> over,
      @ForAll("units") UnitDefinition<?> to,
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e6) double value) {
    if (from.kind() == over.kind() && over.kind() == to.kind()) {
      double direct = to.fromSi(from.toSi(value));
      double detour = to.fromSi(over.toSi(over.fromSi(from.toSi(value))));
      assertThat(detour).isCloseTo(direct, within(2e-15 * direct));
    }
  }

  @Property(tries = 3000)
  void exact_text_of_a_temperature_parses_back_to_the_same_point(
      @ForAll @Scale(9) @DoubleRange(min = -273.15, max = 1e5) double celsius,
      @ForAll TemperatureScale scale) {
    TemperaturePoint point = TemperaturePoint.ofCelsius(celsius);
    String text = EXACT.format(point, scale);

    assertThat(PARSER.parseTemperature(text)).as(text).isEqualTo(point);
  }

  @Property(tries = 2000)
  void celsius_to_fahrenheit_and_back_is_within_1e_12_kelvin(
      @ForAll @Scale(9) @DoubleRange(min = -273.15, max = 1000) double celsius) {
    TemperaturePoint point = TemperaturePoint.ofCelsius(celsius);

    assertThat(TemperaturePoint.ofFahrenheit(point.fahrenheit()).celsius())
        .isCloseTo(celsius, within(1e-12));
    assertThat(TemperaturePoint.ofKelvin(point.kelvin()).celsius())
        .isCloseTo(celsius, within(1e-12));
  }

  @Property(tries = 2000)
  void typed_text_of_up_to_12_digits_comes_back_as_typed(
      @ForAll("typedDegrees") String typed, @ForAll TemperatureScale scale) {
    TemperaturePoint point = PARSER.parseTemperature(typed + " " + scale.symbol());
    int decimals = typed.contains(".") ? typed.length() - typed.indexOf('.') - 1 : 0;

    assertThat(QuantityFormatter.ofDecimals(decimals).format(point, scale))
        .isEqualTo(typed + " " + scale.symbol());
  }

  @Provide
  Arbitrary<String> typedDegrees() {
    return Combinators.combine(
            Arbitraries.longs().between(1, 999_999_999_999L), Arbitraries.integers().between(0, 11))
        .as((digits, scale) -> java.math.BigDecimal.valueOf(digits, scale).toPlainString());
  }

  @Property(tries = 2000)
  void exact_text_of_fractions_ratios_and_ranges_parses_back(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 1e6) double parts) {
    MassFraction mass = MassFraction.of(share);
    VolumeFraction volume = VolumeFraction.of(share);
    MixingRatio ratio = new MixingRatio(1, parts, "resin", "wax");

    assertThat(PARSER.parseMassFraction(EXACT.format(mass))).isEqualTo(mass);
    assertThat(PARSER.parseVolumeFraction(EXACT.format(volume))).isEqualTo(volume);
    assertThat(PARSER.parseMixingRatio(EXACT.format(ratio))).isEqualTo(ratio);
    assertThat(ratio.firstShare() + ratio.secondShare()).isCloseTo(1, within(3e-16));
  }

  @Property(tries = 2000)
  void exact_text_of_ranges_and_differences_parses_back(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 3000) double low,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 300) double width,
      @ForAll TemperatureScale scale) {
    QuantityRange<Density> density = new QuantityRange<>(QuantityKind.DENSITY, low, low + width);
    TemperatureRange range = TemperatureRange.ofCelsius(low, low + width);
    TemperatureDifference difference = TemperatureDifference.ofKelvin(low - width);

    assertThat(
            PARSER.parseRange(
                EXACT.format(density, UsCustomaryUnits.POUND_PER_GALLON), QuantityKind.DENSITY))
        .isEqualTo(density);
    assertThat(PARSER.parseTemperatureRange(EXACT.format(range, scale))).isEqualTo(range);
    assertThat(PARSER.parseTemperatureDifference(EXACT.format(difference, scale)))
        .isEqualTo(difference);
  }

  @Property(tries = 10_000)
  void any_text_is_read_or_refused_with_problems(@ForAll("hostile") String text) {
    readOrRefuse(text, 0);
    readOrRefuse(text, 1);
    readOrRefuse(text, 2);
    readOrRefuse(text, 3);
    readOrRefuse(text, 4);
    readOrRefuse(text, 5);
    for (QuantityKind<?> kind : KINDS.subList(0, 2)) {
      refusedOrNot(() -> PARSER.parse(text, kind));
    }
  }

  private static void readOrRefuse(String text, int what) {
    refusedOrNot(
        () -> {
          switch (what) {
            case 0 -> PARSER.parseTemperature(text);
            case 1 -> PARSER.parseTemperatureRange(text);
            case 2 -> PARSER.parseMixingRatio(text);
            case 3 -> PARSER.parseMassFraction(text);
            case 4 -> QuantityParser.withDecimalComma().parseStatedDensity(text);
            default -> PARSER.parseRange(text, QuantityKind.DENSITY);
          }
        });
  }

  private static void refusedOrNot(Runnable reading) {
    try {
      reading.run();
    } catch (ProblemException refused) {
      assertThat(refused.problems()).isNotEmpty();
      assertThat(refused.getMessage()).hasSizeLessThan(2000).doesNotContain("\n", "\u0000");
    }
  }

  /** Any characters; and pieces of what is right, wrongly joined, which reach further. */
  @Provide
  Arbitrary<String> hostile() {
    Arbitrary<String> anything = Arbitraries.strings().ofMaxLength(120);
    Arbitrary<String> pieces =
        Arbitraries.of(
                "1",
                "0",
                "9",
                "12",
                ".",
                ",",
                "e",
                "E",
                "/",
                "½",
                " ",
                "\u00a0",
                "-",
                "–",
                "−",
                "+",
                ":",
                "%",
                "‰",
                "ppm",
                "g",
                "kg",
                "lb",
                "oz",
                "fl oz",
                "°C",
                "°F",
                "K",
                "C",
                "to",
                "bis",
                "by",
                "volume",
                "cup",
                "US",
                "m³",
                "^3",
                "(",
                ")",
                "{",
                "}",
                "$",
                "\\",
                "\n",
                "\u202e",
                "\ud83d",
                "NaN",
                "1e999",
                "00000000000000000000",
                "resin",
                "wax",
                "bulk")
            .list()
            .ofMaxSize(14)
            .map(words -> String.join("", words));
    return Arbitraries.oneOf(anything, pieces, pieces);
  }

  @Property(tries = 2000)
  void every_ratio_there_is_parses_back_from_its_exact_text(
      @ForAll("numbers") double first,
      @ForAll("numbers") double second,
      @ForAll("sides") String firstSide,
      @ForAll("sides") String secondSide) {
    MixingRatio ratio;
    try {
      ratio = new MixingRatio(Math.abs(first), Math.abs(second), firstSide, secondSide);
    } catch (ProblemException refused) {
      return;
    }
    assertThat(PARSER.parseMixingRatio(EXACT.format(ratio))).isEqualTo(ratio);
  }

  @Provide
  Arbitrary<String> sides() {
    return Arbitraries.oneOf(
        Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(60),
        Arbitraries.strings().withChars("aé½2: -.\n\u00a0\u2009\u2028±'").ofMaxLength(8),
        Arbitraries.strings().ofMaxLength(60));
  }
}
