// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Quantities of a number of any unit, where no short factory such as {@code grams(730)} stands
 * ready.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<Length> film = Quantities.of(0.5, MILLIMETRE);
 * QuantityKind.LENGTH.in(film, MICROMETRE); // 500.0 µm
 * Quantities.of(2, ImperialUnits.STONE); // 2 st
 * Quantities.of(Double.NaN, GRAM); // throws ProblemException
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

  /** Of a number that was read, and is finite. */
  static <Q extends Quantity<Q>> Quantity<Q> ofNumber(Number value, Unit<Q> unit) {
    return tech.units.indriya.quantity.Quantities.getQuantity(value, unit);
  }
}
