// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/**
 * The steps in which masses of one material are counted: the largest that divides all its packages,
 * or a coarser one where that would make more than {@link #MOST_STEPS} steps.
 *
 * <p>On a coarser grid packages are counted too small to be sure that a plan suffices, and too
 * large to be sure that a bound holds.
 */
final class Grid {

  static final int MOST_STEPS = 200_000;

  private final boolean isExact;
  private final int steps;
  private final int[] low;
  private final int[] high;

  Grid(long need, long[] masses) {
    long step = 0;
    for (long mass : masses) {
      step = gcd(mass, step);
    }
    long coarse = ceilingDiv(need, MOST_STEPS);
    this.isExact = step >= coarse;
    long used = Math.max(step, coarse);
    this.steps = Math.toIntExact(ceilingDiv(need, used));
    this.low = new int[masses.length];
    this.high = new int[masses.length];
    for (int p = 0; p < masses.length; p++) {
      low[p] = (int) Math.min(steps, masses[p] / used);
      high[p] = (int) Math.min(steps, ceilingDiv(masses[p], used));
    }
  }

  static long ceilingDiv(long value, long by) {
    return -Math.floorDiv(-value, by);
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  boolean isExact() {
    return isExact;
  }

  int steps() {
    return steps;
  }

  /** The steps of each package, rounded down: what it covers for sure. */
  int[] low() {
    return low;
  }

  /** The steps of each package, rounded up: what it covers at most. */
  int[] high() {
    return high;
  }
}
