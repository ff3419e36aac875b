// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import org.joda.money.Money;

/**
 * What to buy from one supplier.
 *
 * <p>Immutable and thread-safe.
 *
 * @param supplier who it is
 * @param lines the packages, at least one line
 * @param freight what the buyer bears for carriage
 * @param handling what the buyer bears for the order in any case
 * @param flatDuty what the buyer bears for flat duties, one for each kind of goods in the order
 */
public record SupplierOrder(
    String supplier, List<PurchaseLine> lines, Money freight, Money handling, Money flatDuty) {

  /**
   * Copies the lines.
   *
   * @param supplier who it is
   * @param lines the packages
   * @param freight what the buyer bears for carriage
   * @param handling what the buyer bears for the order in any case
   * @param flatDuty what the buyer bears for flat duties
   */
  public SupplierOrder {
    lines = List.copyOf(lines);
  }

  /**
   * Returns what the order costs the buyer.
   *
   * @return packages, carriage, handling and flat duties
   */
  public Money total() {
    Money goods = Money.total(lines.stream().map(PurchaseLine::amount).toList());
    return goods.plus(freight).plus(handling).plus(flatDuty);
  }
}
