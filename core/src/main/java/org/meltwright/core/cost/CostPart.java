// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

/**
 * A part of what an order costs, of which bases for duty and tax are made.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // a country that takes duty of the goods alone, and tax of goods and duty
 * ImportRegime regime =
 *     ImportRegime.of("goods alone", Set.of(CostPart.GOODS),
 *         Set.of(CostPart.GOODS, CostPart.DUTY), Rate.ofPercent("20"), Source.USER);
 * List<OrderLine> lines = List.of(OrderLine.of("wax", "wax", Price.parse("100 EUR/5 kg"), 1));
 * LandedCost cost =
 *     PurchaseOrder.of(lines, CurrencyUnit.EUR, LocalDate.of(2026, 9, 1))
 *         .withFreight(FreightTariff.perOrder(Money.parse("EUR 10")), Vat.NONE)
 *         .withImport(regime, List.of(Duty.percent("wax", Rate.ofPercent("5"))))
 *         .landed();
 * cost.total(CostPart.TAX); // EUR 21.00
 * }</pre>
 */
public enum CostPart {
  /** The goods at their prices, without tax. */
  GOODS,
  /** Carriage. */
  FREIGHT,
  /** Insurance of the carriage. */
  INSURANCE,
  /** An addition to the customs value that some regimes prescribe for the tax base; never paid. */
  UPLIFT,
  /** Duty. */
  DUTY,
  /** What the carrier or agent asks for clearing the goods. */
  HANDLING,
  /** Tax on the purchase or the import. */
  TAX
}
