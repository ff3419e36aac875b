// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.Arrays;

/**
 * The last basis of an answer, reckoned without any rounding: whether it is optimal, or shows that
 * nothing keeps all bounds, to the last bit of the numbers given.
 */
final class ExactProof {

  /** What is equal on paper differs by this in doubles: 0.1 is no tenth. */
  private static final double LAST_BIT = 1e-12;

  private final LinearProgram programme;
  private final Basis basis;
  private final Fraction[][] a;
  private final int[] inside;
  private final Fraction[] value;

  static ExactProof of(LinearProgram programme, LinearAnswer answer) {
    return new ExactProof(programme, answer.basis());
  }

  private ExactProof(LinearProgram programme, Basis basis) {
    this.programme = programme;
    this.basis = basis;
    int n = programme.columns();
    int m = programme.rows();
    this.inside = basis.inside;
    this.a = new Fraction[m][n + m];
    for (int r = 0; r < m; r++) {
      Arrays.fill(a[r], Fraction.ZERO);
      for (int c = 0; c < n; c++) {
        a[r][c] = Fraction.of(programme.row(r)[c]);
      }
      a[r][n + r] = Fraction.ONE.negated();
    }
    this.value = values();
  }

  /** What each column and row comes to: outside the basis its bound, inside what follows. */
  private Fraction[] values() {
    Fraction[] values = new Fraction[programme.columns() + programme.rows()];
    Fraction[] right = new Fraction[a.length];
    Arrays.fill(right, Fraction.ZERO);
    for (int index : basis.outside) {
      values[index] = bound(index);
      for (int r = 0; r < right.length; r++) {
        right[r] = right[r].minus(a[r][index].times(values[index]));
      }
    }
    Fraction[][] matrix = new Fraction[a.length][a.length];
    for (int r = 0; r < a.length; r++) {
      for (int i = 0; i < a.length; i++) {
        matrix[r][i] = a[r][inside[i]];
      }
    }
    Fraction[] basic = solve(matrix, right);
    for (int i = 0; i < a.length; i++) {
      values[inside[i]] = basic[i];
    }
    return values;
  }

  private Fraction bound(int index) {
    double scaled = basis.value[index];
    if (scaled == basis.program.low[index]) {
      return Fraction.of(programme.low(index));
    }
    return scaled == basis.program.high[index] ? Fraction.of(programme.high(index)) : Fraction.ZERO;
  }

