// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.Arrays;

/**
 * A programme with rows, columns and bounds brought near to one by powers of two, so that nothing
 * is rounded. Behind the columns stands one more for each row, what the row comes to: A x − s = 0.
 */
final class Scaled {

  private static final int ROUNDS = 2;

  /** Little beside scaled numbers near to one: errors are counted as parts of so much at least. */
  static final double LITTLE = 0.25;

  private static final double LEAST_AIM = 1e-3;

  /** Powers of two: six of ten. */
  private static final int FAR = 20;

  final LinearProgram source;
  final int rows;
  final int columns;

  /** The scaled rows. */
  final double[][] a;

  final double[] low;
  final double[] high;
  final double[] cost;

  private final int[] rowPower;
  private final int[] columnPower;
  private final int boundPower;
  private final int costPower;

  Scaled(LinearProgram source) {
    this.source = source;
    this.rows = source.rows();
    this.columns = source.columns();
    this.a = new double[rows][];
    for (int r = 0; r < rows; r++) {
      a[r] = source.row(r).clone();
    }
    this.rowPower = new int[rows];
    this.columnPower = new int[columns];
    for (int round = 0; round < ROUNDS; round++) {
      scaleRows();
      scaleColumns();
    }
    this.low = new double[columns + rows];
    this.high = new double[columns + rows];
    this.cost = new double[columns + rows];
    this.boundPower = boundPower();
    scaleBounds();
    this.costPower = scaleCost();
  }

  private void scaleRows() {
    for (int r = 0; r < rows; r++) {
      double[] row = a[r];
      int power = power(row);
      rowPower[r] += power;
      for (int c = 0; c < columns; c++) {
        row[c] = Math.scalb(row[c], power);
      }
    }
  }

  private void scaleColumns() {
    double[] column = new double[rows];
    for (int c = 0; c < columns; c++) {
      for (int r = 0; r < rows; r++) {
        column[r] = a[r][c];
      }
      int power = power(column);
      columnPower[c] += power;
      for (int r = 0; r < rows; r++) {
        a[r][c] = Math.scalb(a[r][c], power);
      }
    }
  }

  /**
   * The power of two that brings the middle of the smallest and the largest number near to one;
   * what lies far below the largest, as the rest of a difference does that is zero on paper, has no
   * say.
   */
  private static int power(double... values) {
    int most = Integer.MIN_VALUE;
    for (double value : values) {
      most = value == 0 ? most : Math.max(most, Math.getExponent(value));
    }
    int least = most;
    for (double value : values) {
      int exponent = Math.getExponent(value);
      least = value != 0 && exponent > most - FAR ? Math.min(least, exponent) : least;
    }
    return most == Integer.MIN_VALUE ? 0 : -Math.floorDiv(least + most, 2);
  }

  private int boundPower() {
    double[] all = new double[2 * (columns + rows)];
    for (int j = 0; j < columns + rows; j++) {
      all[2 * j] = finite(Math.scalb(source.low(j), ownPower(j)));
      all[2 * j + 1] = finite(Math.scalb(source.high(j), ownPower(j)));
    }
    return power(all);
  }

  private static double finite(double value) {
    return Double.isFinite(value) ? value : 0;
  }

  private int ownPower(int index) {
    return index < columns ? -columnPower[index] : rowPower[index - columns];
  }

  private void scaleBounds() {
    for (int j = 0; j < columns + rows; j++) {
      int power = ownPower(j) + boundPower;
      low[j] = Math.scalb(source.low(j), power);
      high[j] = Math.scalb(source.high(j), power);
    }
  }

  private int scaleCost() {
    for (int c = 0; c < columns; c++) {
      cost[c] = Math.scalb(source.cost(c), columnPower[c]);
    }
    int power = power(Arrays.copyOf(cost, columns));
    for (int c = 0; c < columns; c++) {
      cost[c] = Math.scalb(cost[c], power);
    }
    return power;
  }

  /** The factor of a column, or of what a row comes to, in a row. */
  double at(int row, int index) {
    if (index < columns) {
      return a[row][index];
    }
    return index - columns == row ? -1 : 0;
  }

  double original(double scaled, int index) {
    return Math.scalb(scaled, -ownPower(index) - boundPower);
  }

  /** The change of what is least for one more of a column, or of a row. */
  double originalPrice(double scaled, int index) {
    return Math.scalb(scaled, ownPower(index) - costPower);
  }

  /** An aim next to nothing beside the numbers of the programme. */
  double leastAim() {
    return Math.scalb(LEAST_AIM, -costPower - boundPower);
  }

  /** Whether some bounds leave nothing between them. */
  boolean isContradictory() {
    for (int j = 0; j < low.length; j++) {
      if (low[j] > high[j]) {
        return true;
      }
    }
    return false;
  }
}
