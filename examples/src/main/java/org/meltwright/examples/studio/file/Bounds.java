// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.math.BigDecimal;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import org.meltwright.examples.studio.day.Costing;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.UnitsProblem;

/**
 * What a number of the studio file may be, and how that is said: with units that people use.
 *
 * @param low the least value
 * @param high the greatest value
 * @param lowText the least value in words
 * @param highText the greatest value in words
 * @param unit the unit that a value is said in
 */
record Bounds(double low, double high, Bilingual lowText, Bilingual highText, String unit) {

  private static final Bounds MASS = said(1e-9, 1e5, "1 µg", "100 t", "kg");
  private static final Bounds VOLUME = said(1e-9, 1e5, "1 µl", "100000 m³", "m³");
  private static final Bounds LENGTH = said(1e-9, 1e5, "1 nm", "100 km", "m");
  private static final Bounds TIME = said(1e-3, 1e5, "0.001 s", "100000 s (27.8 h)", "s");
  private static final Bounds POWER = said(1e-3, 1e5, "0.001 W", "100 kW", "W");
  private static final Bounds DENSITY = said(1, 1e5, "1 kg/m³", "100 g/ml", "kg/m³");

  /** The bounds of an amount, in the SI unit of its kind. */
  static Bounds of(QuantityKind<?> kind) {
    return switch (kind.id()) {
      case "mass" -> MASS;
      case "volume" -> VOLUME;
      case "length" -> LENGTH;
      case "time" -> TIME;
      case "power" -> POWER;
      case "density" -> DENSITY;
      default -> throw new IllegalArgumentException("no bounds of " + kind.id());
    };
  }

  private static final double HOTTEST_CELSIUS = 400;
  private static final int MOST_THINGS = 100_000_000;

  private static final Bounds MOLTEN = between(Costing.ROOM.celsius(), HOTTEST_CELSIUS, "°C");

  /** Reads an amount above zero, in the SI unit of its kind. */
  static <Q extends Quantity<Q>> BiFunction<QuantityParser, String, Double> amount(
      QuantityKind<Q> kind) {
    return of(kind).reader(kind);
  }

  /** Reads an amount that may be nothing, in the SI unit of its kind. */
  static <Q extends Quantity<Q>> BiFunction<QuantityParser, String, Double> amountOrNone(
      QuantityKind<Q> kind) {
    return of(kind).fromZero().reader(kind);
  }

  private <Q extends Quantity<Q>> BiFunction<QuantityParser, String, Double> reader(
      QuantityKind<Q> kind) {
    return (parser, text) -> require(kind.toSi(parser.parse(text, kind)), text, kind.id());
  }

  /** Nothing of this trade is molten at room temperature, and no reading of it is above 400 °C. */
  static TemperaturePoint molten(QuantityParser parser, String text) {
    TemperaturePoint reading = parser.parseTemperature(text);
    MOLTEN.require(reading.celsius(), text, "temperature");
    return reading;
  }

  /** A number of things that are counted, at least one. */
  static int count(int number, String things) {
    return (int) between(1, MOST_THINGS, things).require(number, "number");
  }

  private static Bounds said(
      double low, double high, String lowText, String highText, String unit) {
    return new Bounds(low, high, inWords(lowText), inWords(highText), unit);
  }

  /** Bounds that are said in the unit of the value. */
  static Bounds between(double low, double high, String unit) {
    return new Bounds(low, high, inWords(plain(low)), in(unit, plain(high)), unit);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** The same with nothing allowed, too. */
  Bounds fromZero() {
    return new Bounds(0, high, inWords("0"), highText, unit);
  }

  /** Guards a value; one that lies outside is said in its unit. */
  double require(double value, String what) {
    return require(value, in(unit, plain(value)), what);
  }

  /**
   * Guards a value.
   *
   * @param written the value as it was written
   * @throws ProblemException if it lies outside
   */
  double require(double value, String written, String what) {
    return require(value, Bilingual.of(written), what);
  }

  private double require(double value, Bilingual written, String what) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new ProblemException(
        Problem.of(UnitsProblem.VALUE_OUT_OF_RANGE, written)
            .with("what", StudioProblem.CHECK.name(what))
            .with("low", lowText)
            .with("high", highText));
  }

  /** A number of things or units, of which the things have names. */
  private static Bilingual in(String unit, String number) {
    Bilingual value = inWords(number);
    Bilingual name = StudioProblem.CHECK.name(unit);
    return new Bilingual(
        value.english() + " " + name.english(), value.german() + " " + name.german());
  }

  /** Numbers with their units: only the decimal sign differs. */
  private static Bilingual inWords(String text) {
    return new Bilingual(text, text.replace('.', ','));
  }
}
