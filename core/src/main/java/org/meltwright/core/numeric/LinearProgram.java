// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear programme: the least c·x where each row a·x lies between two bounds, and each x too.
 *
 * <p>It is for a few dozen rows and columns, kept dense. The simplex method for variables with two
 * bounds finds the answer; fresh factors of its last basis, out of the numbers as they were given,
 * prove it. Within 1e-9 of its size a bound counts as kept; what cannot be proved within that is
 * {@link LinearAnswer.Kind#UNDECIDED}, never an answer.
 *
 * <p>For example, 800 lb of feed from two grains at 0.30 and 0.90 a pound, with 30 % of protein at
 * least and 5 % of fibre at most:
 *
 * <pre>{@code
 * var feed = org.meltwright.core.numeric.LinearProgram.minimising(0.30, 0.90);
 * feed.row(800, 800, 1, 1);
 * feed.row(240, Double.POSITIVE_INFINITY, 0.09, 0.60);
 * feed.row(Double.NEGATIVE_INFINITY, 40, 0.02, 0.06);
 * var answer = feed.solve();
 * answer.objective(); // 437.647
 * answer.value(0); // 470.588
 * }</pre>
 *
 * <p>Mutable, for one thread, and compared by identity: it is written row by row.
 */
public final class LinearProgram {

  private final double[] cost;
  private final double[] low;
  private final double[] high;
  private final List<double[]> rows = new ArrayList<>();
  private final List<double[]> bounds = new ArrayList<>();

  /**
   * Starts a programme without rows, each x zero or more.
   *
   * @param cost what is to be least: the factor of each x, finite
   * @return the programme
   * @throws IllegalArgumentException if a factor is not finite
   */
  public static LinearProgram minimising(double... cost) {
    return new LinearProgram(finite(cost.clone()));
  }

  private LinearProgram(double... cost) {
    this.cost = cost;
    this.low = new double[cost.length];
    this.high = new double[cost.length];
    Arrays.fill(high, Double.POSITIVE_INFINITY);
  }

  private static double[] finite(double... factors) {
    for (double factor : factors) {
      if (!Double.isFinite(factor)) {
        throw new IllegalArgumentException("a factor is not finite: " + factor);
      }
    }
    return factors;
  }

  private static void ordered(double low, double high) {
    if (Double.isNaN(low)
        || Double.isNaN(high)
        || low == Double.POSITIVE_INFINITY
        || high == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException("no bounds: " + low + " and " + high);
    }
  }

  /**
   * Adds a row.
   *
   * @param least the least that it may come to; negative infinity for no bound
   * @param most the most; infinity for no bound
   * @param factors the factor of each x, finite; those left out are zero
   * @return this programme
   * @throws IllegalArgumentException if a factor is not finite, there are more than columns, or a
   *     bound is no number
   */
  public LinearProgram row(double least, double most, double... factors) {
    if (factors.length > cost.length) {
      throw new IllegalArgumentException("more factors than columns: " + factors.length);
    }
    ordered(least, most);
    rows.add(finite(Arrays.copyOf(factors, cost.length)));
    bounds.add(new double[] {least, most});
    return this;
  }

  /**
   * Sets between which bounds one x lies.
   *
   * @param column the place of the x, from zero
   * @param least the least; negative infinity for no bound
   * @param most the most; infinity for no bound
   * @return this programme
   * @throws IllegalArgumentException if a bound is no number
   */
  public LinearProgram column(int column, double least, double most) {
    ordered(least, most);
    low[column] = least;
    high[column] = most;
    return this;
  }

  /**
   * Solves it.
   *
   * @return the answer
   */
  public LinearAnswer solve() {
    return new Simplex(new Scaled(this)).run();
  }

  int columns() {
    return cost.length;
  }

  int rows() {
    return rows.size();
  }

  double[] row(int index) {
    return rows.get(index);
  }

  double cost(int column) {
    return cost[column];
  }

  /** The lower bound of a column, or behind them of a row. */
  double low(int index) {
    return index < cost.length ? low[index] : bounds.get(index - cost.length)[0];
  }

  /** The upper bound of a column, or behind them of a row. */
  double high(int index) {
    return index < cost.length ? high[index] : bounds.get(index - cost.length)[1];
  }
}
