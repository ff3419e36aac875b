// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.EnglishExplanation;

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
  public EnglishExplanation explanation() {
    EnglishExplanation.Builder builder =
        EnglishExplanation.builder("Landed cost of an order of " + order.date());
    order.lines().forEach(l -> builder.given(l.count() + " × " + l.label() + " at " + l.price()));
    LandedLine.paidParts().forEach(p -> builder.step(p + " " + total(p)));
    order
        .regime()
        .ifPresent(
            r ->
                builder
                    .formula("duty of " + r.dutyBase() + ", tax of " + r.taxBase())
                    .step("customs value " + customsValue)
                    .step(r.taxRate() + " of " + taxBase)
                    .source(r.source()));
    return builder.step("paid " + paid() + ", borne " + borne()).build();
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
