// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import org.meltwright.units.Bilingual;

/**
 * A range of numbers of a named kind, such as an acid value in mg KOH/g or a refractive index.
 *
 * <p>A source may give a lower bound only: then the high end is infinite.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
 * NumberRange oil = white.require(PropertyKey.OIL_ABSORPTION).value();
 * oil; // 15 to 25 g/100 g
 * oil.middle(); // 20 g/100 g
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param low the low end, finite
 * @param high the high end, not below the low end
 * @param unit the unit as the field writes it; empty for a pure number
 */
public record NumberRange(double low, double high, String unit) {

  /** Draws a problem if the low end is not finite or the ends are reversed. */
  public NumberRange {
    CHECK.finite(low, "low end of a number range");
    if (!(low <= high)) {
      throw CHECK.reversed(
          Bilingual.range(Bilingual.of(low), Bilingual.of(high)).plus(" " + unit), "number range");
    }
    low = low + 0.0; // −0 and 0 are one number
    high = high + 0.0;
  }

  /**
   * Tells whether the source gives a lower bound only.
   *
   * @return whether the high end is infinite
   */
  public boolean isOpenAbove() {
    return high == Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the number half way between the ends; of a lower bound, the bound.
   *
   * @return the middle, in {@link #unit()}
   */
  public double middle() {
    return isOpenAbove() ? low : low + (high - low) / 2;
  }

  @Override
  public String toString() {
    return (Span.format(low, high, 0) + " " + unit).strip();
  }
}
