// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoneyProvider;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What is taken from a price before it reaches the seller: the tax in it, and the fees of a market
 * place, a gallery or a card.
 *
 * <p>Tax and fee are taken from the price that the buyer pays. So they are put on top by division
 * and not by adding per cents: of 8 EUR with 19 % and 10 % and 0.30 EUR on top of one another only
 * 7.67 EUR would come in.
 *
 * <p>Whether a seller is exempt, and which rate holds, is for the seller to say: it differs by
 * country, year and turnover, and this library ships none. A fee is what the seller bears of it,
 * with tax on the fee where that does not come back.
 *
 * <p>For example:
 *
 * <pre>{@code
 * SalesTerms market =
 *     SalesTerms.taxed(Rate.ofPercent("19"))
 *         .withFee(Rate.ofPercent("10"))
 *         .withFixedFee(Money.parse("EUR 0.30"));
 * market.priceLeaving(Money.parse("EUR 8")).toMoney(); // EUR 11.21
 * market.left(Money.parse("EUR 11.90")); // 8.51 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class SalesTerms {

  private final Vat tax;
  private final Rate fee;
  private final Optional<ExactMoney> fixedFee;

  /**
   * Returns terms of a seller who is exempt from tax, without fees. The tax in what such a seller
   * buys does not come back and is part of the cost.
   *
   * @return the terms
   */
  public static SalesTerms exempt() {
    return taxed(Rate.ZERO);
  }

  /**
   * Returns terms of a seller whose price holds tax, without fees.
   *
   * @param rate the rate of tax
   * @return the terms
   */
  public static SalesTerms taxed(Rate rate) {
    return new SalesTerms(Vat.included(rate), Rate.ZERO, Optional.empty());
  }

  private SalesTerms(Vat tax, Rate fee, Optional<ExactMoney> fixedFee) {
    this.tax = tax;
    this.fee = fee;
    this.fixedFee = fixedFee;
    if (kept().signum() <= 0) {
      throw new ProblemException(
          Problem.of(CostProblem.FEE_TAKES_ALL, fee.toString()).with("tax", tax.rate().toString()));
    }
  }

  /**
   * Returns a copy with a fee in per cent instead of the one before.
   *
   * @param ofPrice the share of the price that the buyer pays, tax included
   * @return the new terms
   * @throws ProblemException if tax and fee leave nothing of a price
   */
  public SalesTerms withFee(Rate ofPrice) {
    return new SalesTerms(tax, ofPrice, fixedFee);
  }

  /**
   * Returns a copy with a fee for each sale instead of the one before.
   *
   * @param perSale the amount, zero or more
   * @return the new terms
   * @throws ProblemException if the amount is below zero
   */
  public SalesTerms withFixedFee(BigMoneyProvider perSale) {
    ExactMoney exact = ExactMoney.of(perSale);
    if (exact.isNegative()) {
      throw CostProblem.negative(exact, "fee");
    }
    return new SalesTerms(tax, fee, Optional.of(exact));
  }

  /**
   * Returns the tax in a price.
   *
   * @param price what the buyer pays
   * @return the exact tax
   */
  public ExactMoney tax(BigMoneyProvider price) {
    return ExactMoney.of(price).minus(tax.net(price));
  }

  /**
   * Returns the fees on a price.
   *
   * @param price what the buyer pays
   * @return the share of it and the fee for each sale, exactly
   * @throws ProblemException if the currency of the fee differs
   */
  public ExactMoney fee(BigMoneyProvider price) {
    ExactMoney share = fee.of(price);
    return fixedFee.map(share::plus).orElse(share);
  }

  /**
   * Returns what a price leaves.
   *
   * @param price what the buyer pays
   * @return price less tax less fees, exactly; below zero where the fee for each sale is more
   * @throws ProblemException if the currency of the fee differs
   */
  public ExactMoney left(BigMoneyProvider price) {
    return ExactMoney.of(price).minus(tax(price)).minus(fee(price));
  }

  /**
   * Returns the price that leaves an amount.
   *
   * @param left what is to be left, tax and fees taken off
   * @return (left + fee for each sale) ÷ (1 ÷ (1 + tax) − fee), exactly
   * @throws ProblemException if the currency of the fee differs
   */
  public ExactMoney priceLeaving(BigMoneyProvider left) {
    ExactMoney wanted = ExactMoney.of(left);
    return fixedFee.map(wanted::plus).orElse(wanted).times(Ratio.ONE.dividedBy(kept()));
  }

  /** The share of a price that tax and fee leave. */
  private Ratio kept() {
    Ratio untaxed = Ratio.ONE.dividedBy(Ratio.ONE.plus(tax.rate().fraction()));
    return untaxed.minus(fee.fraction());
  }

  Rate taxRate() {
    return tax.rate();
  }

  Rate feeRate() {
    return fee;
  }

  Optional<ExactMoney> fixedFee() {
    return fixedFee;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SalesTerms that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(tax, fee, fixedFee);
  }

  @Override
  public String toString() {
    return "tax " + tax.rate() + ", fee " + fee + fixedFee.map(f -> " and " + f).orElse("");
  }
}
