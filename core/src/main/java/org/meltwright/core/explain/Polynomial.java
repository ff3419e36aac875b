// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A polynomial through the results at some points, on a scale.
 *
 * <p>Terms come in one after the other, the one that explains most of what is left first, by least
 * squares on an orthogonal basis (modified Gram–Schmidt). As many stay as foretell the results best
 * when each point is left out in turn; the miss without a point is r/(1 − h), h being the point's
 * own weight.
 */
final class Polynomial {

  private static final int MOST_TERMS = 30;
  private static final double MOST_WEIGHT = 0.95;

  /** Less than this share of a column's length is rounding. */
  private static final double NOTHING = 1e-9;

  /** A term that makes the miss no smaller than this share of it is not worth keeping. */
  private static final double WORTH = 0.999;

  private final double[] results;
  private final double[] wanted;
  private final Scale scale;
  private final double[] slopes;
  private final double mean;
  private final double[] left;
  private final double[] weights;
  private final List<Column> columns = new ArrayList<>();
  private final List<Column> taken = new ArrayList<>();
  private List<Column> kept = List.of();
  private double[] leftOfKept;
  private double miss;

  /** A term at all points, made orthogonal to those taken: its mean, and its share in each. */
  private static final class Column {

    private final Term term;
    private final double[] rest;
    private final double length;
    private final List<Double> shares = new ArrayList<>();
    private double mean;
    private double norm;
    private double coefficient;

    Column(Term term, double[][] positions) {
      this.term = term;
      this.rest = Arrays.stream(positions).mapToDouble(term::at).toArray();
      this.mean = Arrays.stream(rest).average().orElse(0);
      for (int j = 0; j < rest.length; j++) {
        rest[j] -= mean;
      }
      this.length = Math.sqrt(dot(rest, rest));
    }

    /** Takes out what a unit vector explains already. */
    void without(double[] unit) {
      double share = dot(rest, unit);
      shares.add(share);
      for (int j = 0; j < rest.length; j++) {
        rest[j] -= share * unit[j];
      }
    }

    double explains(double[] left) {
      double size = Math.sqrt(dot(rest, rest));
      return size > NOTHING * length ? Math.abs(dot(rest, left)) / size : 0;
    }
  }

  /**
   * Puts a polynomial through results.
   *
   * @param positions the places of the inputs at each point
   * @param results the results there
   * @param scale the scale
   * @param slopes how steeply each input moves the result on the scale, as far as that is known
   */
  static Polynomial through(double[][] positions, double[] results, Scale scale, double[] slopes) {
    Polynomial polynomial = new Polynomial(positions, results, scale, slopes);
    polynomial.take();
    return polynomial;
  }

  private Polynomial(double[][] positions, double[] results, Scale scale, double[] slopes) {
    this.results = results;
    this.scale = scale;
    this.slopes = slopes;
    this.wanted = Arrays.stream(results).map(scale::to).toArray();
    this.left = wanted.clone();
    for (int j = 0; j < left.length; j++) {
      left[j] -= dot(slopes, positions[j]);
    }
    this.mean = Arrays.stream(left).average().orElse(0);
    Arrays.setAll(left, j -> left[j] - mean);
    this.weights = new double[wanted.length];
    Arrays.fill(weights, 1.0 / wanted.length);
    Term.all(positions[0].length).forEach(term -> columns.add(new Column(term, positions)));
    this.leftOfKept = leftOut();
    this.miss = missed();
  }

  private void take() {
    double enough = NOTHING * NOTHING * dot(left, left);
    while (taken.size() < MOST_TERMS && !columns.isEmpty() && dot(left, left) > enough) {
      Column best = best();
      if (best.explains(left) == 0) {
        return;
      }
      take(best);
      keepIfBetter();
    }
  }

  private Column best() {
    Column best = columns.get(0);
    double most = -1;
    for (Column column : columns) {
      double explains = column.explains(left);
      best = explains > most ? column : best;
      most = Math.max(explains, most);
    }
    return best;
  }

  private void take(Column best) {
    best.norm = Math.sqrt(dot(best.rest, best.rest));
    double[] unit = Arrays.stream(best.rest).map(r -> r / best.norm).toArray();
    best.coefficient = dot(left, unit);
    for (int j = 0; j < left.length; j++) {
      left[j] -= best.coefficient * unit[j];
      weights[j] += unit[j] * unit[j];
    }
    columns.remove(best);
    taken.add(best);
    columns.forEach(column -> column.without(unit));
  }

  private void keepIfBetter() {
    double now = missed();
    if (now < WORTH * miss) {
      miss = now;
      kept = List.copyOf(taken);
      leftOfKept = leftOut();
    }
  }

  private double missed() {
    double[] out = leftOut();
    double sum = 0;
    for (int j = 0; j < out.length; j++) {
      sum += Math.abs(finite(scale.back(wanted[j] - out[j])) - finite(results[j]));
    }
    return sum;
  }

  /** How far each point is missed when it is left out. */
  private double[] leftOut() {
    double[] out = new double[left.length];
    for (int j = 0; j < out.length; j++) {
      out[j] = left[j] / (1 - Math.min(weights[j], MOST_WEIGHT));
    }
    return out;
  }

  /** What has no end counts as twice the largest that has. */
  private double finite(double result) {
    double most = Arrays.stream(results).filter(Double::isFinite).max().orElse(1);
    return Math.min(result, 2 * most);
  }

  double miss() {
    return miss;
  }

  Scale scale() {
    return scale;
  }

  /** What it makes of the distributions of the inputs; what it does not explain is added. */
  Distribution distribution(List<Spread> spreads) {
    double[] factors = factors();
    double constant = mean;
    Map<Term, Double> terms = new LinkedHashMap<>();
    for (int i = 0; i < factors.length; i++) {
      constant -= factors[i] * kept.get(i).mean;
      terms.put(kept.get(i).term, factors[i]);
    }
    for (int i = 0; i < slopes.length; i++) {
      Term term = Term.linear(i);
      terms.merge(term, slopes[i] / term.slope(), Double::sum);
    }
    return Distribution.of(constant, terms, spreads).plus(unexplained());
  }

  private double[] unexplained() {
    double[] out = leftOfKept.clone();
    for (int j = 0; j < out.length; j++) {
      out[j] = Math.abs(out[j]) < NOTHING * Math.abs(mean) ? 0 : out[j];
    }
    return out;
  }

  /** From the orthogonal basis back to the terms themselves. */
  private double[] factors() {
    double[] factors = new double[kept.size()];
    for (int i = kept.size() - 1; i >= 0; i--) {
      double rest = kept.get(i).coefficient;
      for (int k = i + 1; k < kept.size(); k++) {
        rest -= factors[k] * kept.get(k).shares.get(i);
      }
      factors[i] = rest / kept.get(i).norm;
    }
    return factors;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int j = 0; j < one.length; j++) {
      sum += one[j] * other[j];
    }
    return sum;
  }
}
