// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.explain.Explanation;
import org.meltwright.units.Bilingual;

/**
 * The packages to buy, what they cost landed, what remains, and how sure it is that no other choice
 * is better.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PackageOffer jar = PackageOffer.of("north", "wax", Price.parse("10 EUR/500 g"));
 * PackageOffer bag = PackageOffer.of("north", "wax", Price.parse("16 EUR/1 kg"));
 * List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
 * List<Need> needs = List.of(Need.of("wax", kilograms(1.4)));
 * PurchasePlan plan =
 *     PurchaseQuestion.of(needs, List.of(jar, bag), terms, LocalDate.of(2026, 9, 1)).cheapest();
 * plan.count(jar); // 1
 * plan.count(bag); // 1
 * plan.total(); // EUR 26.00
 * plan.leftOverKilograms(); // 0.100 kg
 * plan.isProvedOptimal(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe. {@link PurchaseQuestion} makes it.
 */
public final class PurchasePlan {

  private final List<SupplierOrder> orders;
  private final List<LeftOver> leftOver;
  private final Money total;
  private final Money lowerBound;
  private final boolean isProvedOptimal;

  PurchasePlan(
      List<SupplierOrder> orders,
      List<LeftOver> leftOver,
      Money total,
      Money lowerBound,
      boolean isProvedOptimal) {
    this.orders = List.copyOf(orders);
    this.leftOver = List.copyOf(leftOver);
    this.total = total;
    this.lowerBound = lowerBound;
    this.isProvedOptimal = isProvedOptimal;
  }

  /**
   * Returns the orders.
   *
   * @return one for each supplier that is used; empty if the stock suffices
   */
  public List<SupplierOrder> orders() {
    return orders;
  }

  /**
   * Returns all packages.
   *
   * @return the lines of all orders
   */
  public List<PurchaseLine> lines() {
    return orders.stream().flatMap(o -> o.lines().stream()).toList();
  }

  /**
   * Returns how many packages of one kind to buy.
   *
   * @param offer the package
   * @return the number; zero if none
   */
  public int count(PackageOffer offer) {
    return lines().stream()
        .filter(l -> l.offer().equals(offer))
        .mapToInt(PurchaseLine::count)
        .sum();
  }

  /**
   * Returns what remains of each material that is bought.
   *
   * @return one entry for each, in the order of the needs
   */
  public List<LeftOver> leftOver() {
    return leftOver;
  }

  /**
   * Returns how much remains in all.
   *
   * @return the sum of what remains, in kg
   */
  public double leftOverKilograms() {
    return leftOver.stream().mapToDouble(LeftOver::massKilograms).sum();
  }

  /**
   * Returns what the plan costs.
   *
   * @return the sum of its orders
   */
  public Money total() {
    return total;
  }

  /**
   * Tells whether it is proved that no plan is better.
   *
   * @return whether the search came to its end within the time limit, or its bound met the plan
   */
  public boolean isProvedOptimal() {
    return isProvedOptimal;
  }

  /**
   * Returns what no plan can cost less than.
   *
   * @return the bound, rounded down to the smallest coin; the total if the plan is proved
   */
  public Money lowerBound() {
    return lowerBound;
  }

  /**
   * Returns by how much the plan may be too dear.
   *
   * @return (total − bound) ÷ total, zero if the plan is proved
   */
  public double gap() {
    Money gap = total.minus(lowerBound);
    return gap.isZero() ? 0 : gap.getAmount().doubleValue() / total.getAmount().doubleValue();
  }

  /**
   * Explains the plan.
   *
   * @return the packages, carriage, what remains, and a warning if the plan is not proved
   */
  public Explanation explanation() {
    Explanation.Builder text = PlanningWorking.builder("working.purchase");
    List<Bilingual> names =
        Explanation.lines(
            lines().stream()
                .map(l -> Bilingual.of(l.count() + " × " + l.offer().material()))
                .toList());
    for (int i = 0; i < names.size(); i++) {
      Money amount = lines().get(i).amount();
      text.given(ExactMoney.of(amount).figure(PlanningWorking.GOODS.of(names.get(i))));
    }
    orders.forEach(order -> PlanningWorking.charges(order, text));
    leftOver.forEach(left -> PlanningWorking.leftOver(left, text));
    if (!isProvedOptimal) {
      text.caution("working.purchase.not-proved");
    }
    return text.method(PlanningWorking.search(isProvedOptimal, ExactMoney.of(lowerBound)))
        .step(PlanningWorking.PURCHASE, ExactMoney.of(total).figure(PlanningWorking.PAID))
        .build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PurchasePlan that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(orders, leftOver, total, lowerBound, isProvedOptimal);
  }

  @Override
  public String toString() {
    return "purchase of " + total + " in " + orders.size() + " orders";
  }
}
