// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * An amount of money before it is rounded: an exact fraction of a currency.
 *
 * <p>For example, 10.00 EUR divided by 3 and times 3 is 10.00 EUR again. It becomes {@link Money}
 * only where rounding is asked for. Wherever this library takes money it takes a {@link
 * BigMoneyProvider}, which {@link Money}, {@link BigMoney} and this are, and it gives this.
 *
 * <p>In code:
 *
 * <pre>{@code
 * ExactMoney ten = ExactMoney.of(Money.parse("EUR 10"));
 * ExactMoney third = ten.dividedBy(3);
 * third.toMoney(); // EUR 3.33
 * third.times(3); // 10 EUR
 * ten.minus(Money.parse("EUR 0.50")).toBigMoney(); // EUR 9.5
 * third.toBigMoney(); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe. Two amounts are equal if currency and value are, whatever number of
 * decimals they were written with.
 */
public final class ExactMoney implements BigMoneyProvider, Comparable<ExactMoney> {

  private static final int MOST_DECIMALS = 1000;

  private final CurrencyUnit currency;
  private final Ratio amount;

  /**
   * Returns an amount of money as it is.
   *
   * @param money the money
   * @return the same amount
   */
  public static ExactMoney of(BigMoneyProvider money) {
    if (money instanceof ExactMoney exact) {
      return exact;
    }
    BigMoney big = money.toBigMoney();
    return new ExactMoney(big.getCurrencyUnit(), Ratio.of(big.getAmount()));
  }

  /**
   * Reads an amount of money with the decimal sign of a parser: a number, and its currency before
   * or behind it.
   *
   * @param text for example "18,00 €", "EUR 18.00", "18.00 EUR", "50p" or "3 x 4.99 EUR"
   * @param parser the parser, such as {@link QuantityParser#forLocale}
   * @return the amount
   * @throws ProblemException if the text does not fit, or the currency is unknown or shared by
   *     several countries
   */
  public static ExactMoney parse(String text, QuantityParser parser) {
    return of(MoneyText.countedMoney(text, parser));
  }

  /**
   * Returns nothing in a currency.
   *
   * @param currency the currency
   * @return an amount of zero
   */
  public static ExactMoney zero(CurrencyUnit currency) {
    return new ExactMoney(currency, Ratio.ZERO);
  }

  static ExactMoney of(CurrencyUnit currency, Ratio amount) {
    return new ExactMoney(currency, amount);
  }

  private ExactMoney(CurrencyUnit currency, Ratio amount) {
    this.currency = currency;
    this.amount = amount;
  }

  /** {@return the currency} */
  public CurrencyUnit currency() {
    return currency;
  }

  Ratio amount() {
    return amount;
  }

  /**
   * Tells whether nothing is owed either way.
   *
   * @return whether the amount is zero
   */
  public boolean isZero() {
    return amount.signum() == 0;
  }

  /**
   * Tells whether the amount is above zero.
   *
   * @return whether it is
   */
  public boolean isPositive() {
    return amount.signum() > 0;
  }

  /**
   * Tells whether the amount is below zero.
   *
   * @return whether it is
   */
  public boolean isNegative() {
    return amount.signum() < 0;
  }

  /**
   * Adds another amount.
   *
   * @param other the amount to add
   * @return the sum
   * @throws ProblemException if the currencies differ
   */
  public ExactMoney plus(BigMoneyProvider other) {
    return new ExactMoney(currency, amount.plus(same(other)));
  }

  /**
   * Takes another amount away.
   *
   * @param other the amount to take away
   * @return the difference
   * @throws ProblemException if the currencies differ
   */
  public ExactMoney minus(BigMoneyProvider other) {
    return new ExactMoney(currency, amount.minus(same(other)));
  }

  private Ratio same(BigMoneyProvider other) {
    ExactMoney exact = of(other);
    CostProblem.requireSame(currency, exact.currency);
    return exact.amount;
  }

  /**
   * Turns the sign.
   *
   * @return the amount with the other sign
   */
  public ExactMoney negated() {
    return new ExactMoney(currency, amount.negated());
  }

  /**
   * Multiplies by a number.
   *
   * @param factor the factor
   * @return the product
   */
  public ExactMoney times(BigDecimal factor) {
    return times(Ratio.of(factor));
  }

  /**
   * Multiplies by a count.
   *
   * @param count the count
   * @return the product
   */
  public ExactMoney times(long count) {
    return times(Ratio.of(count));
  }

  ExactMoney times(Ratio factor) {
    return new ExactMoney(currency, amount.times(factor));
  }

  /**
   * Divides by a number.
   *
   * @param divisor the divisor, not zero
   * @return the quotient
   * @throws ArithmeticException if the divisor is zero
   */
  public ExactMoney dividedBy(BigDecimal divisor) {
    return new ExactMoney(currency, amount.dividedBy(Ratio.of(divisor)));
  }

  /**
   * Divides by a count.
   *
   * @param count the count, not zero
   * @return the quotient
   * @throws ArithmeticException if the count is zero
   */
  public ExactMoney dividedBy(long count) {
    return dividedBy(BigDecimal.valueOf(count));
  }

  /**
   * Returns how many times another amount this one is.
   *
   * @param other the amount to measure with, not zero
   * @return this amount divided by the other, as the nearest number
   * @throws ProblemException if the currencies differ
   * @throws ArithmeticException if the other is zero
   */
  public double dividedBy(BigMoneyProvider other) {
    return amount.dividedBy(same(other)).toDouble();
  }

  /**
   * Rounds to the smallest coin of the currency.
   *
   * @param mode how to round
   * @return the money
   */
  public Money toMoney(RoundingMode mode) {
    return Money.of(currency, amount.toDecimal(currency.getDecimalPlaces(), mode));
  }

  /**
   * Rounds to the smallest coin of the currency, half a coin upwards, as invoices do.
   *
   * @return the money
   */
  public Money toMoney() {
    return toMoney(RoundingMode.HALF_UP);
  }

  /**
   * Rounds to a number of decimals.
   *
   * @param scale the decimals wanted
   * @param mode how to round
   * @return the money, with that many decimals
   * @throws ProblemException if the scale is below zero or above 1000
   */
  public BigMoney toBigMoney(int scale, RoundingMode mode) {
    CHECK.between(scale, 0, MOST_DECIMALS, "decimal places");
    return BigMoney.of(currency, amount.toDecimal(scale, mode));
  }

  /**
   * Returns the amount with all its decimals.
   *
   * @return the same amount
   * @throws ProblemException if the decimals have no end, as those of a third have
   */
  @Override
  public BigMoney toBigMoney() {
    return amount
        .toDecimal()
        .map(decimal -> BigMoney.of(currency, decimal))
        .orElseThrow(() -> CostProblem.exception(CostProblem.ENDLESS, toString()));
  }

  /**
   * Returns the amount as a number of an explanation.
   *
   * @param symbol what it stands for, with {@code money} where the currency stands in its unit
   * @return the figure, to the nearest double
   */
  public Figure figure(Symbol symbol) {
    return new Figure(
        symbol, amount.toDouble(), symbol.unit().replace("money", currency.getCode()));
  }

  /**
   * Compares two amounts of one currency.
   *
   * @param other the other amount
   * @return the sign of the difference
   * @throws ProblemException if the currencies differ
   */
  @Override
  public int compareTo(ExactMoney other) {
    CostProblem.requireSame(currency, other.currency);
    return amount.compareTo(other.amount);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ExactMoney that
        && currency.equals(that.currency)
        && amount.equals(that.amount);
  }

  @Override
  public int hashCode() {
    return currency.hashCode() * 31 + amount.hashCode();
  }

  /**
   * Returns amount and currency, locale-free.
   *
   * @return for example "12.5 EUR", or "10/3 EUR" where the digits have no end
   */
  @Override
  public String toString() {
    return amount + " " + currency.getCode();
  }
}
