// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The distribution of a sum of independent parts, on a grid: terms that share an input are one
 * part, sampled on a lattice; the parts are folded into each other.
 */
final class Distribution {

  private static final int CELLS = 2048;

  /** A prime, and a number whose powers spread the points of a lattice. */
  private static final int LATTICE = 4093;

  private static final int GENERATOR = 1516;

  private final List<double[]> parts;

  /**
   * Returns the distribution of a polynomial.
   *
   * @param constant what no input moves
   * @param factors the factor of each term
   * @param spreads where in its range each input lies
   */
  static Distribution of(double constant, Map<Term, Double> factors, List<Spread> spreads) {
    List<double[]> parts = new ArrayList<>();
    parts.add(new double[] {constant});
    List<Term> others = new ArrayList<>(factors.keySet());
    while (!others.isEmpty()) {
      parts.add(sampled(takeTogether(others), factors, spreads));
    }
    return new Distribution(parts);
  }

  private Distribution(List<double[]> parts) {
    this.parts = parts;
  }

  /** Takes out the terms that share an input with the first, or with one that shares one. */
  private static List<Term> takeTogether(List<Term> others) {
    List<Term> together = new ArrayList<>(List.of(others.remove(0)));
    for (int next = 0; next < together.size(); next++) {
      Term one = together.get(next);
      others.stream().filter(other -> share(one, other)).forEach(together::add);
      others.removeAll(together);
    }
    return together;
  }

  private static boolean share(Term one, Term other) {
    return one.input() == other.input()
        || one.input() == other.other()
        || one.other() == other.input()
        || one.other() == other.other();
  }

  private static double[] sampled(
      List<Term> terms, Map<Term, Double> factors, List<Spread> spreads) {
    int[] inputs =
        terms.stream().flatMapToInt(t -> IntStream.of(t.input(), t.other())).distinct().toArray();
    double[] sums = new double[LATTICE];
    double[] position = new double[spreads.size()];
    for (int point = 0; point < LATTICE; point++) {
      place(point, inputs, spreads, position);
      for (Term term : terms) {
        sums[point] += factors.getOrDefault(term, 0.0) * term.at(position);
      }
    }
    return sums;
  }

  private static void place(int point, int[] inputs, List<Spread> spreads, double[] position) {
    long step = 1;
    for (int input : inputs) {
      double share = (point * step % LATTICE + 0.5) / LATTICE;
      position[input] = spreads.get(input).position(share);
      step = step * GENERATOR % LATTICE;
    }
  }

  Distribution plus(double[] part) {
    List<double[]> more = new ArrayList<>(parts);
    more.add(part);
    return new Distribution(more);
  }

  /** The values below which these shares of all cases lie. */
  double[] quantiles(double... shares) {
    double start = parts.stream().mapToDouble(p -> Arrays.stream(p).min().orElseThrow()).sum();
    double width = parts.stream().mapToDouble(Distribution::width).sum();
    double cell = width / CELLS;
    double[] mass = width == 0 ? new double[] {1} : folded(cell);
    return Arrays.stream(shares).map(share -> start + cell * place(mass, share)).toArray();
  }

  private double[] folded(double cell) {
    double[] mass = {1};
    for (double[] part : parts) {
      mass = folded(mass, masses(part, cell));
    }
    return mass;
  }

  private static double width(double[] part) {
    return Arrays.stream(part).max().orElseThrow() - Arrays.stream(part).min().orElseThrow();
  }

  /** Each value goes to the two points of the grid beside it, so that the mean stays. */
  private static double[] masses(double[] part, double cell) {
    double low = Arrays.stream(part).min().orElseThrow();
    double[] masses = new double[(int) Math.floor(width(part) / cell) + 2];
    for (double value : part) {
      double place = (value - low) / cell;
      int below = Math.min((int) place, masses.length - 2);
      masses[below] += (1 - (place - below)) / part.length;
      masses[below + 1] += (place - below) / part.length;
    }
    return masses;
  }

  private static double[] folded(double[] one, double[] other) {
    double[] sum = new double[one.length + other.length - 1];
    for (int i = 0; i < one.length; i++) {
      for (int k = 0; one[i] != 0 && k < other.length; k++) {
        sum[i + k] += one[i] * other[k];
      }
    }
    return sum;
  }

  /** Half of what lies on a point of the grid lies below it. */
  private static double place(double[] mass, double share) {
    double below = 0;
    for (int i = 0; i < mass.length; i++) {
      if (below + mass[i] >= share) {
        return i - 0.5 + (share - below) / mass[i];
      }
      below += mass[i];
    }
    return mass.length - 1.0;
  }
}
