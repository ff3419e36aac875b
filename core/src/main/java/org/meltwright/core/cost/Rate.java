// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.math.BigDecimal;
import org.joda.money.BigMoneyProvider;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

/**
 * A rate that amounts of money are multiplied with, in per cent: a tax, a duty, a premium.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Rate tax = Rate.ofPercent("19");
 * tax.of(ExactMoney.of(Money.parse("EUR 12.50"))); // 2.375 EUR
 * tax.equals(Rate.ofPercent("19.0")); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe. 19 % and 19.0 % are equal.
 */
public final class Rate {

  /** Nothing, 0 %. */
  public static final Rate ZERO = new Rate(BigDecimal.ZERO);

  private final BigDecimal percent;

  /**
   * Returns a rate given in per cent.
   *
   * @param percent the number, where 19 is 19 %, zero or more
   * @return the rate
   * @throws ProblemException if the number is below zero
   */
  public static Rate ofPercent(BigDecimal percent) {
    if (percent.signum() < 0) {
      throw CostProblem.negative(percent + " %", "rate");
    }
    return new Rate(percent);
  }

  /**
   * Returns a rate given in per cent as text.
   *
   * @param percent the number as text with a decimal point, with or without the sign, for example
   *     "6.5" or "19 %"
   * @return the rate
   * @throws ProblemException if the text is no number or the number is below zero
   */
  public static Rate ofPercent(String percent) {
    return parse(percent, QuantityParser.localeFree());
  }

  static Rate parse(String percent, QuantityParser parser) {
    String number = percent.endsWith("%") ? percent.substring(0, percent.length() - 1) : percent;
    return ofPercent(parser.parseNumber(number));
  }

  private Rate(BigDecimal percent) {
    this.percent = percent;
  }

  /**
   * Returns the rate in per cent.
   *
   * @return the number, where 19 is 19 %
   */
  public BigDecimal percent() {
    return percent;
  }

  /**
   * Returns this rate of an amount.
   *
   * @param base the amount
   * @return the exact product
   */
  public ExactMoney of(BigMoneyProvider base) {
    return ExactMoney.of(base).times(fraction());
  }

  Ratio fraction() {
    return Ratio.of(percent).dividedBy(Ratio.of(100));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Rate that && percent.compareTo(that.percent) == 0;
  }

  @Override
  public int hashCode() {
    return percent.stripTrailingZeros().hashCode();
  }

  /**
   * Returns the rate, locale-free.
   *
   * @return for example "6.5 %"
   */
  @Override
  public String toString() {
    return percent.toPlainString() + " %";
  }
}
