// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

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
   * @param total the units to share out, zero or more
   * @param weights the weight of each line, zero or more, one of them above zero
   * @param atLeast the least share of each line, 0 for none
   * @return the share of each line, in their order, adding up to the total
   * @throws ProblemException if a weight is below zero, none is above zero, or the units do not
   *     reach for the least shares
   */
  public static List<Long> shares(long total, List<BigDecimal> weights, long atLeast) {
    if (atLeast < 0 || total < Math.multiplyExact(atLeast, weights.size())) {
      throw CostProblem.negative(total, "rest after the least shares");
    }
    List<Ratio> quotas = quotas(Ratio.of(total), weights.stream().map(Ratio::of).toList());
    return round(quotas, BigInteger.valueOf(total), BigInteger.valueOf(atLeast)).stream()
        .map(BigInteger::longValueExact)
        .toList();
  }

  /** Rounds exact amounts of one currency so that they add up to a rounded total. */
  static List<Money> round(List<ExactMoney> exact, Money total) {
    Ratio coins = Ratio.of(BigInteger.TEN.pow(total.getScale()));
    List<Ratio> quotas = exact.stream().map(e -> e.amount().times(coins)).toList();
    return toMoney(total, round(quotas, units(total)));
  }

  /** Shares out a rounded total in proportion to exact weights; all to the first if all are nil. */
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

  /**
   * As above, with a floor under each share; what it costs is taken from the smallest remainders.
   */
  private static List<BigInteger> round(List<Ratio> quotas, BigInteger total, BigInteger atLeast) {
    List<BigInteger> shares = new ArrayList<>();
    quotas.forEach(q -> shares.add(q.floor().max(atLeast)));
    long left = total.subtract(sum(shares)).longValueExact();
    int[] order =
        byRemainder(quotas).filter(i -> quotas.get(i).compareTo(Ratio.of(atLeast)) > 0).toArray();
    for (int k = 0; left > 0; k++, left--) {
      int i = order[k % order.length];
      shares.set(i, shares.get(i).add(BigInteger.ONE));
    }
    for (int k = 0; left < 0; k++) {
      int i = order[order.length - 1 - k % order.length];
      if (shares.get(i).compareTo(atLeast) > 0) {
        shares.set(i, shares.get(i).subtract(BigInteger.ONE));
        left++;
      }
    }
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
