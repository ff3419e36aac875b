// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.jspecify.annotations.Nullable;

/** Packages that cover the needs of some materials. */
final class Bundle {

  private final long cost;
  private final long mass;
  private final long excess;
  private final long[] values;
  private final int[] packages;
  private final @Nullable Bundle before;

  Bundle(
      long cost, long mass, long excess, long[] values, int[] packages, @Nullable Bundle before) {
    this.cost = cost;
    this.mass = mass;
    this.excess = excess;
    this.values = values;
    this.packages = packages;
    this.before = before;
  }

  /** The sum of their prices. */
  long cost() {
    return cost;
  }

  /** The sum of their masses. */
  long mass() {
    return mass;
  }

  /** By how much their lowered prices exceed the least possible, scaled. */
  long excess() {
    return excess;
  }

  /** What they count towards free carriage, by supplier that asks for it, at most what it asks. */
  long[] values() {
    return values;
  }

  /** The offers, one entry for each package. */
  int[] packages() {
    return packages;
  }

  /** The bundle of the materials before; null for the first. */
  @Nullable Bundle before() {
    return before;
  }

  static Bundle empty(int suppliers) {
    return new Bundle(0, 0, 0, new long[suppliers], new int[0], null);
  }

  Bundle join(Bundle next, int[] suppliers, long[] freeFrom) {
    long[] sums = new long[values.length];
    for (int k = 0; k < sums.length; k++) {
      sums[k] = Math.min(freeFrom[suppliers[k]], values[k] + next.values[k]);
    }
    return new Bundle(
        cost + next.cost, mass + next.mass, excess + next.excess, sums, next.packages, this);
  }

  boolean hasAllValuesOf(Bundle other) {
    for (int k = 0; k < values.length; k++) {
      if (values[k] < other.values[k]) {
        return false;
      }
    }
    return true;
  }

  int[] plan(int offers) {
    int[] plan = new int[offers];
    for (Bundle b = this; b != null; b = b.before) {
      for (int p : b.packages) {
        plan[p]++;
      }
    }
    return plan;
  }
}
