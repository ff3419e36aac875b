// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;

/** A material on the shelf: how it was bought, what is left, and the balance it is weighed on. */
final class ShelfItem {

  private final String id;
  private final Material material;
  private final String form;
  private final double stockKilograms;
  private final Balance balance;
  private final @Nullable MassFraction insolubles;
  private final List<Price> packages;

  ShelfItem(
      String id,
      Material material,
      String form,
      double stockKilograms,
      Balance balance,
      @Nullable MassFraction insolubles,
      List<Price> packages) {
    this.id = id;
    this.material = material;
    this.form = form;
    this.stockKilograms = stockKilograms;
    this.balance = balance;
    this.insolubles = insolubles;
    this.packages = List.copyOf(packages);
  }

  String id() {
    return id;
  }

  Material material() {
    return material;
  }

  String form() {
    return form;
  }

  double stockKilograms() {
    return stockKilograms;
  }

  Balance balance() {
    return balance;
  }

  Optional<MassFraction> insolubles() {
    return Optional.ofNullable(insolubles);
  }

  List<Price> packages() {
    return packages;
  }

  /** The price of the package that the shelf holds, the first one named; empty if none is. */
  Optional<UnitPrice> price() {
    return packages.stream().findFirst().map(Price::unitPrice);
  }

  /** What the items of a shelf leave behind, each what is stated of it. */
  static Losses insolubles(List<ShelfItem> shelf) {
    Losses losses = Losses.NONE;
    for (ShelfItem item : shelf) {
      if (item.insolubles != null) {
        losses = losses.withInsolubles(item.material, item.insolubles);
      }
    }
    return losses;
  }
}
