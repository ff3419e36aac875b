// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.units.QuantityKind;

/**
 * One line of a batch: an ingredient and how much of it goes in, exactly.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * BatchLine first = Batch.ofTotal(medium, grams(720), Losses.NONE).lines().get(0);
 * first.ingredient().name(); // damar
 * first.massKilograms(); // 0.08 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient what goes in
 * @param massKilograms how much of it, in kg, not rounded
 */
public record BatchLine(Ingredient ingredient, double massKilograms) {

  /** Draws a problem if the mass is negative or not finite. */
  public BatchLine {
    CHECK.between(massKilograms, 0, 1e12, "mass in kg", ingredient.name());
  }

  /**
   * Returns how much goes in.
   *
   * @return the mass, in kilograms, not rounded
   */
  public Quantity<Mass> mass() {
    return QuantityKind.MASS.ofSi(massKilograms);
  }

  @Override
  public String toString() {
    return massKilograms + " kg of " + ingredient.name();
  }
}
