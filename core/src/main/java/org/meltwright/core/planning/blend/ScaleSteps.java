// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.meltwright.units.ScaleInterval;

/**
 * Amounts in whole steps of a balance that still keep the wishes: each is taken down or up, and one
 * step further where that is not enough; of those that keep all, the best by the aim, then the
 * nearest.
 */
final class ScaleSteps {

  /** More choices are not tried: then each amount goes to its nearest step. */
  private static final int MOST_CHOICES = 1 << 13;

  private static final double HAIR = 1e-9;

  private final ScaleInterval interval;
  private final double[] exact;
  private final double[] stock;
  private final Predicate<double[]> areKept;
  private final ToDoubleFunction<double[]> aim;

  private double[] best = {};
  private double bestAim = Double.POSITIVE_INFINITY;
  private double bestWay = Double.POSITIVE_INFINITY;

  ScaleSteps(
      ScaleInterval interval,
      double[] exact,
      double[] stock,
      Predicate<double[]> areKept,
      ToDoubleFunction<double[]> aim) {
    this.interval = interval;
    this.exact = exact;
    this.stock = stock;
    this.areKept = areKept;
    this.aim = aim;
  }

  double[] rounded() {
    for (int further = 0; further < 2 && best.length == 0; further++) {
      List<double[]> choices = choices(further);
      long count = choices.stream().mapToLong(c -> c.length).reduce(1, (a, b) -> a * b);
      if (count <= MOST_CHOICES) {
        attempt(choices, new double[exact.length], 0);
      }
    }
    return best.length == 0 ? Arrays.stream(exact).map(interval::roundKilograms).toArray() : best;
  }

  private List<double[]> choices(int further) {
    List<double[]> choices = new ArrayList<>();
    for (int p = 0; p < exact.length; p++) {
      choices.add(choices(p, further));
    }
    return choices;
  }

  /** What is all there is needs no balance. */
  private double[] choices(int part, int further) {
    double step = interval.intervalKilograms();
    double amount = exact[part];
    if (amount <= HAIR * step) {
      return new double[] {0};
    }
    double nearest = interval.roundKilograms(amount);
    boolean isWhole = Math.abs(nearest - amount) <= 1e-6 * step;
    long low = isWhole ? 0 : (long) Math.floor((amount - nearest) / step);
    List<Double> found = new ArrayList<>();
    for (long i = low - further; i <= low + (isWhole ? 0 : 1) + further; i++) {
      double taken = interval.roundKilograms(nearest + i * step);
      if (taken >= 0 && taken <= stock[part] * (1 + HAIR)) {
        found.add(taken);
      }
    }
    if (Math.abs(stock[part] - amount) <= step) {
      found.add(stock[part]);
    }
    return found.stream().mapToDouble(Double::doubleValue).distinct().toArray();
  }

  private void attempt(List<double[]> choices, double[] amounts, int part) {
    if (part < amounts.length) {
      for (double choice : choices.get(part)) {
        amounts[part] = choice;
        attempt(choices, amounts, part + 1);
      }
    } else if (Arrays.stream(amounts).sum() > 0 && areKept.test(amounts)) {
      keep(amounts);
    }
  }

  private void keep(double... amounts) {
    double value = aim.applyAsDouble(amounts);
    double way = 0;
    for (int p = 0; p < amounts.length; p++) {
      way += Math.abs(amounts[p] - exact[p]);
    }
    double slack = HAIR * Math.max(HAIR, Math.abs(bestAim));
    boolean isBetter =
        best.length == 0 || value < bestAim - slack || (value <= bestAim + slack && way < bestWay);
    if (isBetter) {
      best = amounts.clone();
      bestAim = value;
      bestWay = way;
    }
  }
}
