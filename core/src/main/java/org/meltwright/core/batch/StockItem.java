// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.QuantityKind;

/**
 * One thing in stock: a bag, a tube, last month's cakes; what it is and how much of it is left.
 *
 * <p>An item that is used up may stay with nothing in it. For example, a bag of a lot, and half a
 * tube that is known by its volume:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Material wax = shelf.require("beeswax-yellow").withLot("bag 7");
 * StockItem bag = StockItem.of("bag 7", Ingredient.of(wax), grams(430));
 * Ingredient blue = Ingredient.of(shelf.require("oil-paint-ultramarine"));
 * StockItem tube = StockItem.of("blue tube", blue, millilitres(20), DensityBasis.SOLID);
 * bag; // bag 7: 0.43 kg of beeswax-yellow (lot bag 7)
 * tube.massKilograms() > 0.02; // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param label what its owner calls it, not blank; several may have one name
 * @param ingredient the material, of its lot where that is known, or what a recipe makes
 * @param massKilograms how much is left, in kg, from 0 to 1e9
 */
public record StockItem(String label, Ingredient ingredient, double massKilograms) {

  private static final double MOST = 1e9;
  private static final int MOST_PIECES = 1_000_000;

  /** Draws a problem if the label is blank or the mass lies outside. */
  public StockItem {
    CHECK.named(label, "name");
    CHECK.between(massKilograms, 0, MOST, "mass in kg", label);
  }

  /**
   * Returns what is left by its mass.
   *
   * @param label what its owner calls it, not blank
   * @param ingredient what it is
   * @param mass how much is left, from 0 to 1e9 kg
   * @return the item
   * @throws org.meltwright.units.ProblemException if the label is blank or the mass lies outside
   */
  public static StockItem of(String label, Ingredient ingredient, Quantity<Mass> mass) {
    return new StockItem(label, ingredient, CHECK.between(mass, 0, MOST, "mass", label));
  }

  /**
   * Returns what is left by its volume, with every density at the middle of its range; how sure
   * that is says {@link DensityBasis#mass}.
   *
   * @param label what its owner calls it, not blank
   * @param ingredient what it is
   * @param volume how much is left
   * @param basis the state that it is measured in, and where the densities come from
   * @return the item
   * @throws org.meltwright.units.ProblemException if the label is blank, the volume is negative or
   *     not finite, or a density is missing; the problem names material and property
   */
  public static StockItem of(
      String label, Ingredient ingredient, Quantity<Volume> volume, DensityBasis basis) {
    Mixture left = Mixture.ofVolume(ingredient.composition(), volume, basis);
    return new StockItem(label, ingredient, left.massKilograms());
  }

  /**
   * Returns what is left by the piece, such as 14 cakes of 22 g.
   *
   * @param label what its owner calls it, not blank
   * @param ingredient what it is
   * @param pieces how many, from 0 to a million
   * @param each the mass of one
   * @return the item
   * @throws org.meltwright.units.ProblemException if the label is blank, or number or mass lie
   *     outside
   */
  public static StockItem ofPieces(
      String label, Ingredient ingredient, int pieces, Quantity<Mass> each) {
    CHECK.between(pieces, 0, MOST_PIECES, "number of pieces", label);
    double one = CHECK.between(each, 0, MOST, "mass of a piece", label);
    return new StockItem(label, ingredient, pieces * one);
  }

  /**
   * Returns how much is left.
   *
   * @return the mass, in kilograms
   */
  public Quantity<Mass> mass() {
    return QuantityKind.MASS.ofSi(massKilograms);
  }

  /** The same with less in it; nothing stays that only rounding left. */
  StockItem without(double kilograms) {
    return new StockItem(label, ingredient, Math.max(0, massKilograms - kilograms));
  }

  @Override
  public String toString() {
    return label + ": " + massKilograms + " kg of " + ingredient.name();
  }
}
