// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.joda.money.Money;

/**
 * Packages to buy.
 *
 * <p>For example:
 *
 * <pre>{@code
 * PackageOffer bag = PackageOffer.of("north", "wax", Price.parse("18 EUR/1 kg"));
 * List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
 * List<Need> needs = List.of(Need.of("wax", kilograms(2.5)));
 * PurchaseLine line =
 *     PurchaseQuestion.of(needs, List.of(bag), terms, LocalDate.of(2026, 9, 1))
 *         .cheapest().lines().get(0);
 * line.count(); // 3
 * line.massKilograms(); // 3.000 kg
 * line.amount(); // EUR 54.00
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param offer the package
 * @param count how many, at least one
 * @param amount what the buyer bears for them, without carriage
 */
public record PurchaseLine(PackageOffer offer, int count, Money amount) {

  /**
   * Returns how much it is.
   *
   * @return the mass of all packages, in kg
   */
  public double massKilograms() {
    return count * offer.price().packageKilograms();
  }
}
