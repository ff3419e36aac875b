// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import org.meltwright.core.cost.MoneyData;

/**
 * What to buy as plain data: any JSON library writes it.
 *
 * <pre>{@code
 * PackageOffer bag = PackageOffer.of("north", "wax", Price.parse("14.90 EUR/1 kg"));
 * SupplierTerms north = SupplierTerms.of("north", FreightTariff.perOrder(Money.parse("EUR 6.90")));
 * PurchasePlan plan =
 *     PurchaseQuestion.of(
 *             List.of(Need.of("wax", kilograms(1.5))),
 *             List.of(bag),
 *             List.of(north),
 *             LocalDate.of(2026, 9, 1))
 *         .cheapest();
 *
 * PurchasePlanData data = PurchasePlanData.of(plan);
 * data.total().amount(); // 36.70
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param orders one for each supplier that is used; empty if the stock suffices
 * @param leftOver what remains of each material that is bought
 * @param total what the plan costs: the sum of its orders
 * @param lowerBound what no plan can cost less than; the total if the plan is proved
 * @param provedOptimal whether it is proved that no plan is better
 */
public record PurchasePlanData(
    List<Order> orders,
    List<Remainder> leftOver,
    MoneyData total,
    MoneyData lowerBound,
    boolean provedOptimal) {

  /**
   * What to buy from one supplier; lines, freight, handling and flat duty add up to the total.
   *
   * @param supplier who it is
   * @param lines the packages, at least one line
   * @param freight what the buyer bears for carriage
   * @param handling what the buyer bears for the order in any case
   * @param flatDuty what the buyer bears for flat duties, one for each kind of goods in the order
   * @param total what the order costs the buyer
   */
  public record Order(
      String supplier,
      List<Line> lines,
      MoneyData freight,
      MoneyData handling,
      MoneyData flatDuty,
      MoneyData total) {

    public Order {
      lines = List.copyOf(lines);
    }

    private static Order of(SupplierOrder order) {
      return new Order(
          order.supplier(),
          order.lines().stream().map(Line::of).toList(),
          MoneyData.of(order.freight()),
          MoneyData.of(order.handling()),
          MoneyData.of(order.flatDuty()),
          MoneyData.of(order.total()));
    }
  }

  /**
   * Packages of one size.
   *
   * @param material what is in them
   * @param count how many, at least one
   * @param packageKilograms the net mass of one, in kg
   * @param amount what the buyer bears for all of them, without carriage
   */
  public record Line(String material, int count, double packageKilograms, MoneyData amount) {

    private static Line of(PurchaseLine line) {
      return new Line(
          line.offer().material(),
          line.count(),
          line.offer().price().packageKilograms(),
          MoneyData.of(line.amount()));
    }
  }

  /**
   * What remains of a material that is bought.
   *
   * @param material what it is
   * @param boughtKilograms the mass of all its packages, in kg
   * @param massKilograms what remains when the need is met, in kg, not rounded
   * @param worth its part of what the packages of this material cost, without carriage
   */
  public record Remainder(
      String material, double boughtKilograms, double massKilograms, MoneyData worth) {

    private static Remainder of(LeftOver left) {
      return new Remainder(
          left.material(),
          left.boughtKilograms(),
          left.massKilograms(),
          MoneyData.of(left.worth()));
    }
  }

  public PurchasePlanData {
    orders = List.copyOf(orders);
    leftOver = List.copyOf(leftOver);
  }

  /**
   * Returns a plan as data.
   *
   * @param plan the plan
   * @return its orders, what remains, and what it costs
   */
  public static PurchasePlanData of(PurchasePlan plan) {
    return new PurchasePlanData(
        plan.orders().stream().map(Order::of).toList(),
        plan.leftOver().stream().map(Remainder::of).toList(),
        MoneyData.of(plan.total()),
        MoneyData.of(plan.lowerBound()),
        plan.isProvedOptimal());
  }
}
