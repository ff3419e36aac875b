// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;

/**
 * A line to be weighed out: its exact mass, and the interval of the balance it is weighed on.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // 12.5 % of pigment in 730 g, on the fine balance
 * ExactLine pigment = ExactLine.of(grams(91.25), ScaleInterval.of(grams(0.1)));
 * pigment.kilograms(); // 0.09125 kg
 * LineRounding.of(List.of(pigment)).lines().get(0).printedKilograms(); // 0.0913 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kilograms the exact mass in kg, at least 0
 * @param interval the interval of its balance
 */
public record ExactLine(double kilograms, ScaleInterval interval) {

  private static final double MOST = 1e9;

  /**
   * Guards the values.
   *
   * @param kilograms the exact mass in kg
   * @param interval the interval of its balance
   * @throws ProblemException if the mass is negative, not finite or above 1e9 kg
   */
  public ExactLine {
    UnitsProblem.CHECK.between(kilograms, 0, MOST, "mass in kg");
    Objects.requireNonNull(interval, "interval");
  }

  /**
   * Returns a line.
   *
   * @param mass the exact mass, at least 0
   * @param interval the interval of its balance
   * @return the line
   * @throws ProblemException if the mass is negative, not finite or above 1e9 kg
   */
  public static ExactLine of(Quantity<Mass> mass, ScaleInterval interval) {
    return new ExactLine(UnitsProblem.CHECK.between(mass, 0, MOST, "mass"), interval);
  }
}
