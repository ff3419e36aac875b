// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;

/**
 * What a batch takes from a stock, what it leaves there, and what it lacks.
 *
 * <p>For example, cakes for which a little medium is left, and the rest of it has to be made:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Material resin = shelf.require("damar");
 * Material wax = shelf.require("beeswax-yellow");
 * Material white = shelf.require("titanium-white-rutile");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 9).build();
 * Recipe cakes = Recipe.builder("white cakes").part(medium, 9).part(white, 1).build();
 * Stock stock =
 *     Stock.of(
 *         List.of(
 *             StockItem.ofPieces("May's medium", Ingredient.of(medium), 4, grams(20)),
 *             StockItem.of("wax", Ingredient.of(wax), kilograms(1)),
 *             StockItem.of("white", Ingredient.of(white), grams(100))));
 * Withdrawal taken = stock.take(Batch.of(cakes, grams(200)));
 * taken.lines().get(0); // May's medium: 0.08 kg of medium
 * taken.isComplete(); // false
 * taken.missing().get(0).ingredient().name(); // damar
 * taken.missing().get(0).massKilograms(); // 0.01 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param lines what is taken from which item, in the order of taking; none is nothing
 * @param left the stock afterwards; what is used up is there with nothing in it
 * @param missing what is not there, each ingredient once; empty if all is
 */
public record Withdrawal(List<StockItem> lines, Stock left, List<BatchLine> missing) {

  public Withdrawal {
    lines = List.copyOf(lines);
    missing = List.copyOf(missing);
  }

  /**
   * Tells whether all that the batch needs is there.
   *
   * @return whether nothing is missing
   */
  public boolean isComplete() {
    return missing.isEmpty();
  }
}
