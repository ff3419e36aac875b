// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.meltwright.core.planning.blend.Bounded.CHECK;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.ProblemException;

/**
 * What may go into a blend: a material, a medium or old cakes, what it costs and how much there is.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Material resin = shelf.require("damar");
 * Material wax = shelf.require("beeswax-yellow");
 * Mixture cakes = Mixture.of(Composition.ofParts(List.of(resin, wax), 1, 6), grams(300));
 * BlendPart old = BlendPart.of("old cakes", cakes);
 * BlendPart fresh = BlendPart.of(wax).at(UnitPrice.parse("12.50 EUR/kg"));
 * old.stockKilograms(); // 0.3 kg
 * fresh.name(); // beeswax-yellow
 * fresh.price(); // 12.50 EUR/kg
 * }</pre>
 *
 * <p>Without a price a part cannot be in a question about cost: what nobody stated is not free.
 * Without a stock there is as much as is wanted. Immutable and thread-safe.
 */
public final class BlendPart {

  private final String name;
  private final Composition composition;
  private final @Nullable UnitPrice price;
  private final @Nullable Double stockKilograms;

  /**
   * Returns a material, under its id and lot.
   *
   * @param material the material
   * @return the part, without price and stock
   */
  public static BlendPart of(Material material) {
    return of(material.toString(), Composition.of(material));
  }

  /**
   * Returns a mix, as a part that is taken as it is.
   *
   * @param name what it is called
   * @param composition what it is made of
   * @return the part, without price and stock
   * @throws ProblemException if the name is blank
   */
  public static BlendPart of(String name, Composition composition) {
    return new BlendPart(CHECK.named(name, "part of a blend"), composition, null, null);
  }

  /**
   * Returns what is left of a mix.
   *
   * @param name what it is called
   * @param left what is there
   * @return the part, of which there is that much, without price
   * @throws ProblemException if the name is blank
   */
  public static BlendPart of(String name, Mixture left) {
    return of(name, left.composition()).withStock(left.mass());
  }

  private BlendPart(
      String name,
      Composition composition,
      @Nullable UnitPrice price,
      @Nullable Double stockKilograms) {
    this.name = name;
    this.composition = composition;
    this.price = price;
    this.stockKilograms = stockKilograms;
  }

  /**
   * Returns a copy with a price.
   *
   * @param newPrice what it costs; nothing at all only if that is said
   * @return the new part
   */
  public BlendPart at(UnitPrice newPrice) {
    return new BlendPart(name, composition, newPrice, stockKilograms);
  }

  /**
   * Returns a copy of which there is so much.
   *
   * @param stock how much there is
   * @return the new part
   * @throws ProblemException if it is below zero or not finite
   */
  public BlendPart withStock(Quantity<Mass> stock) {
    double kilograms = CHECK.between(stock, 0, 1e9, "stock", name);
    return new BlendPart(name, composition, price, kilograms);
  }

  /** {@return what the part is called; wishes and answers name it by this} */
  public String name() {
    return name;
  }

  /**
   * Returns what it is made of.
   *
   * @return the composition
   */
  public Composition composition() {
    return composition;
  }

  /**
   * Returns the price.
   *
   * @return what it costs; empty if nobody stated it
   */
  public Optional<UnitPrice> price() {
    return Optional.ofNullable(price);
  }

  /**
   * Returns how much there is.
   *
   * @return the stock in kg; empty if there is as much as is wanted
   */
  public OptionalDouble stockKilograms() {
    return stockKilograms == null ? OptionalDouble.empty() : OptionalDouble.of(stockKilograms);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BlendPart that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(name, composition, price, stockKilograms);
  }

  @Override
  public String toString() {
    return name
        + (price == null ? "" : " at " + price)
        + (stockKilograms == null ? "" : ", " + stockKilograms + " kg there");
  }
}