  private Fraction[] pricesFor(Fraction[] cost) {
    Fraction[][] matrix = new Fraction[a.length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int r = 0; r < a.length; r++) {
        matrix[i][r] = a[r][inside[i]];
      }
    }
    return solve(matrix, cost);
  }

  private static Fraction[] solve(Fraction[][] matrix, Fraction[] right) {
    int n = right.length;
    Fraction[] b = right.clone();
    for (int k = 0; k < n; k++) {
      int pivot = k;
      while (matrix[pivot][k].isZero()) {
        pivot++;
      }
      Fraction[] row = matrix[pivot];
      matrix[pivot] = matrix[k];
      matrix[k] = row;
      Fraction other = b[pivot];
      b[pivot] = b[k];
      b[k] = other;
      for (int i = 0; i < n; i++) {
        if (i != k && !matrix[i][k].isZero()) {
          Fraction factor = matrix[i][k].dividedBy(row[k]);
          for (int j = k; j < n; j++) {
            matrix[i][j] = matrix[i][j].minus(factor.times(row[j]));
          }
          b[i] = b[i].minus(factor.times(b[k]));
        }
      }
    }
    for (int k = 0; k < n; k++) {
      b[k] = b[k].dividedBy(matrix[k][k]);
    }
    return b;
  }

  /** The sign of value less bound, exact; the worst miss as a number. */
  private double worstMiss() {
    double worst = 0;
    for (int j = 0; j < value.length; j++) {
      worst = Math.max(worst, miss(j));
    }
    return worst;
  }

  private double miss(int index) {
    double low = programme.low(index);
    double high = programme.high(index);
    Fraction found = value[index];
    if (Double.isFinite(low) && found.compareTo(Fraction.of(low)) < 0) {
      return Fraction.of(low).minus(found).toDouble();
    }
    return Double.isFinite(high) && found.compareTo(Fraction.of(high)) > 0
        ? found.minus(Fraction.of(high)).toDouble()
        : 0;
  }

  /** Whether each column outside the basis would only cost when moved; exact. */
  private boolean isPricedRight() {
    Fraction[] cost = new Fraction[a.length];
    for (int i = 0; i < cost.length; i++) {
      cost[i] = cost(inside[i]);
    }
    Fraction[] y = pricesFor(cost);
    return Arrays.stream(basis.outside).allMatch(j -> isPricedRight(j, reduced(j, y)));
  }

  private Fraction cost(int index) {
    return index < programme.columns() ? Fraction.of(programme.cost(index)) : Fraction.ZERO;
  }

  private Fraction reduced(int index, Fraction[] y) {
    return minusPrices(cost(index), index, y);
  }

  private Fraction minusPrices(Fraction start, int index, Fraction[] y) {
    Fraction d = start;
    for (int r = 0; r < a.length; r++) {
      d = d.minus(a[r][index].times(y[r]));
    }
    return d;
  }

  private boolean isPricedRight(int index, Fraction d) {
    double scaled = basis.value[index];
    boolean mayRise = scaled < basis.program.high[index];
    boolean mayFall = scaled > basis.program.low[index];
    return !(mayRise && d.toDouble() < -LAST_BIT * size())
        && !(mayFall && d.toDouble() > LAST_BIT * size());
  }

  private double size() {
    double size = Double.MIN_NORMAL;
    for (int c = 0; c < programme.columns(); c++) {
      size = Math.max(size, Math.abs(programme.cost(c)));
    }
    return size;
  }

  /** Whether the basis is optimal, within 1e-9 of the largest bound. */
  boolean isOptimal() {
    return worstMiss() <= 1e-9 * largestBound() && isPricedRight();
  }

  private double largestBound() {
    double largest = 1e-3;
    for (int j = 0; j < value.length; j++) {
      for (double end : new double[] {programme.low(j), programme.high(j)}) {
        largest = Double.isFinite(end) ? Math.max(largest, Math.abs(end)) : largest;
      }
    }
    return largest;
  }

  /** What the basis comes to, exactly. */
  double objective() {
    Fraction sum = Fraction.ZERO;
    for (int c = 0; c < programme.columns(); c++) {
      sum = sum.plus(cost(c).times(value[c]));
    }
    return sum.toDouble();
  }

  /** Whether prices of what is missed show, exactly, that nothing keeps all bounds. */
  boolean showsThatThereIsNothing() {
    Fraction[] cost = new Fraction[a.length];
    for (int i = 0; i < cost.length; i++) {
      cost[i] = missCost(inside[i]);
    }
    Fraction[] y = pricesFor(cost);
    Fraction bound = Fraction.ZERO;
    for (int j = 0; j < value.length; j++) {
      Fraction d = minusPrices(Fraction.ZERO, j, y);
      double end = d.signum() > 0 ? programme.low(j) : programme.high(j);
      if (Double.isFinite(end)) {
        bound = bound.plus(d.times(Fraction.of(end)));
      } else if (Math.abs(d.toDouble()) > LAST_BIT * weight(j, y)) {
        return false;
      }
    }
    return bound.signum() > 0;
  }

  /** The largest of the numbers that a reduced price is the sum of. */
  private double weight(int index, Fraction[] y) {
    double weight = 0;
    for (int r = 0; r < a.length; r++) {
      weight = Math.max(weight, Math.abs(a[r][index].times(y[r]).toDouble()));
    }
    return weight;
  }

  private Fraction missCost(int index) {
    double low = programme.low(index);
    double high = programme.high(index);
    if (miss(index) <= 0) {
      return Fraction.ZERO;
    }
    boolean isBelow = Double.isFinite(low) && value[index].compareTo(Fraction.of(low)) < 0;
    double unit = 1 / basis.program.original(1, index);
    return Fraction.of(isBelow || !Double.isFinite(high) ? -unit : unit);
  }
}
