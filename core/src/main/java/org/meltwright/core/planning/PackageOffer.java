// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.Validity;

/**
 * One size of package of one material from one supplier.
 *
 * <p>For example:
 *
 * <pre>{@code
 * LocalDate end = LocalDate.of(2026, 8, 31);
 * PackageOffer summer =
 *     new PackageOffer("north", "wax", Price.parse("11 EUR/1 kg"), Validity.until(end));
 * PackageOffer always = PackageOffer.of("north", "wax", Price.parse("14 EUR/1 kg"));
 * List<SupplierTerms> terms = List.of(SupplierTerms.free("north", CurrencyUnit.EUR));
 * List<Need> needs = List.of(Need.of("wax", kilograms(2)));
 * // on the day after, the offer of the summer is gone
 * PurchaseQuestion.of(needs, List.of(summer, always), terms, end.plusDays(1))
 *     .cheapest().total(); // EUR 28.00
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param supplier who sells it
 * @param material what is in it
 * @param price mass and price of a package
 * @param validity the days on which the price holds
 */
public record PackageOffer(String supplier, String material, Price price, Validity validity) {

  /**
   * Returns an offer that holds on any day.
   *
   * @param supplier who sells it
   * @param material what is in it
   * @param price mass and price of a package
   * @return the offer
   */
  public static PackageOffer of(String supplier, String material, Price price) {
    return new PackageOffer(supplier, material, price, Validity.ALWAYS);
  }
}
