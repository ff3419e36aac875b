// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;

/**
 * A material on the shelf: how it was bought, what is left, and the balance it is weighed on.
 *
 * @param id what the file calls it
 * @param material the material
 * @param form how it was bought
 * @param stockKilograms what is left of it, in kg
 * @param balance the balance it is weighed on
 * @param leftBehind the share that stays behind when it is dissolved; empty if none is stated
 * @param packages the packages it is bought in; the first is the one on the shelf
 * @param byVolume what the file states of it by volume
 */
public record ShelfItem(
    String id,
    Material material,
    String form,
    double stockKilograms,
    Balance balance,
    Optional<MassFraction> leftBehind,
    List<Price> packages,
    List<ByVolume> byVolume) {

  /** Copies the lists. */
  public ShelfItem {
    packages = List.copyOf(packages);
    byVolume = List.copyOf(byVolume);
  }

  /**
   * Returns the price of the package that the shelf holds, the first one named.
   *
   * @return the price; empty if no package is named
   */
  public Optional<UnitPrice> price() {
    return packages.stream().findFirst().map(Price::unitPrice);
  }

  /**
   * Returns the prices of all packages that are named.
   *
   * @return the prices, in the order of the file
   */
  public List<UnitPrice> unitPrices() {
    return packages.stream().map(Price::unitPrice).toList();
  }

  /**
   * Returns what the items of a shelf leave behind, each what is stated of it.
   *
   * @param shelf the items
   * @return the losses
   */
  public static Losses leftBehind(List<ShelfItem> shelf) {
    Losses losses = Losses.NONE;
    for (ShelfItem item : shelf) {
      if (item.leftBehind.isPresent()) {
        losses = losses.withInsolubles(item.material, item.leftBehind.get());
      }
    }
    return losses;
  }
}
