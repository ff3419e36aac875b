// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.Arrays;

/**
 * The least pair (first, then second) of summed values with which packages cover each number of
 * steps: a dynamic programme over the steps.
 */
final class CoverTable {

  static final long NONE = Long.MAX_VALUE;

  private final int[] steps;
  private final long[] first;
  private final long[] second;
  private final int[] choice;

  /**
   * Fills the table.
   *
   * @param most the number of steps to cover
   * @param steps the steps of each package; one of zero steps is left out
   * @param firsts what is made least, for each package, zero or more; {@link #NONE} leaves it out
   * @param seconds what decides between equals, for each package, zero or more
   */
  CoverTable(int most, int[] steps, long[] firsts, long[] seconds) {
    this.steps = steps;
    this.first = new long[most + 1];
    this.second = new long[most + 1];
    this.choice = new int[most + 1];
    int[] used = usable(steps, firsts);
    for (int j = 1; j <= most; j++) {
      fill(j, used, firsts, seconds);
    }
  }

  private static int[] usable(int[] steps, long[] firsts) {
    int[] all = new int[steps.length];
    int n = 0;
    for (int p = 0; p < steps.length; p++) {
      if (steps[p] > 0 && firsts[p] != NONE) {
        all[n++] = p;
      }
    }
    return Arrays.copyOf(all, n);
  }

  private void fill(int j, int[] used, long[] firsts, long[] seconds) {
    long bestFirst = NONE;
    long bestSecond = NONE;
    int best = -1;
    for (int p : used) {
      int rest = Math.max(0, j - steps[p]);
      long a = first[rest];
      if (a == NONE) {
        continue;
      }
      a += firsts[p];
      long b = second[rest] + seconds[p];
      if (a < bestFirst || (a == bestFirst && b < bestSecond)) {
        bestFirst = a;
        bestSecond = b;
        best = p;
      }
    }
    first[j] = bestFirst;
    second[j] = bestSecond;
    choice[j] = best;
  }

  boolean isCovered() {
    return first[first.length - 1] != NONE;
  }

  /** The least first value for a number of steps, {@link #NONE} if they cannot be covered. */
  long first(int j) {
    return first[Math.max(0, j)];
  }

  long second(int j) {
    return second[Math.max(0, j)];
  }

  long first() {
    return first[first.length - 1];
  }

  long second() {
    return second[second.length - 1];
  }

  /** Adds the packages of the best cover to a plan. */
  void addTo(int[] plan, int[] packages) {
    for (int j = first.length - 1; j > 0; j -= steps[choice[j]]) {
      plan[packages[choice[j]]]++;
    }
  }
}
