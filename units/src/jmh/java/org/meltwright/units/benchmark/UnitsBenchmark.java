// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.benchmark;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Mass;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.ScaleInterval;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.UsCustomaryUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The door, text and rounding, each beside the units engine and beside plain doubles. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class UnitsBenchmark {

  private static final QuantityParser PARSER = QuantityParser.localeFree();
  private static final QuantityFormatter EXACT = QuantityFormatter.exact();
  private static final QuantityFormatter THREE_DIGITS = QuantityFormatter.ofSignificantDigits(3);
  private static final ScaleInterval GRAM = ScaleInterval.ofKilograms(0.001);

  private final Quantity<Mass> pounds = UsCustomaryUnits.pounds(1.6);
  private final Quantity<Mass> enginePounds = Quantities.getQuantity(1600.5, Units.GRAM);
  private final UnitConverter cached = Units.GRAM.getConverterTo(Units.KILOGRAM);
  private final Unit<Mass> pound = UsCustomaryUnits.POUND;
  private double number = 1.6;
  private String kilogramText = "1.5 kg";
  private String poundText = "1 1/2 lb";
  private String temperatureText = "93.3 °C";
  private String rangeText = "62–65 °C";
  private String misspeltText = "12 gramms";
  private String longText = "9".repeat(5000) + " kg";
  private String numberText = "1.5";

  @Benchmark
  public double door_ours() {
    return QuantityKind.MASS.toSi(pounds);
  }

  @Benchmark
  public double door_ours_unit_of_the_engine() {
    return QuantityKind.MASS.toSi(enginePounds);
  }

  @Benchmark
  public double door_engine_to() {
    return enginePounds.to(Units.KILOGRAM).getValue().doubleValue();
  }

  @Benchmark
  public double door_engine_cached_converter() {
    return cached.convert(enginePounds.getValue().doubleValue());
  }

  @Benchmark
  public double door_plain_double() {
    return number * 0.45359237;
  }

  @Benchmark
  public double convert_si_to_unit_ours() {
    return QuantityKind.MASS.fromSi(number, pound);
  }

  @Benchmark
  public Quantity<Mass> parse_kilograms_ours() {
    return PARSER.parseMass(kilogramText);
  }

  @Benchmark
  public Quantity<Mass> parse_mixed_number_of_pounds_ours() {
    return PARSER.parseMass(poundText);
  }

  @Benchmark
  public TemperaturePoint parse_temperature_ours() {
    return PARSER.parseTemperature(temperatureText);
  }

  @Benchmark
  public TemperatureRange parse_temperature_range_ours() {
    return PARSER.parseTemperatureRange(rangeText);
  }

  @Benchmark
  public Object parse_misspelt_unit_ours() {
    return refused(misspeltText);
  }

  @Benchmark
  public Object parse_5000_digits_ours() {
    return refused(longText);
  }

  private static Object refused(String text) {
    try {
      return PARSER.parseMass(text);
    } catch (ProblemException e) {
      return e;
    }
  }

  @Benchmark
  public Quantity<?> parse_kilograms_engine() {
    return Quantities.getQuantity(kilogramText);
  }

  @Benchmark
  public double parse_plain_double() {
    return Double.parseDouble(numberText);
  }

  @Benchmark
  public String format_exact_ours() {
    return EXACT.format(pounds);
  }

  @Benchmark
  public String format_exact_in_another_unit_ours() {
    return EXACT.format(pounds, MetricUnits.GRAM);
  }

  @Benchmark
  public String format_three_digits_ours() {
    return THREE_DIGITS.format(pounds);
  }

  @Benchmark
  public String format_engine() {
    return enginePounds.toString();
  }

  @Benchmark
  public String format_plain_double() {
    return Double.toString(number);
  }

  @Benchmark
  public double round_to_interval_ours() {
    return GRAM.roundKilograms(number);
  }

  @Benchmark
  public double round_plain_double() {
    return Math.floor(number * 1000 + 0.5) / 1000;
  }
}
