// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import org.meltwright.core.numeric.LinearAnswer.Kind;

/**
 * The simplex method for variables with two bounds. First it lets the sum of what is missed at the
 * bounds fall, then the cost. The steepest column enters; after steps without gain the lowest
 * index, which cannot cycle, until there is gain again.
 */
final class Simplex {

  /**
   * Within this a scaled value keeps its bound and a scaled price is none, while the method runs;
   * where the proof fails, within a hundredth of it.
   */
  private static final double TOLERANCE = 1e-10;

  private static final double TIGHT = 1e-12;

  /** Below this a number of the tableau is no pivot. */
  private static final double PIVOT = 1e-9;

  private static final double GAIN = 1e-13;
  private static final int TRIES = 4;
  private static final int IDLE = 30;

  private final Scaled program;
  private final Basis basis;
  private final double[] slope;
  private final boolean[] isMissed;
  private double missed;
  private double tolerance = TOLERANCE;
  private boolean byIndex;
  private int idle;
  private int steps;

  Simplex(Scaled program) {
    this.program = program;
    this.basis = new Basis(program);
    this.slope = new double[program.columns];
    this.isMissed = new boolean[program.rows];
  }

  LinearAnswer run() {
    if (program.isContradictory()) {
      return answer(
          Kind.INFEASIBLE, new double[program.columns], new double[program.rows], Proof.NONE);
    }
    Kind before = Kind.UNDECIDED;
    for (int attempt = 0; attempt < TRIES; attempt++) {
      byIndex = attempt > 1;
      tolerance = attempt == 0 ? TOLERANCE : TIGHT;
      Kind kind = improve();
      Factors factors = basis.factors();
      if (!factors.isSingular()) {
        LinearAnswer answer = proved(kind, factors);
        boolean twice = kind == Kind.UNBOUNDED && before == kind;
        if (twice || answer.kind() != Kind.UNDECIDED) {
          return twice ? answer(kind, new double[0], new double[0], Proof.NONE) : answer;
        }
        before = kind;
        basis.renew(factors);
      }
    }
    return answer(Kind.UNDECIDED, new double[0], new double[0], Proof.NONE);
  }

  private LinearAnswer answer(Kind kind, double[] values, double[] prices, Proof proof) {
    return new LinearAnswer(kind, basis, values, prices, proof);
  }

  private LinearAnswer proved(Kind kind, Factors factors) {
    double[] x = basis.solution(factors);
    double[] y = prices(factors, kind == Kind.INFEASIBLE);
    if (kind == Kind.OPTIMAL) {
      Proof proof = Proof.ofOptimum(program, x, y);
      return answer(proof.holds() ? kind : Kind.UNDECIDED, x, y, proof);
    }
    if (kind == Kind.INFEASIBLE) {
      Proof proof = Proof.ofNothing(program, y);
      return answer(proof.showsThatThereIsNothing() ? kind : Kind.UNDECIDED, x, y, proof);
    }
    return answer(Kind.UNDECIDED, x, y, Proof.NONE);
  }

  /** The prices of the rows as they were given; nothing for a row that does not bind. */
  private double[] prices(Factors factors, boolean ofWhatIsMissed) {
    double[] cost = new double[program.rows];
    miss();
    for (int r = 0; r < cost.length; r++) {
      int index = basis.inside[r];
      cost[r] = ofWhatIsMissed ? missCost(r) : program.cost[index];
    }
    double[] y = factors.solveTransposed(cost);
    for (int r = 0; r < y.length; r++) {
      int index = program.columns + r;
      double price = Math.abs(y[r]) < tolerance && isOfNoBound(y[r], index) ? 0 : y[r];
      y[r] = program.originalPrice(price, index) + 0.0;
    }
    for (int r = 0; r < y.length; r++) {
      int row = basis.inside[r] - program.columns;
      if (row >= 0 && !(ofWhatIsMissed && isMissed[r])) {
        y[row] = 0;
      }
    }
    return y;
  }

  /**
   * Whether a price is that of a bound which a row does not have: no more than an error, if small.
   */
  private boolean isOfNoBound(double price, int index) {
    return Double.isInfinite(price > 0 ? program.low[index] : program.high[index]);
  }

  private Kind improve() {
    int most = 200 + 50 * (program.rows + program.columns);
    for (steps = 0; steps < most; steps++) {
      miss();
      boolean first = missed > 0;
      slopes(first);
      int place = entering();
      if (place < 0) {
        return first ? Kind.INFEASIBLE : Kind.OPTIMAL;
      }
      if (!move(place)) {
        return first ? Kind.UNDECIDED : Kind.UNBOUNDED;
      }
    }
    return Kind.UNDECIDED;
  }

