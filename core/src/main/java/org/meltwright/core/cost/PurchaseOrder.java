// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoneyProvider;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * An order with one supplier, and all that is charged on it.
 *
 * <p>For example:
 *
 * <pre>{@code
 * OrderLine wax = OrderLine.of("wax", "", Price.parse("14.00 EUR/1 kg"), 5);
 * FreightTariff parcel =
 *     FreightTariff.perOrder(Money.parse("EUR 6.90")).withFreeFrom(Money.parse("EUR 75"));
 * PurchaseOrder order =
 *     PurchaseOrder.of(List.of(wax), CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
 *         .withFreight(parcel, Vat.NONE)
 *         .withHandling(Money.parse("EUR 1.50"), Vat.NONE);
 * order.landed().paid(); // EUR 78.40
 * }</pre>
 *
 * <p>Immutable and thread-safe. The money of freight, handling and flat duties is in the currency
 * of the account; the prices of the lines may be in another, one for all lines.
 */
public final class PurchaseOrder {

  private final Goods goods;
  private final ExchangeRates rates;
  private final Freight freight;
  private final Rate insurance;
  private final Fee handling;
  private final Optional<Abroad> abroad;

  /**
   * Returns an order without carriage or other charges.
   *
   * @param lines the lines, at least one
   * @param currency the currency of the account
   * @param date the day of the order
   * @return the order
   * @throws ProblemException if there is no line, or prices do not hold on that day
   */
  public static PurchaseOrder of(List<OrderLine> lines, CurrencyUnit currency, LocalDate date) {
    if (lines.isEmpty()) {
      throw CostProblem.exception(CostProblem.NO_LINES, "");
    }
    List<Problem> expired =
        lines.stream()
            .filter(l -> !l.validity().contains(date))
            .map(l -> expired(l, date))
            .toList();
    if (!expired.isEmpty()) {
      throw new ProblemException(expired);
    }
    return new PurchaseOrder(
        new Goods(List.copyOf(lines), currency, date),
        ExchangeRates.NONE,
        new Freight(FreightTariff.free(currency), Vat.NONE),
        Rate.ZERO,
        new Fee(ExactMoney.zero(currency), Vat.NONE),
        Optional.empty());
  }

  private static Problem expired(OrderLine line, LocalDate date) {
    return Problem.of(CostProblem.NOT_VALID, date.toString())
        .with("what", line.label())
        .with("from", line.validity().from().toString())
        .with("until", line.validity().until().toString());
  }

  private PurchaseOrder(
      Goods goods,
      ExchangeRates rates,
      Freight freight,
      Rate insurance,
      Fee handling,
      Optional<Abroad> abroad) {
    this.goods = goods;
    this.rates = rates;
    this.freight = freight;
    this.insurance = insurance;
    this.handling = handling;
    this.abroad = abroad;
    CostProblem.requireSame(goods.currency, freight.tariff.currency());
    CostProblem.requireSame(goods.currency, handling.amount.currency());
  }

  /**
   * Returns a copy with exchange rates for its prices.
   *
   * @param table the dated rates
   * @return the new order
   */
  public PurchaseOrder withRates(ExchangeRates table) {
    return new PurchaseOrder(goods, table, freight, insurance, handling, abroad);
  }

  /**
   * Returns a copy with carriage.
   *
   * @param tariff what is asked for it
   * @param vat how tax stands in that; without effect on an import, where the regime says it
   * @return the new order
   * @throws ProblemException if the tariff is in another currency than the account
   */
  public PurchaseOrder withFreight(FreightTariff tariff, Vat vat) {
    Freight other = new Freight(tariff, vat);
    return new PurchaseOrder(goods, rates, other, insurance, handling, abroad);
  }

  /**
   * Returns a copy with insurance of the carriage.
   *
   * @param premium its rate of the value of the goods without tax
   * @return the new order
   */
  public PurchaseOrder withInsurance(Rate premium) {
    return new PurchaseOrder(goods, rates, freight, premium, handling, abroad);
  }

  /**
   * Returns a copy with a handling fee.
   *
   * @param fee the fee for the whole order
   * @param vat how tax stands in it, beside the import tax
   * @return the new order
   * @throws ProblemException if the fee is below zero or in another currency than the account
   */
  public PurchaseOrder withHandling(BigMoneyProvider fee, Vat vat) {
    ExactMoney exact = ExactMoney.of(fee);
    if (exact.isNegative()) {
      throw CostProblem.negative(exact, "handling fee");
    }
    return new PurchaseOrder(goods, rates, freight, insurance, new Fee(exact, vat), abroad);
  }

  /**
   * Returns a copy that comes from abroad.
   *
   * @param newRegime how the bases of duty and tax are built
   * @param newDuties the duties, one for each kind of goods and day
   * @return the new order; taxes in its prices are left out, the regime's tax takes their place
   */
  public PurchaseOrder withImport(ImportRegime newRegime, List<Duty> newDuties) {
    Abroad from = new Abroad(newRegime, List.copyOf(newDuties));
    return new PurchaseOrder(goods, rates, freight, insurance, handling, Optional.of(from));
  }

  /** {@return the lines, in the order given} */
  public List<OrderLine> lines() {
    return goods.lines;
  }

  /**
   * Returns the currency of the account.
   *
   * @return the currency
   */
  public CurrencyUnit currency() {
    return goods.currency;
  }

  /**
   * Returns the day of the order.
   *
   * @return the day
   */
  public LocalDate date() {
    return goods.date;
  }

  /**
   * Returns how the bases of duty and tax are built.
   *
   * @return the regime; empty for an order within the country
   */
  public Optional<ImportRegime> regime() {
    return abroad.map(Abroad::regime);
  }

  /**
   * Adds everything up.
   *
   * @return the landed cost, line by line
   * @throws ProblemException if an exchange rate or a duty is missing
   */
  public LandedCost landed() {
    return new LandedCostCalculation(this).run();
  }

  ExactMoney inAccount(ExactMoney amount) {
    return rates.convert(amount, goods.currency, goods.date);
  }

  FreightTariff freight() {
    return freight.tariff;
  }

  Vat freightVat() {
    return freight.vat;
  }

  Rate insurance() {
    return insurance;
  }

  ExactMoney handling() {
    return handling.amount;
  }

  Vat handlingVat() {
    return handling.vat;
  }

  List<Duty> duties() {
    return abroad.map(Abroad::duties).orElse(List.of());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PurchaseOrder that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(goods, rates, freight, insurance, handling, abroad);
  }

  @Override
  public String toString() {
    return "order of " + goods.lines.size() + " lines on " + goods.date + " in " + goods.currency;
  }

  private record Goods(List<OrderLine> lines, CurrencyUnit currency, LocalDate date) {}

  private record Freight(FreightTariff tariff, Vat vat) {}

  private record Fee(ExactMoney amount, Vat vat) {}

  private record Abroad(ImportRegime regime, List<Duty> duties) {}
}
