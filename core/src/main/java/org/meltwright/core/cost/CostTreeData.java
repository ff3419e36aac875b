// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of a cost tree as plain data, with the lines below it: any JSON library writes it. The
 * amounts of the parts add up to the amount of the line, so the leaves add up to the total.
 *
 * <pre>{@code
 * CostItem wax = CostItem.material("wax", kilograms(0.73), UnitPrice.parse("12.50 EUR/kg"));
 * CostItem resin = CostItem.material("resin", kilograms(0.09125), UnitPrice.parse("31.90 EUR/kg"));
 *
 * CostTreeData tree = CostTreeData.of(CostRollUp.of("batch", List.of(wax, resin)));
 * tree.amount().amount(); // 12.04
 * tree.parts().get(0).amount().amount(); // 9.13
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kind the id of what it is spent on: {@code material}, {@code energy}, {@code labour},
 *     {@code equipment}, {@code other} or, for a line with parts, {@code group}
 * @param label what it is
 * @param massKilograms how much material it holds, in kg, not rounded; absent for what has none
 * @param amount the cost to the smallest coin; below zero for a credit
 * @param parts the lines below it; empty for a leaf
 */
public record CostTreeData(
    String kind,
    String label,
    @Nullable Double massKilograms,
    MoneyData amount,
    List<CostTreeData> parts) {

  public CostTreeData {
    parts = List.copyOf(parts);
  }

  /**
   * Returns a roll-up as data.
   *
   * @param cost the roll-up
   * @return its root, whose amount is the total
   */
  public static CostTreeData of(CostRollUp cost) {
    return of(cost.root());
  }

  private static CostTreeData of(CostLine line) {
    return new CostTreeData(
        line.kind().id(),
        line.label(),
        line.massKilograms() > 0 ? line.massKilograms() : null,
        MoneyData.of(line.amount()),
        line.parts().stream().map(CostTreeData::of).toList());
  }
}
