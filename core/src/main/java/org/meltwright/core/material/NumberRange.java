// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.UnitsProblem;

/**
 * A range of numbers of a named kind, such as an acid value in mg KOH/g or a refractive index.
 *
 * <p>Immutable and thread-safe.
 *
 * @param low the low end
 * @param high the high end, not below the low end
 * @param unit the unit as the field writes it; empty for a pure number
 */
public record NumberRange(double low, double high, String unit) {

  /**
   * Guards the order of the ends.
   *
   * @param low the low end
   * @param high the high end
   * @param unit the unit
   * @throws ProblemException if an end is not a number or the ends are reversed
   */
  public NumberRange {
    if (!(low <= high)) {
      throw new ProblemException(
          Problem.of(UnitsProblem.RANGE_REVERSED, low + " to " + high + " " + unit)
              .with("what", "number range"));
    }
  }

  /**
   * Returns the number half way between the ends.
   *
   * @return the middle, in {@link #unit()}
   */
  public double middle() {
    return low + (high - low) / 2;
  }
}
