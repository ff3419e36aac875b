// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoneyProvider;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * How many units cover the fixed costs: students of a class, cakes sold.
 *
 * <p>For example:
 *
 * <pre>{@code
 * BreakEven cakes =
 *     BreakEven.of(Money.parse("EUR 18000"), Money.parse("EUR 100"), Money.parse("EUR 20"));
 * cakes.contribution(); // 80 EUR
 * cakes.wholeUnits(); // 225
 * cakes.profit(230); // 400 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class BreakEven {

  private static final double MOST_UNITS = 1e15;

  private final ExactMoney fixed;
  private final ExactMoney price;
  private final ExactMoney perUnit;

  /**
   * Returns the break-even of a fee and its costs.
   *
   * @param fixed what it costs however many come, zero or more
   * @param price what one unit brings in
   * @param perUnit what one more unit costs, below the price
   * @return the break-even
   * @throws ProblemException if the fixed costs are below zero, the currencies differ, or the price
   *     is not above the cost of one unit
   */
  public static BreakEven of(
      BigMoneyProvider fixed, BigMoneyProvider price, BigMoneyProvider perUnit) {
    return ofExact(ExactMoney.of(fixed), ExactMoney.of(price), ExactMoney.of(perUnit));
  }

  private static BreakEven ofExact(ExactMoney fixed, ExactMoney price, ExactMoney perUnit) {
    CostProblem.requireSame(fixed.currency(), price.currency());
    if (fixed.isNegative()) {
      throw CostProblem.negative(fixed, "fixed cost");
    }
    if (price.compareTo(perUnit) <= 0) {
      throw new ProblemException(
          Problem.of(CostProblem.NO_CONTRIBUTION, MoneyText.inWords(price))
              .with("cost", MoneyText.inWords(perUnit)));
    }
    return new BreakEven(fixed, price, perUnit);
  }

  private BreakEven(ExactMoney fixed, ExactMoney price, ExactMoney perUnit) {
    this.fixed = fixed;
    this.price = price;
    this.perUnit = perUnit;
  }

  /**
   * Returns what one unit leaves towards the fixed costs.
   *
   * @return price less cost of one unit, above zero
   */
  public ExactMoney contribution() {
    return price.minus(perUnit);
  }

  /**
   * Returns the share of the price that a unit leaves.
   *
   * @return contribution ÷ price, where 0.32 is 32 %
   */
  public double contributionRatio() {
    return contribution().dividedBy(price);
  }

  /**
   * Returns the number of units that covers the fixed costs, fractions included.
   *
   * @return fixed costs ÷ contribution
   */
  public double units() {
    return fixed.dividedBy(contribution());
  }

  /**
   * Returns the smallest whole number of units that covers the fixed costs.
   *
   * @return the number
   */
  public long wholeUnits() {
    return wholeUnitsFor(ExactMoney.zero(fixed.currency()));
  }

  /**
   * Returns the smallest whole number of units that covers the fixed costs and leaves a profit.
   *
   * @param profit the profit wanted, before tax on it
   * @return the number
   * @throws ProblemException if the currency differs, or they are more than 10¹⁵
   */
  public long wholeUnitsFor(BigMoneyProvider profit) {
    Ratio units = fixed.plus(profit).amount().dividedBy(contribution().amount());
    CHECK.between(units.toDouble(), -MOST_UNITS, MOST_UNITS, "number of units");
    return Math.max(0, units.ceiling().longValueExact());
  }

  /**
   * Returns what comes in at the break-even, fractions of a unit included.
   *
   * @return price × units
   */
  public ExactMoney sales() {
    return price.times(fixed.amount().dividedBy(contribution().amount()));
  }

  /**
   * Returns the profit of a number of units.
   *
   * @param units the number
   * @return the profit before tax; below zero for a loss
   */
  public ExactMoney profit(long units) {
    return contribution().times(units).minus(fixed);
  }

  /**
   * Returns by how much sales may fall before a loss begins.
   *
   * @param units the units sold
   * @return their sales less the sales at the break-even; below zero if that is not reached
   */
  public ExactMoney marginOfSafety(long units) {
    return price.times(BigDecimal.valueOf(units)).minus(sales());
  }

  /**
   * Explains the number.
   *
   * @return fixed costs, price and cost of one unit, and the quotient
   */
  public Explanation explanation() {
    return CostWorking.builder("working.break-even", Map.of())
        .stated(fixed.figure(CostWorking.FIXED))
        .stated(price.figure(CostWorking.PRICE))
        .stated(perUnit.figure(CostWorking.PER_UNIT))
        .step(CostWorking.UNITS_EVEN, units())
        .step(CostWorking.WHOLE_EVEN, (double) wholeUnits())
        .build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BreakEven that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(fixed, price, perUnit);
  }

  @Override
  public String toString() {
    return "break-even of " + fixed + " at " + price + " less " + perUnit + " a unit";
  }
}
