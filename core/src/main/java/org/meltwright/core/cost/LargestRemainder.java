// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;
import org.meltwright.units.ProblemException;

/**
 * Whole shares that add up: every line gets its exact share rounded down, and the units left go to
 * the largest remainders, the first of equals.
 *
 * <p>For example, 10.00 EUR over three equal lines is 3.34, 3.33 and 3.33. A line's share is never
 * more than one unit away from its exact share.
 *
 * <p>In code:
 *
 * <pre>{@code
 * var one = java.math.BigDecimal.ONE;
 * Money ten = Money.parse("EUR 10");
 * LargestRemainder.allocate(ten, List.of(one, one, one)); // [EUR 3.34, EUR 3.33, EUR 3.33]
 * // seven jars for three tables by 5, 3 and 2 people: 3.5, 2.1 and 1.4
 * var people = List.of(new java.math.BigDecimal(5), new java.math.BigDecimal(3),
 *     new java.math.BigDecimal(2));
 * LargestRemainder.shares(7, people, 0); // [4, 2, 1]
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class LargestRemainder {

  /** All of them are numbers that a double counts by ones. */
  private static final double MOST_UNITS = 1L << 53;

  private LargestRemainder() {}

  /**
   * Shares out an amount of money to the smallest coin.
   *
   * @param total what is shared out; a refund may be below zero
   * @param weights the weight of each line, zero or more, one of them above zero
   * @return the share of each line, in their order, adding up to the total
   * @throws ProblemException if a weight is below zero or none is above zero
   */
  public static List<Money> allocate(Money total, List<BigDecimal> weights) {
    List<Ratio> quotas = quotas(Ratio.of(units(total)), weights.stream().map(Ratio::of).toList());
    return toMoney(total, round(quotas, units(total)));
  }

  /**
   * Shares out whole units.
   *
   * <p>Lines whose exact share is below the least one get that, and the others share out the rest
   * by their weights. For example, 100 units over 90, 10 and eight lines of no weight, at least 5
   * each: 54, 6 and eight times 5.
   *
   * @param total the units to share out, zero or more
   * @param weights the weight of each line, zero or more, one of them above zero
   * @param atLeast the least share of each line, 0 for none
   * @return the share of each line, in their order, adding up to the total
   * @throws ProblemException if a weight is below zero, none is above zero, or the units do not
   *     reach for the least shares
   */
  public static List<Long> shares(long total, List<BigDecimal> weights, long atLeast) {
    CHECK.between((double) atLeast, 0, MOST_UNITS, "least share");
    CHECK.between(
        (double) total, atLeast * (double) weights.size(), MOST_UNITS, "units to share out");
    List<Ratio> quotas = raised(Ratio.of(total), weights.stream().map(Ratio::of).toList(), atLeast);
    return round(quotas, BigInteger.valueOf(total)).stream()
        .map(BigInteger::longValueExact)
        .toList();
  }

  /** Exact shares of which none is below the least: each round lifts those that still are. */
  private static List<Ratio> raised(Ratio total, List<Ratio> weights, long atLeast) {
    Ratio least = Ratio.of(atLeast);
    List<Ratio> quotas = new ArrayList<>(quotas(total, weights));
    List<Ratio> left = new ArrayList<>(weights);
    Ratio rest = total;
    while (quotas.stream().anyMatch(q -> q.compareTo(least) < 0)) {
      for (int i = 0; i < quotas.size(); i++) {
        if (quotas.get(i).compareTo(least) < 0) {
          quotas.set(i, least);
          left.set(i, Ratio.ZERO);
          rest = rest.minus(least);
        }
      }
      List<Ratio> shared = quotas(rest, left);
      for (int i = 0; i < quotas.size(); i++) {
        quotas.set(i, left.get(i).signum() > 0 ? shared.get(i) : least);
      }
    }
    return quotas;
  }

  /** Rounds exact amounts of one currency so that they add up to a rounded total. */
  static List<Money> round(List<ExactMoney> exact, Money total) {
    Ratio coins = Ratio.of(BigInteger.TEN.pow(total.getScale()));
    List<Ratio> quotas = exact.stream().map(e -> e.amount().times(coins)).toList();
    return toMoney(total, round(quotas, units(total)));
  }

  /** Shares out a rounded total in proportion to exact weights; evenly if all are nil. */
  static List<Money> allocateBy(Money total, List<Ratio> weights) {
    boolean allZero = weights.stream().allMatch(w -> w.signum() == 0);
    List<Ratio> used = allZero ? weights.stream().map(w -> Ratio.ONE).toList() : weights;
    return toMoney(total, round(quotas(Ratio.of(units(total)), used), units(total)));
  }

  private static BigInteger units(Money money) {
    return money.getAmount().unscaledValue();
  }

  private static List<Money> toMoney(Money like, List<BigInteger> units) {
    return units.stream()
        .map(u -> Money.of(like.getCurrencyUnit(), new BigDecimal(u, like.getScale())))
        .toList();
  }

  private static List<Ratio> quotas(Ratio total, List<Ratio> weights) {
    Ratio sum = Ratio.ZERO;
    for (Ratio weight : weights) {
      if (weight.signum() < 0) {
        throw CostProblem.negative(weight, "weight");
      }
      sum = sum.plus(weight);
    }
    if (sum.signum() == 0) {
      throw CostProblem.exception(CostProblem.NO_WEIGHT, weights);
    }
    Ratio each = total.dividedBy(sum);
    return weights.stream().map(each::times).toList();
  }

  private static List<BigInteger> round(List<Ratio> quotas, BigInteger total) {
    List<BigInteger> shares = new ArrayList<>(quotas.stream().map(Ratio::floor).toList());
    long left = total.subtract(sum(shares)).longValueExact();
    byRemainder(quotas).limit(left).forEach(i -> shares.set(i, shares.get(i).add(BigInteger.ONE)));
    return shares;
  }

  private static BigInteger sum(List<BigInteger> values) {
    return values.stream().reduce(BigInteger.ZERO, BigInteger::add);
  }

  private static IntStream byRemainder(List<Ratio> quotas) {
    List<Ratio> remainders = quotas.stream().map(q -> q.minus(Ratio.of(q.floor()))).toList();
    return IntStream.range(0, quotas.size())
        .boxed()
        .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
        .mapToInt(Integer::intValue);
  }
}
