// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.Arrays;
import java.util.Random;

/**
 * Programmes made up by a seed, of numbers with few digits, so that what is equal on paper is:
 * blends of shares, general rows, corners where many rows meet, and rows that contradict each
 * other.
 */
final class RandomProgramme {

  /** What is made up. */
  enum Sort {
    BLEND,
    GENERAL,
    DEGENERATE,
    TIGHT
  }

  private static final double NONE = Double.POSITIVE_INFINITY;

  private final Random random;
  private final Sort sort;
  private final int columns;
  private final int rows;
  final double[][] a;
  final double[] low;
  final double[] high;
  final double[] least;
  final double[] most;
  final double[] cost;

  RandomProgramme(long seed) {
    this(new Random(seed * 0x9E3779B97F4A7C15L));
  }

  private RandomProgramme(Random random) {
    this(
        random,
        Sort.values()[random.nextInt(Sort.values().length)],
        2 + random.nextInt(15),
        1 + random.nextInt(12));
  }

  /** A blend of so many parts with so many rows, the whole being one of them. */
  static RandomProgramme blend(long seed, int columns, int rows) {
    return new RandomProgramme(new Random(seed * 0x9E3779B97F4A7C15L), Sort.BLEND, columns, rows);
  }

  private RandomProgramme(Random random, Sort sort, int columns, int rows) {
    this.random = random;
    this.sort = sort;
    this.columns = columns;
    this.rows = rows;
    this.a = new double[rows][columns];
    this.least = new double[rows];
    this.most = new double[rows];
    this.low = new double[columns];
    this.high = new double[columns];
    this.cost = new double[columns];
    fill();
  }

  private void fill() {
    double[] point = new double[columns];
    for (int c = 0; c < columns; c++) {
      cost[c] = random.nextInt(sort == Sort.DEGENERATE ? 4 : 3000) / 100.0;
      high[c] = random.nextInt(3) == 0 ? (1 + random.nextInt(100)) / 100.0 : NONE;
      point[c] = random.nextInt(3) == 0 ? 0 : random.nextInt(25) / 100.0;
      point[c] = Math.min(point[c], high[c]);
    }
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        a[r][c] = factor();
      }
      bounds(r, point);
    }
    if (sort == Sort.BLEND) {
      Arrays.fill(a[0], 1);
      least[0] = 1;
      most[0] = 1;
    }
  }

  private double factor() {
    if (random.nextInt(3) == 0) {
      return 0;
    }
    return switch (sort) {
      case BLEND -> random.nextInt(101) / 100.0;
      case GENERAL -> (random.nextInt(2001) - 1000) / 10.0;
      case DEGENERATE -> random.nextInt(5) - 2;
      case TIGHT -> (random.nextInt(41) - 20) / 4.0;
    };
  }

  /** Bounds beside what the row comes to at a point, or, at times, away from it. */
  private void bounds(int r, double[] point) {
    double there = 0;
    for (int c = 0; c < columns; c++) {
      there += a[r][c] * point[c];
    }
    double at = sort == Sort.DEGENERATE && random.nextBoolean() ? 0 : Math.rint(there * 100) / 100;
    double away = sort == Sort.TIGHT ? (random.nextInt(41) - 15) / 20.0 : random.nextInt(20) / 20.0;
    int side = random.nextInt(6);
    least[r] = side < 3 || side == 5 ? at - away : -NONE;
    most[r] = side > 2 ? at + away : NONE;
    if (side == 4 && sort != Sort.GENERAL) {
      least[r] = at;
      most[r] = at;
    }
    if (least[r] > most[r]) {
      least[r] = most[r];
    }
  }

  LinearProgram programme() {
    LinearProgram programme = LinearProgram.minimising(cost);
    for (int c = 0; c < columns; c++) {
      programme.column(c, low[c], high[c]);
    }
    for (int r = 0; r < rows; r++) {
      programme.row(least[r], most[r], a[r]);
    }
    return programme;
  }
}
