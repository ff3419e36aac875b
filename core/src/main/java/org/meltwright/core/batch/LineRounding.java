// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.meltwright.units.ScaleInterval;

/**
 * The printed masses of a batch: each line a whole number of its own balance's steps, and the sum
 * as near to the exact total as the coarsest balance allows.
 *
 * <p>Lines of finer balances are rounded by themselves, halves up. The lines of the coarsest
 * balance share what these leave of the exact total, by largest remainder, the earlier line first
 * where remainders are equal. So the printed total, which is the sum of the printed lines, differs
 * from the exact total by at most half the coarsest interval. Should the fine lines round up to
 * more than all that is there, they share their own total in the same way, balance by balance.
 *
 * <p>For example 333.4 g, 333.4 g and 333.4 g at 1 g, with 4.56 g at 0.1 g: the fine line prints
 * 4.6 g, what is left of 1004.76 g is 1000.16 g, and the three print 334 g, 333 g and 333 g: 1004.6
 * g in all.
 */
final class LineRounding {

  private final List<ExactLine> lines;
  private final BigDecimal[] printed;

  /** Rounds lines, and returns them in the same order. */
  static List<RoundedLine> of(List<ExactLine> lines) {
    LineRounding rounding = new LineRounding(lines);
    List<RoundedLine> rounded = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      ExactLine line = lines.get(i);
      rounded.add(
          new RoundedLine(line.kilograms(), rounding.printed[i].doubleValue(), line.interval()));
    }
    return List.copyOf(rounded);
  }

  private LineRounding(List<ExactLine> lines) {
    this.lines = lines;
    this.printed = new BigDecimal[lines.size()];
    Arrays.fill(printed, BigDecimal.ZERO);
    List<List<Integer>> tiers = tiers();
    if (!tiers.isEmpty() && !roundFineLinesAlone(tiers)) {
      shareEachTier(tiers);
    }
  }

  /** The lines above zero, those of one interval together, the finest first. */
  private List<List<Integer>> tiers() {
    List<List<Integer>> tiers = new ArrayList<>();
    lines.stream()
        .map(ExactLine::interval)
        .distinct()
        .sorted()
        .forEach(interval -> tiers.add(linesAt(interval)));
    tiers.removeIf(List::isEmpty);
    return tiers;
  }

  private List<Integer> linesAt(ScaleInterval interval) {
    List<Integer> at = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).kilograms() > 0 && lines.get(i).interval().equals(interval)) {
        at.add(i);
      }
    }
    return at;
  }

  /** Tells whether the coarsest lines could take what the fine ones leave. */
  private boolean roundFineLinesAlone(List<List<Integer>> tiers) {
    BigDecimal left = BigDecimal.ZERO;
    for (List<Integer> tier : tiers.subList(0, tiers.size() - 1)) {
      for (int i : tier) {
        ExactLine line = lines.get(i);
        long steps = (long) Math.floor(line.interval().steps(line.kilograms()) + 0.5);
        printed[i] = line.interval().kilogramsOf(steps);
        left = left.add(exact(i)).subtract(printed[i]);
      }
    }
    List<Integer> coarsest = tiers.get(tiers.size() - 1);
    for (int i : coarsest) {
      left = left.add(exact(i));
    }
    return share(left, coarsest);
  }

  /** Each tier takes over what rounding the finer tier left, at most half a step of that. */
  private void shareEachTier(List<List<Integer>> tiers) {
    BigDecimal carried = BigDecimal.ZERO;
    for (List<Integer> tier : tiers) {
      BigDecimal left = carried;
      for (int i : tier) {
        left = left.add(exact(i));
      }
      share(left, tier);
      carried = left;
      for (int i : tier) {
        carried = carried.subtract(printed[i]);
      }
    }
  }

  /** Largest remainder over the lines of one interval; false if less than nothing is left. */
  private boolean share(BigDecimal left, List<Integer> tier) {
    ScaleInterval interval = lines.get(tier.get(0)).interval();
    long toShare = (long) Math.floor(interval.steps(left.doubleValue()) + 0.5);
    if (toShare < 0) {
      return false;
    }
    double[] quotas = tier.stream().mapToDouble(i -> quota(i, interval)).toArray();
    long spare = toShare - wholeSteps(quotas);
    if (spare < 0 || spare > tier.size()) {
      quotas = scaled(quotas, toShare);
      spare = toShare - wholeSteps(quotas);
    }
    Integer[] order = byRemainder(quotas);
    for (int place = 0; place < order.length; place++) {
      int at = order[place];
      long steps = (long) Math.floor(quotas[at]) + (place < spare ? 1 : 0);
      printed[tier.get(at)] = interval.kilogramsOf(steps);
    }
    return true;
  }

  private double quota(int line, ScaleInterval interval) {
    return interval.steps(lines.get(line).kilograms());
  }

  private static long wholeSteps(double[] quotas) {
    return Arrays.stream(quotas).mapToLong(q -> (long) Math.floor(q)).sum();
  }

  /** The same proportions, with the steps to share as their sum. */
  private static double[] scaled(double[] quotas, long toShare) {
    BigDecimal sum =
        Arrays.stream(quotas).mapToObj(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add);
    double factor = BigDecimal.valueOf(toShare).divide(sum, 30, RoundingMode.DOWN).doubleValue();
    return Arrays.stream(quotas).map(q -> q * Math.nextDown(factor)).toArray();
  }

  private static Integer[] byRemainder(double[] quotas) {
    Integer[] order = new Integer[quotas.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> Math.floor(quotas[i]) - quotas[i]));
    return order;
  }

  private BigDecimal exact(int line) {
    return BigDecimal.valueOf(lines.get(line).kilograms());
  }

  /**
   * A line to be weighed out: its exact mass, and the interval of the balance it is weighed on.
   *
   * @param kilograms the exact mass in kg, at least 0
   * @param interval the interval of its balance
   */
  record ExactLine(double kilograms, ScaleInterval interval) {}
}
