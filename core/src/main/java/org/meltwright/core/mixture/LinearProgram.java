// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.MassFraction;

/**
 * Minimises c·x where A x = b and no x is below zero: the simplex method on a dense tableau, with
 * the rule of the lowest index, which cannot cycle. For a handful of rows and columns.
 */
final class LinearProgram {

  private static final double EPSILON = 1e-12;
  private static final double FEASIBLE = 1e-9;

  /** The rule cannot cycle with exact numbers; this ends what rounding might keep going. */
  private static final int MOST_STEPS = 10_000;

  /** Rows of A, then b in the last column; the basis holds one column for each row. */
  private final double[][] rows;

  private final int[] basis;
  private final int columns;

  /**
   * Returns the x that minimises c·x, or null if no x fits.
   *
   * @param a the matrix, a row for each equation
   * @param b the right side, none below zero
   * @param c the cost of each x
   * @return x
   */
  static double @Nullable [] minimise(double[][] a, double[] b, double[] c) {
    LinearProgram program = new LinearProgram(a, b);
    if (!program.findStart()) {
      return null;
    }
    double[] cost = Arrays.copyOf(c, program.columns);
    program.improve(cost, c.length);
    return Arrays.copyOf(program.solution(), c.length);
  }

  /** Shares on a simplex whose contents lie nearest to the wanted ones, by sum of distances. */
  static List<MassFraction> nearest(double[][] contents, double[] wanted) {
    int targets = wanted.length;
    int components = targets == 0 ? 0 : contents[0].length;
    double[][] a = new double[targets + 1][components + 2 * targets];
    double[] cost = new double[components + 2 * targets];
    for (int t = 0; t < targets; t++) {
      System.arraycopy(contents[t], 0, a[t], 0, components);
      a[t][components + 2 * t] = 1;
      a[t][components + 2 * t + 1] = -1;
      cost[components + 2 * t] = 1;
      cost[components + 2 * t + 1] = 1;
    }
    Arrays.fill(a[targets], 0, components, 1);
    double[] x = minimise(a, append(wanted, 1), cost);
    List<MassFraction> reached = new ArrayList<>();
    for (int t = 0; t < targets; t++) {
      double miss = x == null ? 0 : x[components + 2 * t + 1] - x[components + 2 * t];
      reached.add(MassFraction.of(Amounts.clamp(wanted[t] + miss)));
    }
    return List.copyOf(reached);
  }

  /** Shares on a simplex that meet the wanted contents, with as much of the first as may be. */
  static double[] largestFirst(double[][] contents, double[] wanted) {
    int components = contents.length == 0 ? 1 : contents[0].length;
    double[][] a = Arrays.copyOf(contents, contents.length + 1);
    double[] ones = new double[components];
    Arrays.fill(ones, 1);
    a[contents.length] = ones;
    double[] cost = new double[components];
    cost[0] = -1;
    double[] x = minimise(a, append(wanted, 1), cost);
    if (x == null) {
      throw new IllegalStateException("targets in reach have no blend");
    }
    return x;
  }

  private static double[] append(double[] values, double last) {
    double[] longer = Arrays.copyOf(values, values.length + 1);
    longer[values.length] = last;
    return longer;
  }

  private LinearProgram(double[][] a, double[] b) {
    int height = a.length;
    int width = a[0].length;
    this.columns = width + height;
    this.rows = new double[height][columns + 1];
    this.basis = new int[height];
    for (int r = 0; r < height; r++) {
      System.arraycopy(a[r], 0, rows[r], 0, width);
      rows[r][width + r] = 1;
      rows[r][columns] = b[r];
      basis[r] = width + r;
    }
  }

  /** Drives out the helper columns, one for each row, that the start is made of. */
  private boolean findStart() {
    int own = columns - rows.length;
    double[] cost = new double[columns];
    Arrays.fill(cost, own, columns, 1);
    improve(cost, columns);
    double left = 0;
    for (int r = 0; r < rows.length; r++) {
      left += basis[r] >= own ? rows[r][columns] : 0;
    }
    if (left > FEASIBLE) {
      return false;
    }
    for (int r = 0; r < rows.length; r++) {
      if (basis[r] >= own) {
        exchange(r, own);
      }
    }
    return true;
  }

  /** A helper left in the basis at zero gives way to any own column; else its row is redundant. */
  private void exchange(int row, int own) {
    for (int column = 0; column < own; column++) {
      if (Math.abs(rows[row][column]) > FEASIBLE) {
        pivot(row, column);
        return;
      }
    }
    Arrays.fill(rows[row], 0);
  }

  private void improve(double[] cost, int allowed) {
    for (int step = 0; step < MOST_STEPS; step++) {
      int column = entering(cost, allowed);
      int row = column < 0 ? -1 : leaving(column);
      if (row < 0) {
        return;
      }
      pivot(row, column);
    }
  }

  private int entering(double[] cost, int allowed) {
    for (int column = 0; column < allowed; column++) {
      double reduced = cost[column];
      for (int r = 0; r < rows.length; r++) {
        reduced -= cost[basis[r]] * rows[r][column];
      }
      if (reduced < -EPSILON && !isBasic(column)) {
        return column;
      }
    }
    return -1;
  }

  private boolean isBasic(int column) {
    for (int each : basis) {
      if (each == column) {
        return true;
      }
    }
    return false;
  }

  private int leaving(int column) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int r = 0; r < rows.length; r++) {
      if (rows[r][column] > EPSILON) {
        double ratio = rows[r][columns] / rows[r][column];
        boolean tie = Math.abs(ratio - least) <= EPSILON;
        if (tie ? basis[r] < basis[best] : ratio < least) {
          best = r;
          least = ratio;
        }
      }
    }
    return best;
  }

  private void pivot(int row, int column) {
    double[] pivotRow = rows[row];
    double by = pivotRow[column];
    for (int c = 0; c <= columns; c++) {
      pivotRow[c] /= by;
    }
    for (double[] other : rows) {
      double factor = other[column];
      if (other != pivotRow && factor != 0) {
        for (int c = 0; c <= columns; c++) {
          other[c] -= factor * pivotRow[c];
        }
      }
    }
    basis[row] = column;
  }

  private double[] solution() {
    double[] x = new double[columns];
    for (int r = 0; r < rows.length; r++) {
      x[basis[r]] = Math.max(0, rows[r][columns]);
    }
    return x;
  }
}
