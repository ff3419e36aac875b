// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import static org.meltwright.core.thermal.ThermalProblem.CHECK;

import org.meltwright.core.numeric.Texts;
import org.meltwright.units.Bilingual;

/**
 * A named input of an estimate: its range, and which way it moves the result.
 *
 * <p>The central value of an estimate has every input at the middle of its range; the low value has
 * every input at the end that makes the result small, the high value at the other.
 *
 * <p>A cake of 20 to 30 mm; the thicker it is, the longer it takes:
 *
 * <pre>{@code
 * EstimateInput thickness =
 *     new EstimateInput("thickness", 20, 30, "mm", EstimateInput.Direction.RAISES);
 * thickness.middle(); // 25 mm
 * thickness; // thickness 20–30 mm
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what it is
 * @param low the low end, in the unit
 * @param high the high end, in the unit, not below the low end
 * @param unit the unit
 * @param direction which way more of it moves the result
 */
public record EstimateInput(
    String name, double low, double high, String unit, Direction direction) {

  /** Which way more of an input moves a result. */
  public enum Direction {
    /** More of it makes the result larger. */
    RAISES,
    /** More of it makes the result smaller. */
    LOWERS
  }

  /** Which of the three values of an estimate is worked out. */
  public enum Corner {
    /** The end at which each input makes the result least. */
    LOW,
    /** The middle of each input. */
    CENTRAL,
    /** The end at which each input makes the result greatest. */
    HIGH
  }

  /** Draws a problem if an end is not finite or the ends are reversed. */
  public EstimateInput {
    CHECK.finite(low, name);
    CHECK.finite(high, name);
    if (low > high) {
      throw CHECK.reversed(
          Bilingual.range(Bilingual.of(low), Bilingual.of(high)).plus(" " + unit), name);
    }
  }

  /**
   * Returns the value half way between the ends.
   *
   * @return the middle, in the unit
   */
  public double middle() {
    return low + (high - low) / 2;
  }

  /**
   * Returns the value of the input at a corner of the result.
   *
   * @param corner which value of the result is worked out
   * @return the end or the middle that belongs to it, in the input's unit
   */
  public double at(Corner corner) {
    if (corner == Corner.CENTRAL) {
      return middle();
    }
    boolean small = corner == Corner.LOW;
    return (direction == Direction.RAISES) == small ? low : high;
  }

  /**
   * Returns the input on one line.
   *
   * @return name, range and unit, with three significant figures
   */
  @Override
  public String toString() {
    return name
        + " "
        + (low == high ? Texts.three(low) : Texts.three(low) + "–" + Texts.three(high))
        + " "
        + unit;
  }
}
