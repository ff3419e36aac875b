// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

/**
 * One side of a wish as a row of the programme.
 *
 * @param wish the wish
 * @param isUpper whether it is its high bound
 * @param isBoth whether both bounds are one
 * @param factors the factor of each column
 * @param right what the sum is held against
 * @param perUnit by how much that moves when the bound moves by one; zero where the bound stands in
 *     the factors
 * @param helper the column of what a ranked wish may miss; below zero for a hard one
 */
record BlendRow(
    Bounded wish,
    boolean isUpper,
    boolean isBoth,
    double[] factors,
    double right,
    double perUnit,
    int helper) {

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
