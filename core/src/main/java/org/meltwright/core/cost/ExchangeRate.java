// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;

/**
 * What one unit of a currency was worth in another on a day.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // from the first of March a pound is worth 1.16 euros
 * ExchangeRate pound =
 *     new ExchangeRate(CurrencyUnit.GBP, CurrencyUnit.EUR, LocalDate.of(2026, 3, 1),
 *         new java.math.BigDecimal("1.16"));
 * ExactMoney price = ExactMoney.of(Money.parse("GBP 25"));
 * ExchangeRates.of(List.of(pound)).convert(price, CurrencyUnit.EUR, pound.date()); // 29 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param of the currency of which there is one unit
 * @param in the currency it is expressed in
 * @param date the day from which the rate holds
 * @param rate how many units of {@code in} one unit of {@code of} is worth, above zero
 */
public record ExchangeRate(CurrencyUnit of, CurrencyUnit in, LocalDate date, BigDecimal rate) {

  /** Draws a problem if the rate is not above zero. */
  public ExchangeRate {
    if (rate.signum() <= 0) {
      throw CostProblem.negative(rate, "exchange rate");
    }
  }

  boolean joins(CurrencyUnit one, CurrencyUnit other) {
    return (of.equals(one) && in.equals(other)) || (of.equals(other) && in.equals(one));
  }
}
