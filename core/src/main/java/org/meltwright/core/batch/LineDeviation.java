// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import org.meltwright.units.Limit;

/**
 * How far a line of a batch lies from its recipe, by mass of the whole that was weighed.
 *
 * <p>For example, one part in ten was called for, and 60 g in 500 g were weighed:
 *
 * <pre>{@code
 * Material ochre = MaterialCatalogue.standard().require("yellow-ochre");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe cakes = Recipe.builder("ochre cakes").part(ochre, 1).part(wax, 9).build();
 * Instant at = Instant.parse("2026-03-14T09:30:00Z");
 * WeighedLine first = WeighedLine.of(wax.withLot("bag 7"), grams(440), at);
 * WeighedLine second = WeighedLine.of(ochre.withLot("jar 2"), grams(60), at);
 * BatchRecord record = BatchRecord.of("B12", cakes, at, List.of(first, second));
 * LineDeviation ofOchre = record.deviations().get(0);
 * ofOchre.weighedShare(); // 0.12
 * ofOchre.difference(); // 0.02
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient the material or the sub-recipe
 * @param plannedShare the share that the recipe calls for, from 0 to 1
 * @param weighedShare the share that was weighed, from 0 to 1
 */
public record LineDeviation(Ingredient ingredient, double plannedShare, double weighedShare) {

  private static final double WHOLE = 1 + Limit.RELATIVE_SLACK;

  /** Draws a problem if a share is not from 0 to 1. */
  public LineDeviation {
    CHECK.between(plannedShare, 0, WHOLE, "planned share");
    CHECK.between(weighedShare, 0, WHOLE, "weighed share");
  }

  /**
   * Returns how much more was weighed than the recipe calls for.
   *
   * @return weighed less planned share; negative where too little was weighed
   */
  public double difference() {
    return weighedShare - plannedShare;
  }
}
