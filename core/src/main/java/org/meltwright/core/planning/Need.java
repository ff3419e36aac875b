// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import static org.meltwright.core.planning.PlanningProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;

/**
 * How much of a material is wanted, and how much of it is on the shelf.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Need wax = Need.of("wax", kilograms(4.4)).withStock(grams(730));
 * wax.missingKilograms(); // 3.670 kg
 * // what is on the shelf is enough
 * wax.withStock(kilograms(5)).missingKilograms(); // 0.000 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param material what the offers call it
 * @param neededKilograms what is wanted, in kg, from 0 to 1e6
 * @param stockKilograms what is there, in kg, from 0 to 1e6
 */
public record Need(String material, double neededKilograms, double stockKilograms) {

  /** Draws a problem if a mass is below zero, above 1e6 kg or not finite. */
  public Need {
    CHECK.between(neededKilograms, 0, 1e6, "need in kg", material);
    CHECK.between(stockKilograms, 0, 1e6, "stock in kg", material);
  }

  /**
   * Returns a need with nothing on the shelf.
   *
   * @param material what the offers call it
   * @param needed what is wanted
   * @return the need
   * @throws org.meltwright.units.ProblemException if the mass is below zero, above 1e6 kg or not
   *     finite
   */
  public static Need of(String material, Quantity<Mass> needed) {
    return new Need(material, CHECK.between(needed, 0, 1e6, "need", material), 0);
  }

  /**
   * Returns a copy with something on the shelf.
   *
   * @param stock what is there
   * @return the new need
   * @throws org.meltwright.units.ProblemException if the mass is below zero, above 1e6 kg or not
   *     finite
   */
  public Need withStock(Quantity<Mass> stock) {
    return new Need(material, neededKilograms, CHECK.between(stock, 0, 1e6, "stock", material));
  }

  /**
   * Returns what must be bought.
   *
   * @return the need less the stock in kg, at least zero
   */
  public double missingKilograms() {
    return Math.max(0, neededKilograms - stockKilograms);
  }
}
