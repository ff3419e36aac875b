// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.meltwright.core.equipment.Balance;

/**
 * One line to weigh: an ingredient, its balance, its exact and its printed mass, and how it goes
 * into the pot.
 *
 * <p>For example, more wax than the balance carries at once:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Batch batch =
 *     Batch.ofTotal(Recipe.builder("plain cakes").part(wax, 1).build(), grams(730), Losses.NONE);
 * Balance small = Balance.of("letter balance", grams(500), grams(1));
 * WeighingLine line = WeighingSheet.of(batch, List.of(small)).lines().get(0);
 * line.rounded().printedKilograms(); // 0.730 kg
 * line.portions(); // 2
 * line.hint(); // FIRST
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient what is weighed
 * @param balance the balance that it is weighed on
 * @param rounded the exact and the printed mass
 * @param hint how it goes into the pot
 */
public record WeighingLine(
    Ingredient ingredient, Balance balance, RoundedLine rounded, AdditionHint hint) {

  /**
   * Returns in how many portions the balance can take it.
   *
   * @return the number of weighings; 1 if the balance carries all of it, 0 if nothing is weighed
   */
  public long portions() {
    return (long) Math.ceil(rounded.printedKilograms() / balance.capacityKilograms() - 1e-9);
  }
}
