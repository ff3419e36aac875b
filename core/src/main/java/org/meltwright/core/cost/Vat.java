// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import org.joda.money.BigMoneyProvider;

/**
 * How value-added tax stands in a price: whether it is in it, at what rate, and whether the buyer
 * gets it back.
 *
 * <p>For example:
 *
 * <pre>{@code
 * ExactMoney price = ExactMoney.of(Money.parse("EUR 119"));
 * Vat inIt = Vat.included(Rate.ofPercent("19"));
 * inIt.net(price); // 100 EUR
 * inIt.borne(price); // 119 EUR
 * // a studio that gets the tax back bears the net price
 * inIt.recoverable().borne(price); // 100 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param isIncluded whether the price holds the tax (gross) or it comes on top (net)
 * @param rate the rate of tax
 * @param isRecoverable whether the buyer gets the tax back and so does not bear it
 */
public record Vat(boolean isIncluded, Rate rate, boolean isRecoverable) {

  /** No tax in the price and none on top. */
  public static final Vat NONE = new Vat(false, Rate.ZERO, false);

  /**
   * Returns tax that the price holds: the price is gross.
   *
   * @param rate the rate of tax
   * @return the tax, not recoverable
   */
  public static Vat included(Rate rate) {
    return new Vat(true, rate, false);
  }

  /**
   * Returns tax that comes on top of the price: the price is net.
   *
   * @param rate the rate of tax
   * @return the tax, not recoverable
   */
  public static Vat added(Rate rate) {
    return new Vat(false, rate, false);
  }

  /**
   * Returns the same tax for a buyer who gets it back.
   *
   * @return the tax, recoverable
   */
  public Vat recoverable() {
    return new Vat(isIncluded, rate, true);
  }

  /**
   * Returns a price without tax.
   *
   * @param price the price as it is stated
   * @return the net amount; 10 EUR for 11.90 EUR with 19 % in it
   */
  public ExactMoney net(BigMoneyProvider price) {
    ExactMoney stated = ExactMoney.of(price);
    return isIncluded ? stated.times(Ratio.ONE.dividedBy(factor())) : stated;
  }

  /**
   * Returns a price with tax.
   *
   * @param price the price as it is stated
   * @return the gross amount; 11.90 EUR for 10 EUR with 19 % on top
   */
  public ExactMoney gross(BigMoneyProvider price) {
    ExactMoney stated = ExactMoney.of(price);
    return isIncluded ? stated : stated.times(factor());
  }

  /**
   * Returns what the buyer bears in the end.
   *
   * @param price the price as it is stated
   * @return the net amount if the tax is recoverable, else the gross amount
   */
  public ExactMoney borne(BigMoneyProvider price) {
    return isRecoverable ? net(price) : gross(price);
  }

  private Ratio factor() {
    return Ratio.ONE.plus(rate.fraction());
  }
}
