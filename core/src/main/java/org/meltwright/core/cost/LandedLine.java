// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;
import org.meltwright.units.QuantityKind;

/**
 * What one line of an order costs at the door, part by part, to the cent.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Vat returned = Vat.added(Rate.ofPercent("19")).recoverable();
 * Price price = Price.parse("100.00 EUR/5 kg").withVat(returned);
 * List<OrderLine> lines = List.of(OrderLine.of("wax", "", price, 1));
 * LocalDate day = LocalDate.of(2026, 9, 1);
 * LandedLine wax = PurchaseOrder.of(lines, CurrencyUnit.EUR, day).landed().lines().get(0);
 * wax.paid(); // EUR 119.00
 * // the tax comes back
 * wax.borne(); // EUR 100.00
 * wax.landed().perKilogram(); // 20 EUR
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param line the line of the order
 * @param goods the goods without tax
 * @param freight its share of carriage without tax
 * @param insurance its share of insurance
 * @param duty its share of duty
 * @param handling its share of the handling fee without tax
 * @param tax its share of all taxes
 * @param recovered what the buyer gets back of the tax
 */
public record LandedLine(
    OrderLine line,
    Money goods,
    Money freight,
    Money insurance,
    Money duty,
    Money handling,
    Money tax,
    Money recovered) {

  /**
   * Returns what is paid for the line.
   *
   * @return all parts, tax included
   */
  public Money paid() {
    return Money.total(List.of(goods, freight, insurance, duty, handling, tax));
  }

  /**
   * Returns what the line costs in the end.
   *
   * @return what is paid less the tax that comes back
   */
  public Money borne() {
    return paid().minus(recovered);
  }

  /**
   * Returns the landed cost per mass.
   *
   * @return what the line costs in the end, for its mass
   */
  public UnitPrice landed() {
    return UnitPrice.of(borne(), QuantityKind.MASS.ofSi(line.massKilograms()));
  }

  /**
   * Returns one part.
   *
   * @param part the part
   * @return its amount; nothing for {@link CostPart#UPLIFT}, which is never paid
   */
  public Money part(CostPart part) {
    return switch (part) {
      case GOODS -> goods;
      case FREIGHT -> freight;
      case INSURANCE -> insurance;
      case DUTY -> duty;
      case HANDLING -> handling;
      case TAX -> tax;
      case UPLIFT -> Money.zero(goods.getCurrencyUnit());
    };
  }

  static List<CostPart> paidParts() {
    return Arrays.stream(CostPart.values()).filter(p -> p != CostPart.UPLIFT).toList();
  }
}
