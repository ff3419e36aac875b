// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

/**
 * One line of a recipe: an ingredient, and how much of it as stated.
 *
 * <p>For example, the same numbers by mass and by cups of what is scooped are two recipes:
 *
 * <pre>{@code
 * Ingredient resin = Ingredient.of(MaterialCatalogue.standard().require("damar"));
 * Ingredient wax = Ingredient.of(MaterialCatalogue.standard().require("beeswax-yellow"));
 * StatedAmount cup = StatedAmount.volumeParts(1, DensityBasis.BULK);
 * StatedAmount sixCups = StatedAmount.volumeParts(6, DensityBasis.BULK);
 * Recipe weighed = Recipe.of("weighed", List.of(new RecipePart(resin, 1), new RecipePart(wax, 6)));
 * Recipe scooped =
 *     Recipe.of("scooped", List.of(new RecipePart(resin, cup), new RecipePart(wax, sixCups)));
 * weighed.lineShare(resin); // 0.143
 * scooped.lineShare(resin); // 0.156
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient what is taken
 * @param amount how much of it, as stated
 */
public record RecipePart(Ingredient ingredient, StatedAmount amount) {

  private static final String PARTS = "number of parts";

  /**
   * Creates a line of parts by mass.
   *
   * @param ingredient what is taken
   * @param parts how many parts by mass, in the recipe's own unit, from 0 to 1e12
   * @throws org.meltwright.units.ProblemException if the parts are negative, not finite or beyond
   *     1e12
   */
  public RecipePart(Ingredient ingredient, double parts) {
    this(
        ingredient,
        StatedAmount.parts(
            CHECK.between(parts, 0, StatedAmount.Parts.MOST, PARTS, ingredient.name())));
  }

  @Override
  public String toString() {
    return amount + " " + ingredient.name();
  }
}
