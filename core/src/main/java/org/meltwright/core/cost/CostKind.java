// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

/**
 * What money is spent on.
 *
 * <p>For example:
 *
 * <pre>{@code
 * CostItem wax = CostItem.material("wax", kilograms(1), UnitPrice.parse("12.50 EUR/kg"));
 * CostItem hour = CostItem.labour("stirring", minutes(30), Money.parse("EUR 20"));
 * CostRollUp batch = CostRollUp.of("medium", List.of(wax, hour));
 * batch.total(CostKind.MATERIAL); // EUR 12.50
 * batch.total(CostKind.LABOUR); // EUR 10.00
 * }</pre>
 */
public enum CostKind {
  /** What goes into the product. */
  MATERIAL("material"),
  /** Heat and light. */
  ENERGY("energy"),
  /** Active working time. */
  LABOUR("labour"),
  /** The share of things that last. */
  EQUIPMENT("equipment"),
  /** Anything else: packaging, room, freight. */
  OTHER("other"),
  /** Lines added up under one name, such as a recipe within a recipe. */
  GROUP("group");

  private final String id;

  CostKind(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, for example {@code material}
   */
  public String id() {
    return id;
  }
}
