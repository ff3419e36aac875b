// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.joda.money.Money;

/**
 * Packages to buy.
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
