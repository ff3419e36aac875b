// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.meltwright.core.explain.Drivers.Driver;
import org.meltwright.core.explain.Drivers.Model;
import org.meltwright.core.explain.Drivers.Range;
import org.meltwright.core.explain.EstimateInput.Direction;

/**
 * The range that holds 95 % of cases, by {@value #POINTS} evaluations: a polynomial in the inputs
 * is put through them, on the scale on which it foretells best what it was not told, and what it
 * makes of the inputs' own distributions is worked out without further evaluation.
 */
final class LikelyRange {

  static final int POINTS = 64;

  /** Of more inputs than this, too many for so few points, what the drivers tell is made use of. */
  private static final int FEW = 15;

  private static final double BELOW = 0.025;

  /** Any seed would do; this one is the same in every run. */
  private static final int SEED = 64;

  private final List<Driver> ranked;
  private final List<EstimateInput> varied;
  private final Model model;
  private final Range worst;
  private final double[][] positions;
  private final double[] results;

  static Range of(Drivers drivers) {
    Range worst = drivers.worst();
    return worst.width() == 0 ? worst : new LikelyRange(drivers, worst).range();
  }

  private LikelyRange(Drivers drivers, Range worst) {
    this.ranked = drivers.ranked();
    this.varied = ranked.stream().map(Driver::input).toList();
    this.model = drivers.model();
    this.worst = worst;
    this.positions = positions(varied);
    this.results = Arrays.stream(positions).mapToDouble(this::result).toArray();
  }

  /** Each input is once in each of as many equal parts of its distribution, in a mixed order. */
  private static double[][] positions(List<EstimateInput> varied) {
    double[][] positions = new double[POINTS][varied.size()];
    Random order = new Random(SEED);
    for (int i = 0; i < varied.size(); i++) {
      int[] parts = mixed(order);
      for (int point = 0; point < POINTS; point++) {
        double share = (parts[point] + 0.5) / POINTS;
        positions[point][i] = varied.get(i).spread().position(share);
      }
    }
    return positions;
  }

  private static int[] mixed(Random order) {
    int[] parts = new int[POINTS];
    for (int i = 0; i < POINTS; i++) {
      int other = order.nextInt(i + 1);
      parts[i] = parts[other];
      parts[other] = i;
    }
    return parts;
  }

  private double result(double[] position) {
    return model.of(input -> value(input, position));
  }

  private double value(EstimateInput input, double[] position) {
    int place = varied.indexOf(input);
    return place < 0 ? input.central() : input.at(position[place]);
  }

  private Range range() {
    Optional<Polynomial> best =
        Stream.of(Scale.values())
            .filter(scale -> scale.holds(results))
            .flatMap(this::polynomials)
            .reduce((one, other) -> other.miss() < one.miss() ? other : one);
    return best.map(this::range).orElseGet(this::ofResults);
  }

  private Stream<Polynomial> polynomials(Scale scale) {
    Polynomial plain = Polynomial.through(positions, results, scale, new double[varied.size()]);
    return varied.size() <= FEW
        ? Stream.of(plain)
        : Stream.of(plain, Polynomial.through(positions, results, scale, slopes(scale)));
  }

  /** How steeply each input moves the result where all others are at their worse ends. */
  private double[] slopes(Scale scale) {
    return ranked.stream().mapToDouble(driver -> slope(driver, scale)).toArray();
  }

  private double slope(Driver driver, Scale scale) {
    Range known = driver.ifKnown();
    double change =
        scale.to(worst.high())
            - scale.to(known.high())
            + scale.to(known.low())
            - scale.to(worst.low());
    double slope = Double.isFinite(change) ? change / 2 : 0;
    return driver.input().direction() == Direction.RAISES ? slope : -slope;
  }

  private Range range(Polynomial polynomial) {
    Distribution distribution =
        polynomial.distribution(varied.stream().map(EstimateInput::spread).toList());
    double[] ends = distribution.quantiles(BELOW, 1 - BELOW);
    return within(polynomial.scale().back(ends[0]), polynomial.scale().back(ends[1]));
  }

  /** Where no scale holds the results, since some have no end and some are nothing. */
  private Range ofResults() {
    double[] sorted = results.clone();
    Arrays.sort(sorted);
    int below = (int) Math.floor(BELOW * POINTS);
    return within(sorted[below], sorted[POINTS - 1 - below]);
  }

  private Range within(double low, double high) {
    double from = Math.max(worst.low(), Math.min(low, worst.high()));
    return new Range(from, Math.max(from, Math.min(high, worst.high())), worst.unit());
  }
}
