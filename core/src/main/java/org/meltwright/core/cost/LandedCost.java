// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/**
 * What an order costs at the door: goods, freight, insurance, duty, handling and tax, shared out to
 * its lines so that the cents add up.
 *
 * <p>Each charge is rounded once for the whole order. Freight goes to the lines by mass, insurance
 * and handling by value, a duty to the goods of its kind, tax by its base.
 *
 * <p>For example:
 *
 * <pre>{@code
 * OrderLine wax = OrderLine.of("wax", "", Price.parse("14.00 EUR/1 kg"), 2);
 * OrderLine resin = OrderLine.of("resin", "", Price.parse("17.90 EUR/500 g"), 1);
 * FreightTariff parcel = FreightTariff.perOrder(Money.parse("EUR 6.90"));
 * LandedCost cost =
 *     PurchaseOrder.of(List.of(wax, resin), CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
 *         .withFreight(parcel, Vat.NONE)
 *         .landed();
 * cost.borne(); // EUR 52.80
 * // 28.00 and four fifths of the freight for 2 kg
 * cost.lines().get(0).landed().perKilogramRounded(); // EUR 16.76
 * }</pre>
 *
 * <p>Immutable and thread-safe. {@link PurchaseOrder#landed()} makes it.
 */
public final class LandedCost {

  private final PurchaseOrder order;
  private final List<LandedLine> lines;
  private final ExactMoney customsValue;
  private final ExactMoney taxBase;

  LandedCost(
      PurchaseOrder order, List<LandedLine> lines, ExactMoney customsValue, ExactMoney taxBase) {
    this.order = order;
    this.lines = List.copyOf(lines);
    this.customsValue = customsValue;
    this.taxBase = taxBase;
  }

  /** {@return the lines, in the order's own order} */
  public List<LandedLine> lines() {
    return lines;
  }

  /**
   * Returns one part of the whole order.
   *
   * @param part the part
   * @return the sum of its amounts over the lines
   */
  public Money total(CostPart part) {
    return Money.total(lines.stream().map(l -> l.part(part)).toList());
  }

  /**
   * Returns what is paid for the order.
   *
   * @return all parts, tax included
   */
  public Money paid() {
    return Money.total(lines.stream().map(LandedLine::paid).toList());
  }

  /**
   * Returns what the order costs in the end.
   *
   * @return what is paid less the tax that comes back
   */
  public Money borne() {
    return Money.total(lines.stream().map(LandedLine::borne).toList());
  }

  /**
   * Returns what duty was taken of.
   *
   * @return the customs value; zero for an order within the country
   */
  public ExactMoney customsValue() {
    return customsValue;
  }

  /**
   * Returns what import tax was taken of.
   *
   * @return the base, with uplift if the regime has one; the goods without tax for an order within
   *     the country
   */
  public ExactMoney taxBase() {
    return taxBase;
  }

  /**
   * Explains the sum.
   *
   * @return lines, parts and, for an import, both bases and the regime's source
   */
  public Explanation explanation() {
    Explanation.Builder text =
        CostWorking.builder("working.landed", Map.of("day", Bilingual.of("" + order.date())));
    List<Bilingual> names =
        Explanation.lines(order.lines().stream().map(l -> Bilingual.of(l.label())).toList());
    for (int i = 0; i < lines.size(); i++) {
      Money goods = lines.get(i).goods();
      text.given(ExactMoney.of(goods).figure(CostWorking.GOODS.of(names.get(i))));
    }
    text.step(CostWorking.GOODS_SUM, figure(CostPart.GOODS, CostWorking.GOODS))
        .given(figure(CostPart.FREIGHT, CostWorking.FREIGHT))
        .given(figure(CostPart.INSURANCE, CostWorking.INSURANCE))
        .given(figure(CostPart.HANDLING, CostWorking.HANDLING));
    taxes(text);
    Money recovered = paid().minus(borne());
    return text.step(CostWorking.PAY, ExactMoney.of(paid()).figure(CostWorking.PAID))
        .given(ExactMoney.of(recovered).figure(CostWorking.RECOVERED))
        .step(CostWorking.BEAR, ExactMoney.of(borne()).figure(CostWorking.BORNE))
        .build();
  }

  private Figure figure(CostPart part, Symbol symbol) {
    return ExactMoney.of(total(part)).figure(symbol);
  }

  /** At a border the tax is worked out; inland it is what gross and net prices leave. */
  private void taxes(Explanation.Builder text) {
    text.given(figure(CostPart.DUTY, CostWorking.DUTY));
    if (order.regime().isEmpty()) {
      text.given(figure(CostPart.TAX, CostWorking.TAX));
      return;
    }
    ImportRegime regime = order.regime().get();
    Money imported = regime.taxRate().of(taxBase).toMoney();
    ExactMoney onFees = ExactMoney.of(total(CostPart.TAX)).minus(imported);
    text.given(customsValue.figure(CostWorking.CUSTOMS_VALUE))
        .given(taxBase.figure(CostWorking.TAX_BASE))
        .stated(CostWorking.TAX_RATE, regime.taxRate().percent().doubleValue() / 100)
        .given(CostWorking.coin(paid().getCurrencyUnit()))
        .step(CostWorking.IMPORT, ExactMoney.of(imported).figure(CostWorking.IMPORT_TAX))
        .given(onFees.figure(CostWorking.FEE_TAX))
        .step(CostWorking.TAXES, figure(CostPart.TAX, CostWorking.TAX))
        .source(regime.source());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LandedCost that && order.equals(that.order);
  }

  @Override
  public int hashCode() {
    return order.hashCode();
  }

  @Override
  public String toString() {
    return "landed cost of " + order;
  }
}
