// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

/**
 * How far a line of a batch lies from its recipe, by mass of the whole that was weighed.
 *
 * <p>For example, one part in ten was called for, and 60 g of 510 g were weighed:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * LineDeviation line = new LineDeviation(Ingredient.of(resin), 0.1, 60.0 / 510);
 * line.difference(); // 0.018
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient the material or the sub-recipe
 * @param plannedShare the share that the recipe calls for, from 0 to 1
 * @param weighedShare the share that was weighed, from 0 to 1
 */
public record LineDeviation(Ingredient ingredient, double plannedShare, double weighedShare) {

  /**
   * Returns how much more was weighed than the recipe calls for.
   *
   * @return weighed less planned share; negative where too little was weighed
   */
  public double difference() {
    return weighedShare - plannedShare;
  }
}