  /** Looks which of the basis miss their bounds. */
  private void miss() {
    missed = 0;
    for (int r = 0; r < isMissed.length; r++) {
      int index = basis.inside[r];
      double value = basis.value[index];
      double miss = Math.max(program.low[index] - value, value - program.high[index]);
      isMissed[r] = miss > tolerance;
      missed += isMissed[r] ? miss : 0;
    }
  }

  private double missCost(int row) {
    if (!isMissed[row]) {
      return 0;
    }
    int index = basis.inside[row];
    return basis.value[index] < program.low[index] ? -1 : 1;
  }

  /** What one more of each column outside would change. */
  private void slopes(boolean first) {
    for (int k = 0; k < slope.length; k++) {
      slope[k] = first ? 0 : program.cost[basis.outside[k]];
    }
    for (int r = 0; r < isMissed.length; r++) {
      double cost = first ? missCost(r) : program.cost[basis.inside[r]];
      if (cost != 0) {
        double[] row = basis.tableau[r];
        for (int k = 0; k < slope.length; k++) {
          slope[k] -= cost * row[k];
        }
      }
    }
  }

  private int entering() {
    int best = -1;
    for (int k = 0; k < slope.length; k++) {
      if (gains(k) && (best < 0 || isBefore(k, best))) {
        best = k;
      }
    }
    return best;
  }

  private boolean isByIndex() {
    return byIndex || idle > IDLE;
  }

  private boolean isBefore(int one, int other) {
    return isByIndex()
        ? basis.outside[one] < basis.outside[other]
        : Math.abs(slope[one]) > Math.abs(slope[other]);
  }

  private boolean gains(int place) {
    int index = basis.outside[place];
    double value = basis.value[index];
    return (slope[place] < -tolerance && value < program.high[index])
        || (slope[place] > tolerance && value > program.low[index]);
  }

  /** Moves a column as far as it may; false if nothing stops it. */
  private boolean move(int place) {
    int index = basis.outside[place];
    double way = slope[place] < 0 ? 1 : -1;
    double span = program.high[index] - program.low[index];
    int row = leaving(place, way);
    double far = row < 0 ? Double.POSITIVE_INFINITY : Math.max(0, room(row, place, way));
    double step = Math.min(far, span);
    if (step == Double.POSITIVE_INFINITY) {
      return false;
    }
    double end = row < 0 ? 0 : stop(row, place, way);
    idle = step * Math.abs(slope[place]) > GAIN ? 0 : idle + 1;
    for (int r = 0; r < isMissed.length; r++) {
      basis.value[basis.inside[r]] -= way * step * basis.tableau[r][place];
    }
    if (span <= far) {
      basis.value[index] = way > 0 ? program.high[index] : program.low[index];
    } else {
      basis.value[index] += way * step;
      basis.value[basis.inside[row]] = end;
      basis.pivot(row, place);
    }
    return true;
  }

  /** Which of the basis stops the move; below zero if none does. */
  private int leaving(int place, double way) {
    double reach = Double.POSITIVE_INFINITY;
    boolean exact = isByIndex();
    for (int r = 0; r < isMissed.length; r++) {
      double slack = exact ? 0 : tolerance / Math.abs(basis.tableau[r][place]);
      reach = Math.min(reach, room(r, place, way) + slack);
    }
    int best = -1;
    for (int r = 0; r < isMissed.length && reach < Double.POSITIVE_INFINITY; r++) {
      if (room(r, place, way) <= reach + (exact ? GAIN : 0)
          && (best < 0 || isBetter(r, best, place, exact))) {
        best = r;
      }
    }
    return best;
  }

  private boolean isBetter(int one, int other, int place, boolean exact) {
    return exact
        ? basis.inside[one] < basis.inside[other]
        : Math.abs(basis.tableau[one][place]) > Math.abs(basis.tableau[other][place]);
  }

  /** How far the move may go before one of the basis meets a bound. */
  private double room(int row, int place, double way) {
    double change = -way * basis.tableau[row][place];
    if (Math.abs(change) < PIVOT) {
      return Double.POSITIVE_INFINITY;
    }
    double end = stop(row, place, way);
    return Double.isInfinite(end)
        ? Double.POSITIVE_INFINITY
        : (end - basis.value[basis.inside[row]]) / change;
  }

  /** The bound that one of the basis moves towards; what misses one stops there first. */
  private double stop(int row, int place, double way) {
    int index = basis.inside[row];
    boolean rises = -way * basis.tableau[row][place] > 0;
    double low = program.low[index];
    double high = program.high[index];
    if (isMissed[row]) {
      boolean isBelow = basis.value[index] < low;
      if (rises) {
        return isBelow ? low : Double.POSITIVE_INFINITY;
      }
      return isBelow ? Double.NEGATIVE_INFINITY : high;
    }
    return rises ? high : low;
  }
}
