// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.List;
import java.util.Objects;

/**
 * A mixing ratio of two named sides, such as 1 : 8 resin : wax.
 *
 * <p>1 : 8 is one part in nine: its first side has a share of 1/9, not 1/8. The ratio does not say
 * whether parts are by mass or by volume; who uses it does.
 *
 * <p>Immutable and thread-safe.
 *
 * @param firstParts parts of the first side, at least 0
 * @param secondParts parts of the second side, at least 0, not both 0
 * @param firstSide the name of the first side, for example "resin"
 * @param secondSide the name of the second side, for example "wax"
 */
public record MixingRatio(
    double firstParts, double secondParts, String firstSide, String secondSide) {

  private static final double MOST = 1e12;

  /**
   * Guards the values.
   *
   * @param firstParts parts of the first side
   * @param secondParts parts of the second side
   * @param firstSide the name of the first side
   * @param secondSide the name of the second side
   * @throws ProblemException if a part is negative or not finite, or both are zero
   */
  public MixingRatio {
    UnitsProblem.requireBetween(firstParts, 0, MOST, "ratio");
    UnitsProblem.requireBetween(secondParts, 0, MOST, "ratio");
    UnitsProblem.requireBetween(firstParts + secondParts, Double.MIN_NORMAL, 2 * MOST, "ratio");
    for (String side : List.of(firstSide, secondSide)) {
      Objects.requireNonNull(side);
    }
  }

  /**
   * Returns the share of the first side in the whole.
   *
   * @return first / (first + second); 1/9 for 1 : 8
   */
  public double firstShare() {
    return firstParts / (firstParts + secondParts);
  }

  /**
   * Returns the share of the second side in the whole.
   *
   * @return second / (first + second); 8/9 for 1 : 8
   */
  public double secondShare() {
    return secondParts / (firstParts + secondParts);
  }

  /**
   * Returns the ratio with its sides, locale-free.
   *
   * @return for example "1.0:8.0 resin:wax"
   */
  @Override
  public String toString() {
    return firstParts + ":" + secondParts + " " + firstSide + ":" + secondSide;
  }
}
