// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.List;
import org.joda.money.Money;
import org.meltwright.core.cost.ExactMoney;

/**
 * What to buy from one supplier.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PackageOffer bag = PackageOffer.of("north", "wax", Price.parse("14 EUR/1 kg"));
 * FreightTariff parcel = FreightTariff.perOrder(Money.parse("EUR 6.90"));
 * List<SupplierTerms> terms = List.of(SupplierTerms.of("north", parcel));
 * List<Need> needs = List.of(Need.of("wax", kilograms(2)));
 * SupplierOrder order =
 *     PurchaseQuestion.of(needs, List.of(bag), terms, LocalDate.of(2026, 9, 1))
 *         .cheapest().orders().get(0);
 * order.supplier(); // north
 * order.freight(); // EUR 6.90
 * order.total(); // EUR 34.90
 * }</pre>
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

  public SupplierOrder {
    lines = List.copyOf(lines);
    ExactMoney sum = ExactMoney.of(freight).plus(ExactMoney.of(handling));
    sum = sum.plus(ExactMoney.of(flatDuty));
    for (PurchaseLine line : lines) {
      sum = sum.plus(ExactMoney.of(line.amount()));
    }
  }

  /**
   * Returns what the order costs the buyer.
   *
   * @return packages, carriage, handling and flat duties
   */
  public Money total() {
    return freight
        .plus(handling)
        .plus(flatDuty)
        .plus(lines.stream().map(PurchaseLine::amount).toList());
  }
}
