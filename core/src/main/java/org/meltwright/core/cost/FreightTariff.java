// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;

/**
 * What a supplier asks for carriage: an amount per order, an amount per kilogram, and nothing from
 * a value of goods on.
 *
 * <p>For example:
 *
 * <pre>{@code
 * FreightTariff tariff =
 *     FreightTariff.perOrder(Money.parse("EUR 6.90"))
 *         .withPerKilogram(Money.parse("EUR 0.50"))
 *         .withFreeFrom(Money.parse("EUR 75"));
 * var twoKilograms = new java.math.BigDecimal("2");
 * tariff.cost(ExactMoney.of(Money.parse("EUR 40")), twoKilograms); // 7.9 EUR
 * tariff.cost(ExactMoney.of(Money.parse("EUR 75")), twoKilograms).isZero(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class FreightTariff {

  private final ExactMoney perOrder;
  private final ExactMoney perKilogram;
  private final @Nullable ExactMoney freeFrom;

  /**
   * Returns carriage for nothing.
   *
   * @param currency the currency
   * @return the tariff
   */
  public static FreightTariff free(CurrencyUnit currency) {
    ExactMoney zero = ExactMoney.zero(currency);
    return new FreightTariff(zero, zero, null);
  }

  /**
   * Returns one amount for each order.
   *
   * @param amount the amount, zero or more
   * @return the tariff
   * @throws ProblemException if the amount is below zero
   */
  public static FreightTariff perOrder(BigMoneyProvider amount) {
    ExactMoney exact = notNegative(amount);
    return new FreightTariff(exact, ExactMoney.zero(exact.currency()), null);
  }

  private static ExactMoney notNegative(BigMoneyProvider amount) {
    ExactMoney exact = ExactMoney.of(amount);
    if (exact.isNegative()) {
      throw CostProblem.negative(exact, "freight");
    }
    return exact;
  }

  private FreightTariff(
      ExactMoney perOrder, ExactMoney perKilogram, @Nullable ExactMoney freeFrom) {
    CostProblem.requireSame(perOrder.currency(), perKilogram.currency());
    if (freeFrom != null) {
      CostProblem.requireSame(perOrder.currency(), freeFrom.currency());
    }
    this.perOrder = perOrder;
    this.perKilogram = perKilogram;
    this.freeFrom = freeFrom;
  }

  /**
   * Returns a copy that also asks for each kilogram.
   *
   * @param amount the amount per kilogram, zero or more
   * @return the new tariff
   * @throws ProblemException if the amount is below zero or in another currency
   */
  public FreightTariff withPerKilogram(BigMoneyProvider amount) {
    return new FreightTariff(perOrder, notNegative(amount), freeFrom);
  }

  /**
   * Returns a copy that asks nothing from a value of goods on.
   *
   * @param goodsValue the value of goods, as the supplier's prices state it, at which carriage is
   *     free
   * @return the new tariff
   * @throws ProblemException if the value is below zero or in another currency
   */
  public FreightTariff withFreeFrom(BigMoneyProvider goodsValue) {
    return new FreightTariff(perOrder, perKilogram, notNegative(goodsValue));
  }

  /**
   * Returns the amount for each order that is not free.
   *
   * @return the amount
   */
  public ExactMoney perOrder() {
    return perOrder;
  }

  /**
   * Returns the amount for each kilogram of an order that is not free.
   *
   * @return the amount per kilogram
   */
  public ExactMoney perKilogram() {
    return perKilogram;
  }

  /**
   * Returns the value of goods at which carriage is free.
   *
   * @return the value; empty if it is never free
   */
  public Optional<ExactMoney> freeFrom() {
    return Optional.ofNullable(freeFrom);
  }

  /** {@return the currency} */
  public CurrencyUnit currency() {
    return perOrder.currency();
  }

  /**
   * Returns what an order is carried for.
   *
   * @param goodsValue the value of its goods, as the supplier's prices state it
   * @param massKilograms the mass of its goods, in kg
   * @return the exact amount
   * @throws ProblemException if the currency differs
   */
  public ExactMoney cost(BigMoneyProvider goodsValue, BigDecimal massKilograms) {
    return cost(ExactMoney.of(goodsValue), Ratio.of(massKilograms));
  }

  ExactMoney cost(ExactMoney goodsValue, Ratio massKilograms) {
    CostProblem.requireSame(currency(), goodsValue.currency());
    if (freeFrom != null && goodsValue.compareTo(freeFrom) >= 0) {
      return ExactMoney.zero(currency());
    }
    return perOrder.plus(perKilogram.times(massKilograms));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FreightTariff that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(perOrder, perKilogram, freeFrom);
  }

  @Override
  public String toString() {
    return "freight "
        + perOrder
        + " + "
        + perKilogram
        + "/kg"
        + freeFrom().map(from -> ", free from " + from).orElse("");
  }
}
