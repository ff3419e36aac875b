// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

/**
 * What prices of rows prove of a programme, reckoned with the numbers as they were given.
 *
 * <p>For any prices y, each x and each row s that keep their bounds and A x = s have c·x = Σ d·(x,
 * s) with d = (c − Aᵀy, y): which is no less than the sum of the least that each term can be.
 */
final class Proof {

  static final Proof NONE = new Proof(0, 1, 1, 1, 0, 0, new double[0]);

  /** c·x. */
  final double objective;

  /** The worst miss of a bound, relative. */
  final double primal;

  /** The worst d whose sign lets its term fall without end, relative. */
  final double dual;

  /** How far the objective lies above what it is proved not to be below, relative. */
  final double gap;

  private final double bound;

  /** The size of the terms of the bound. */
  private final double size;

  /** c − Aᵀy. */
  final double[] reduced;

  private Proof(
      double objective,
      double primal,
      double dual,
      double gap,
      double bound,
      double size,
      double[] reduced) {
    this.objective = objective;
    this.primal = primal;
    this.dual = dual;
    this.gap = gap;
    this.bound = bound;
    this.size = size;
    this.reduced = reduced;
  }

  /** Proves that x is best. */
  static Proof ofOptimum(Scaled program, double[] x, double... y) {
    return new Prover(program, true).prove(x, y);
  }

  /**
   * Proves that nothing keeps all bounds: the same without cost, where the bound lies above zero.
   */
  static Proof ofNothing(Scaled program, double... y) {
    return new Prover(program, false).prove(new double[program.columns], y);
  }

  boolean holds() {
    return primal <= LinearAnswer.PROVED
        && dual <= LinearAnswer.PROVED
        && Math.abs(gap) <= LinearAnswer.PROVED;
  }

  boolean showsThatThereIsNothing() {
    return dual <= LinearAnswer.PROVED && bound > LinearAnswer.PROVED * 0.1 * size;
  }

  /** Adds up one proof. */
  private static final class Prover {

    private final Scaled scaled;
    private final LinearProgram program;
    private final boolean withCost;
    private double objective;
    private double primal;
    private double dual;
    private double bound;
    private double size;

    Prover(Scaled scaled, boolean withCost) {
      this.scaled = scaled;
      this.program = scaled.source;
      this.withCost = withCost;
    }

    Proof prove(double[] x, double... y) {
      double[] reduced = new double[x.length];
      for (int c = 0; c < x.length; c++) {
        double cost = withCost ? program.cost(c) : 0;
        double weight = Math.abs(cost);
        double[] column = new double[y.length];
        for (int r = 0; r < y.length; r++) {
          column[r] = program.row(r)[c];
          weight = Math.max(weight, Math.abs(column[r] * y[r]));
        }
        reduced[c] = ExactDot.residual(cost, column, y);
        objective += cost * x[c];
        size += Math.abs(cost * x[c]);
        term(c, reduced[c], weight);
        miss(c, x[c], Math.abs(x[c]));
      }
      for (int r = 0; r < y.length; r++) {
        double[] row = program.row(r);
        term(x.length + r, y[r], Math.abs(y[r]));
        miss(x.length + r, -ExactDot.residual(0, row, x), largest(row, x));
      }
      double gap = (objective - bound) / Math.max(size, scaled.leastAim());
      return new Proof(objective, primal, dual, size == 0 ? 0 : gap, bound, size, reduced);
    }

    private static double largest(double[] row, double... x) {
      double largest = 0;
      for (int c = 0; c < x.length; c++) {
        largest = Math.max(largest, Math.abs(row[c] * x[c]));
      }
      return largest;
    }

    /** The least that a term can be. */
    private void term(int index, double d, double weight) {
      double end = d > 0 ? program.low(index) : program.high(index);
      if (d == 0) {
        return;
      }
      if (Double.isFinite(end)) {
        bound += d * end;
        size += Math.abs(d * end);
      } else {
        double least = scaled.originalPrice(Scaled.LITTLE, index);
        dual = Math.max(dual, Math.abs(d) / Math.max(weight, least));
      }
    }

    private void miss(int index, double value, double weight) {
      double low = program.low(index);
      double high = program.high(index);
      double miss = Math.max(low - value, value - high);
      if (miss > 0) {
        double end = low > value ? low : high;
        double least = scaled.original(Scaled.LITTLE, index);
        primal = Math.max(primal, miss / Math.max(Math.max(weight, least), Math.abs(end)));
      }
    }
  }
}
