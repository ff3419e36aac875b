// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import org.meltwright.units.ProblemException;

/**
 * Packages of one material in an order.
 *
 * <p>For example:
 *
 * <pre>{@code
 * LocalDate end = LocalDate.of(2026, 9, 30);
 * OrderLine wax =
 *     new OrderLine("wax", "wax", Price.parse("14.00 EUR/1 kg"), 3, Validity.until(end));
 * wax.massKilograms(); // 3.00 kg
 * // an order on the day after is refused, since the price holds no more
 * LocalDate late = end.plusDays(1);
 * PurchaseOrder.of(List.of(wax), CurrencyUnit.EUR, late).landed(); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param label what it is
 * @param kindOfGoods the kind of goods for duty; any text where none is taken
 * @param price the price of one package
 * @param count how many packages, at least one
 * @param validity the days on which the price holds
 */
public record OrderLine(
    String label, String kindOfGoods, Price price, int count, Validity validity) {

  /** Draws a problem if the count is below one. */
  public OrderLine {
    CHECK.between(count, 1, 1e9, "number of packages", label);
  }

  /**
   * Returns packages at a price that holds on any day.
   *
   * @param label what it is
   * @param kindOfGoods the kind of goods for duty; any text where none is taken
   * @param price the price of one package
   * @param count how many packages
   * @return the line
   * @throws ProblemException if the count is below one
   */
  public static OrderLine of(String label, String kindOfGoods, Price price, int count) {
    return new OrderLine(label, kindOfGoods, price, count, Validity.ALWAYS);
  }

  /**
   * Returns how much it is.
   *
   * @return the mass of all packages, in kg
   */
  public double massKilograms() {
    return price.packageKilograms() * count;
  }

  Ratio mass() {
    return Ratio.of(price.packageKilograms()).times(Ratio.of(count));
  }
}
