// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * A line of a cost sheet: the exact cost, and the cents that stand on paper.
 *
 * <p>The amounts of the parts add up to the amount of the line.
 *
 * <p>For example:
 *
 * <pre>{@code
 * UnitPrice each = UnitPrice.parse("0.333 EUR/kg");
 * List<CostItem> colours = new ArrayList<>();
 * for (String name : List.of("red", "blue", "black")) {
 *   colours.add(CostItem.material(name, kilograms(1), each));
 * }
 * // 0.999 EUR is 1.00: one of the three lines takes the cent
 * CostLine red = CostRollUp.of("colours", colours).root().parts().get(0);
 * red.exact(); // 0.333 EUR
 * red.amount(); // EUR 0.34
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kind what it is spent on
 * @param label what it is
 * @param massKilograms how much material it holds, in kg; zero for what has none
 * @param exact the cost before rounding
 * @param amount the cost to the smallest coin, at most one coin from the exact cost
 * @param parts the lines below it; empty for a leaf
 */
public record CostLine(
    CostKind kind,
    String label,
    double massKilograms,
    ExactMoney exact,
    Money amount,
    List<CostLine> parts) {

  public CostLine {
    parts = List.copyOf(parts);
  }

  /** The line of an item that has been given its share of the cents of the line above. */
  static CostLine of(CostItem item, Money amount) {
    List<CostItem> items = item.parts();
    List<Money> shares =
        items.isEmpty()
            ? List.of()
            : LargestRemainder.round(items.stream().map(CostItem::cost).toList(), amount);
    List<CostLine> parts =
        IntStream.range(0, shares.size()).mapToObj(i -> of(items.get(i), shares.get(i))).toList();
    return new CostLine(
        item.kind(), item.label(), item.massKilograms(), item.cost(), amount, parts);
  }

  /**
   * Tells whether nothing stands below this line.
   *
   * @return whether it has no parts
   */
  public boolean isLeaf() {
    return parts.isEmpty();
  }
}
