// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.Locale;
import org.meltwright.units.Messages;

/**
 * How a line of a batch goes into the pot; common practice.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * Balance balance = Balance.of("kitchen balance", kilograms(5), grams(1));
 * Batch batch = Batch.ofTotal(medium, grams(900), Losses.NONE);
 * AdditionHint second = WeighingSheet.of(batch, List.of(balance)).inOrder().get(1).hint();
 * second; // SPRINKLE
 * second.text(Locale.ENGLISH); // Crush it, sprinkle it into the melt and stir until …
 * }</pre>
 */
public enum AdditionHint {
  /** The largest line that melts: it goes in first. */
  FIRST("first"),
  /** The hardest part that melts: it melts together with the first third of the largest line. */
  WITH_FIRST_THIRD("with-first-third"),
  /** Any other part that melts: it follows the largest line. */
  THEN("then"),
  /** What dissolves: crushed and sprinkled into the melt, which stays below its ceiling. */
  SPRINKLE("sprinkle"),
  /** What neither melts nor dissolves, and oils: stirred in at the end. */
  STIR_IN("stir-in");

  private final String id;

  AdditionHint(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, words joined by hyphens
   */
  public String id() {
    return id;
  }

  /**
   * Returns what to do.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence
   */
  public String text(Locale locale) {
    return Messages.beside(AdditionHint.class).text("addition." + id, locale);
  }
}
