// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;

/**
 * A table of dated exchange rates that the caller gives; nothing is looked up and nothing guessed.
 *
 * <p>A rate holds from its day until the next one of that pair. A rate from EUR to USD serves both
 * directions; no rate is made by way of a third currency.
 *
 * <p>For example:
 *
 * <pre>{@code
 * LocalDate march = LocalDate.of(2026, 3, 1);
 * ExchangeRates table =
 *     ExchangeRates.of(List.of(new ExchangeRate(CurrencyUnit.GBP, CurrencyUnit.EUR, march,
 *         new java.math.BigDecimal("1.25"))));
 * ExactMoney euros = ExactMoney.of(Money.parse("EUR 25"));
 * // it serves the other direction too, and until a later rate of the pair is stated
 * table.convert(euros, CurrencyUnit.GBP, march.plusDays(40)); // 20 GBP
 * table.convert(euros, CurrencyUnit.GBP, march.minusDays(1)); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class ExchangeRates {

  /** No rates: amounts of one currency only. */
  public static final ExchangeRates NONE = new ExchangeRates(List.of());

  private final List<ExchangeRate> rates;

  /**
   * Returns a table.
   *
   * @param rates the rates, in any order
   * @return the table
   */
  public static ExchangeRates of(List<ExchangeRate> rates) {
    return new ExchangeRates(
        rates.stream().sorted(Comparator.comparing(ExchangeRate::date).reversed()).toList());
  }

  private ExchangeRates(List<ExchangeRate> rates) {
    this.rates = rates;
  }

  /**
   * Turns an amount into another currency, exactly.
   *
   * @param amount the amount
   * @param currency the currency wanted
   * @param date the day
   * @return the amount at the latest rate of that day or before; the amount itself if it is in that
   *     currency already
   * @throws ProblemException if the table has no rate for the pair on that day
   */
  public ExactMoney convert(BigMoneyProvider amount, CurrencyUnit currency, LocalDate date) {
    ExactMoney exact = ExactMoney.of(amount);
    if (exact.currency().equals(currency)) {
      return exact;
    }
    ExchangeRate rate = rate(exact.currency(), currency, date);
    Ratio factor = Ratio.of(rate.rate());
    Ratio used = rate.in().equals(currency) ? factor : Ratio.ONE.dividedBy(factor);
    return ExactMoney.of(currency, exact.amount().times(used));
  }

  private ExchangeRate rate(CurrencyUnit from, CurrencyUnit to, LocalDate date) {
    return rates.stream()
        .filter(r -> r.joins(from, to) && !r.date().isAfter(date))
        .findFirst()
        .orElseThrow(
            () ->
                CostProblem.exception(
                    CostProblem.RATE_MISSING, from.getCode() + "/" + to.getCode() + ", " + date));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ExchangeRates that && rates.equals(that.rates);
  }

  @Override
  public int hashCode() {
    return rates.hashCode();
  }

  @Override
  public String toString() {
    return "exchange rates " + rates;
  }
}
