// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Quantities of a number of any unit, where no short factory such as {@code grams(730)} stands
 * ready, and of texts of any kind.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<Length> film = Quantities.of(0.5, MILLIMETRE);
 * QuantityKind.LENGTH.in(film, MICROMETRE); // 500.0 µm
 * Quantities.of(2, ImperialUnits.STONE); // 2 st
 * Quantities.of(Double.NaN, GRAM); // throws ProblemException
 * Quantity<?> typed = Quantities.parse("1,5 kg", Locale.GERMANY); // 1.5 kg
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class Quantities {

  private Quantities() {}

  /**
   * Returns a quantity of a number of units.
   *
   * @param <Q> the kind as a type
   * @param value the number, finite
   * @param unit the unit
   * @return the quantity
   * @throws ProblemException if the number is not finite
   */
  public static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
    if (!Double.isFinite(value)) {
      UnitsProblem.CHECK.finite(value, QuantityKind.of(unit).noun());
    }
    return ofNumber(value, unit);
  }

  /**
   * Reads a quantity of any kind, which its unit tells, with a decimal point.
   *
   * <p>Who expects a mass asks for one with {@link QuantityParser#parseMass}, which refuses a
   * volume.
   *
   * @param text for example "1.5 kg" or "90 min"
   * @return the quantity, in the unit written
   * @throws ProblemException if the text is not a quantity, or its unit is not known
   */
  public static Quantity<?> parse(CharSequence text) {
    return parse(text, QuantityParser.localeFree());
  }

  /**
   * Reads a quantity of any kind, which its unit tells, with the decimal sign of a locale.
   *
   * @param text for example "1,5 kg"
   * @param locale the person's locale
   * @return the quantity, in the unit written
   * @throws ProblemException if the text is not a quantity, or its unit is not known
   */
  public static Quantity<?> parse(CharSequence text, Locale locale) {
    return parse(text, QuantityParser.forLocale(locale));
  }

  private static Quantity<?> parse(CharSequence text, QuantityParser parser) {
    return parser.parse(text, QuantityReader.kind(parser.read(text)));
  }

  /** Of a number that was read, and is finite. */
  static <Q extends Quantity<Q>> Quantity<Q> ofNumber(Number value, Unit<Q> unit) {
    return tech.units.indriya.quantity.Quantities.getQuantity(value, unit);
  }
}
