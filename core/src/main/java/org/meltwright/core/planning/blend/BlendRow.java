// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

/** One side of a wish as a row of the programme. */
final class BlendRow {

  private final Bounded wish;
  private final boolean isUpper;
  private final boolean isBoth;
  private final double[] factors;
  private final double right;
  private final double perUnit;
  private final int helper;

  BlendRow(
      Bounded wish,
      boolean isUpper,
      boolean isBoth,
      double[] factors,
      double right,
      double perUnit,
      int helper) {
    this.wish = wish;
    this.isUpper = isUpper;
    this.isBoth = isBoth;
    this.factors = factors;
    this.right = right;
    this.perUnit = perUnit;
    this.helper = helper;
  }

  Bounded wish() {
    return wish;
  }

  /** Whether it is the high bound. */
  boolean isUpper() {
    return isUpper;
  }

  /** Whether both bounds are one. */
  boolean isBoth() {
    return isBoth;
  }

  /** The factor of each column; not to be written to. */
  double[] factors() {
    return factors;
  }

  /** What the sum is held against. */
  double right() {
    return right;
  }

  /** By how much that moves when the bound moves by one; zero where the bound is in the factors. */
  double perUnit() {
    return perUnit;
  }

  /** The column of what a ranked wish may miss; below zero for a hard one. */
  int helper() {
    return helper;
  }

  boolean isLinear() {
    return perUnit != 0;
  }

  /** How far the sum lies beyond the bound, without what helps a ranked wish; below zero within. */
  double beyond(double... values) {
    double sum = -right;
    for (int c = 0; c < factors.length; c++) {
      sum += c == helper ? 0 : factors[c] * values[c];
    }
    return isUpper ? sum : -sum;
  }
}
