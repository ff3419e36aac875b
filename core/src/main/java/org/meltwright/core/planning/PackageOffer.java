// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.Validity;

/**
 * One size of package of one material from one supplier.
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
