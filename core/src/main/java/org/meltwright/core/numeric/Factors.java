// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

/**
 * A square matrix in two triangles, rows exchanged for the largest pivot; one step of refinement.
 */
final class Factors {

  private static final double SINGULAR = 1e-13;

  private final double[][] matrix;
  private final double[][] lu;
  private final int[] order;
  private boolean singular;

  Factors(double[][] matrix) {
    int n = matrix.length;
    this.matrix = matrix;
    this.lu = new double[n][];
    this.order = new int[n];
    for (int i = 0; i < n; i++) {
      lu[i] = matrix[i].clone();
      order[i] = i;
    }
    for (int k = 0; k < n && !singular; k++) {
      bringUp(k);
      singular = Math.abs(lu[k][k]) < SINGULAR;
      if (!singular) {
        eliminate(k);
      }
    }
  }

  boolean isSingular() {
    return singular;
  }

  private void bringUp(int k) {
    int best = k;
    for (int i = k + 1; i < lu.length; i++) {
      if (Math.abs(lu[i][k]) > Math.abs(lu[best][k])) {
        best = i;
      }
    }
    double[] row = lu[k];
    lu[k] = lu[best];
    lu[best] = row;
    int place = order[k];
    order[k] = order[best];
    order[best] = place;
  }

  private void eliminate(int k) {
    for (int i = k + 1; i < lu.length; i++) {
      double factor = lu[i][k] / lu[k][k];
      lu[i][k] = factor;
      if (factor != 0) {
        for (int j = k + 1; j < lu.length; j++) {
          lu[i][j] -= factor * lu[k][j];
        }
      }
    }
  }

  /** Solves M x = b. */
  double[] solve(double... b) {
    double[] x = once(b);
    double[] rest = new double[b.length];
    for (int i = 0; i < b.length; i++) {
      rest[i] = ExactDot.residual(b[i], matrix[i], x);
    }
    return plus(x, once(rest));
  }

  /** Solves Mᵀ y = c. */
  double[] solveTransposed(double... c) {
    double[] y = onceTransposed(c);
    double[] rest = new double[c.length];
    double[] column = new double[c.length];
    for (int j = 0; j < c.length; j++) {
      for (int i = 0; i < c.length; i++) {
        column[i] = matrix[i][j];
      }
      rest[j] = ExactDot.residual(c[j], column, y);
    }
    return plus(y, onceTransposed(rest));
  }

  private double[] once(double... b) {
    int n = b.length;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = b[order[i]];
      for (int j = 0; j < i; j++) {
        sum -= lu[i][j] * x[j];
      }
      x[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        x[i] -= lu[i][j] * x[j];
      }
      x[i] /= lu[i][i];
    }
    return x;
  }

  private double[] onceTransposed(double... c) {
    int n = c.length;
    double[] z = c.clone();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        z[i] -= lu[j][i] * z[j];
      }
      z[i] /= lu[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        z[i] -= lu[j][i] * z[j];
      }
    }
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      y[order[i]] = z[i];
    }
    return y;
  }

  private static double[] plus(double[] x, double... y) {
    for (int i = 0; i < x.length; i++) {
      x[i] += y[i];
    }
    return x;
  }
}
