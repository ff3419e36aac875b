// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

/**
 * Where the simplex method stands: one column in the basis for each row, all others at a bound; and
 * the tableau T = B⁻¹N, so that what is in the basis is −T times what is not.
 */
final class Basis {

  private static final double SNAP = 1e-9;
  private static final double HAIR = 1e-14;

  final Scaled program;
  final int[] inside;
  final int[] outside;
  final double[] value;
  double[][] tableau;

  Basis(Scaled program) {
    this.program = program;
    this.inside = new int[program.rows];
    this.outside = new int[program.columns];
    this.value = new double[program.rows + program.columns];
    this.tableau = new double[program.rows][program.columns];
    for (int k = 0; k < outside.length; k++) {
      outside[k] = k;
      value[k] = start(program.low[k], program.high[k]);
    }
    for (int r = 0; r < inside.length; r++) {
      inside[r] = program.columns + r;
      for (int k = 0; k < outside.length; k++) {
        tableau[r][k] = -program.a[r][k];
      }
    }
    follow();
  }

  /** The bound nearest to zero; zero where there is none. */
  private static double start(double low, double high) {
    if (Double.isInfinite(low)) {
      return Double.isInfinite(high) ? 0 : high;
    }
    return Math.abs(low) <= Math.abs(high) ? low : high;
  }

  /** Reckons what is in the basis from what is not. */
  void follow() {
    for (int r = 0; r < inside.length; r++) {
      double sum = 0;
      for (int k = 0; k < outside.length; k++) {
        sum -= tableau[r][k] * value[outside[k]];
      }
      value[inside[r]] = sum;
    }
  }

  /** Exchanges what stands in a row of the basis with what stands at a place outside. */
  void pivot(int row, int place) {
    double[] pivotRow = tableau[row];
    double inverse = 1 / pivotRow[place];
    pivotRow[place] = 1;
    for (int k = 0; k < pivotRow.length; k++) {
      pivotRow[k] *= inverse;
    }
    for (double[] other : tableau) {
      double factor = other[place];
      if (other != pivotRow && factor != 0) {
        other[place] = 0;
        for (int k = 0; k < pivotRow.length; k++) {
          other[k] -= factor * pivotRow[k];
        }
      }
    }
    int entering = outside[place];
    outside[place] = inside[row];
    inside[row] = entering;
  }

  Factors factors() {
    double[][] matrix = new double[inside.length][inside.length];
    for (int r = 0; r < inside.length; r++) {
      for (int i = 0; i < inside.length; i++) {
        matrix[r][i] = program.at(r, inside[i]);
      }
    }
    return new Factors(matrix);
  }

  /** Reckons the tableau anew from the numbers as they were given. */
  void renew(Factors factors) {
    for (int k = 0; k < outside.length; k++) {
      double[] column = factors.solve(column(outside[k]));
      for (int r = 0; r < inside.length; r++) {
        tableau[r][k] = column[r];
      }
    }
    follow();
  }

  private double[] column(int index) {
    double[] column = new double[inside.length];
    for (int r = 0; r < column.length; r++) {
      column[r] = program.at(r, index);
    }
    return column;
  }

  /** The x of the programme as it was given, from fresh factors, each within its bounds. */
  double[] solution(Factors factors) {
    double[] right = new double[inside.length];
    for (int r = 0; r < right.length; r++) {
      double[] row = new double[outside.length];
      double[] x = new double[outside.length];
      for (int k = 0; k < outside.length; k++) {
        row[k] = program.at(r, outside[k]);
        x[k] = value[outside[k]];
      }
      right[r] = ExactDot.residual(0, row, x);
    }
    double[] basic = factors.solve(right);
    for (int r = 0; r < basic.length; r++) {
      value[inside[r]] = cleared(basic[r], inside[r]);
    }
    double[] x = new double[program.columns];
    for (int c = 0; c < x.length; c++) {
      double scaled = Math.min(program.high[c], Math.max(program.low[c], value[c]));
      x[c] = program.original(scaled, c) + 0.0;
    }
    return x;
  }

  /** A hair beside a bound is at the bound. */
  private double cleared(double found, int index) {
    if (Math.abs(found - program.low[index]) <= HAIR) {
      return program.low[index];
    }
    return Math.abs(found - program.high[index]) <= HAIR ? program.high[index] : found;
  }

  /** Whether what stands outside could leave its bound, where that costs nothing. */
  boolean mayMove(int index, double price) {
    if (Math.abs(price) > program.originalPrice(SNAP, index)
        || program.low[index] == program.high[index]) {
      return false;
    }
    for (int each : outside) {
      if (each == index) {
        return true;
      }
    }
    return false;
  }

  double[] range(int row) {
    double down = Double.NEGATIVE_INFINITY;
    double up = Double.POSITIVE_INFINITY;
    int index = program.columns + row;
    for (int k = 0; k < outside.length; k++) {
      if (outside[k] == index) {
        for (int r = 0; r < inside.length; r++) {
          double slope = -tableau[r][k];
          double below = snapped(program.low[inside[r]] - value[inside[r]]);
          double above = snapped(program.high[inside[r]] - value[inside[r]]);
          if (Math.abs(slope) > SNAP) {
            up = Math.min(up, (slope > 0 ? above : below) / slope);
            down = Math.max(down, (slope > 0 ? below : above) / slope);
          }
        }
      }
    }
    return new double[] {
      program.original(Math.min(0, down), index) + 0.0, program.original(Math.max(0, up), index)
    };
  }

  private static double snapped(double room) {
    return Math.abs(room) < SNAP ? 0 : room;
  }
}
