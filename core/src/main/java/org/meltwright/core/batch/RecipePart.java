// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

/**
 * One line of a recipe: an ingredient and its parts by mass.
 *
 * <p>For example, the same numbers by mass and by cups of what is scooped are two recipes:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * RecipePart one = new RecipePart(Ingredient.of(resin), 1);
 * RecipePart six = new RecipePart(Ingredient.of(wax), 6);
 * Recipe weighed = Recipe.of("weighed", List.of(one, six));
 * Recipe scooped = Recipe.ofVolumeParts("scooped", List.of(one, six), DensityBasis.BULK);
 * weighed.composition().massFraction(resin).percent(); // 14.3 %
 * scooped.composition().massFraction(resin).percent(); // 15.6 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient what is taken
 * @param parts how many parts by mass, in the recipe's own unit, from 0 to 1e12
 */
public record RecipePart(Ingredient ingredient, double parts) {

  private static final double MOST = 1e12;

  /**
   * Guards the parts.
   *
   * @param ingredient what is taken
   * @param parts how many parts by mass
   * @throws org.meltwright.units.ProblemException if the parts are negative, not finite or beyond
   *     1e12
   */
  public RecipePart {
    CHECK.between(parts, 0, MOST, "number of parts", ingredient.name());
  }
}
