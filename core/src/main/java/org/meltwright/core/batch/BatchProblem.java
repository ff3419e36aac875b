// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that recipes, batches and castings report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Recipe plain = Recipe.builder("plain cakes").part(wax, 1).build();
 * Losses film = Losses.NONE.withFilm(grams(15), MassFraction.ZERO);
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   Batch.ofTotal(plain, grams(10), film);
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // NOTHING_LEFT
 * problems.get(0).what(Locale.ENGLISH); // The losses leave nothing of the batch.
 * }</pre>
 */
public enum BatchProblem implements ProblemCode {
  /** A recipe without a name. */
  NAME_MISSING("batch.name-missing"),
  /** A recipe without parts. */
  NO_PARTS("batch.no-parts"),
  /** Shares that leave nothing for the rest, or do not sum to one. */
  SHARES("batch.shares"),
  /** Parts beside shares, parts by mass beside parts by volume, or volumes in two states. */
  MIXED_AMOUNTS("batch.mixed-amounts"),
  /** A recipe that does not hold the ingredient that a batch starts from. */
  NOT_IN_RECIPE("batch.not-in-recipe"),
  /** Losses that leave nothing of a batch. */
  NOTHING_LEFT("batch.nothing-left"),
  /** A fill level of nothing, or above the brim. */
  FILL_LEVEL("batch.fill-level"),
  /** No balance to weigh on. */
  NO_BALANCE("batch.no-balance"),
  /** Two of the same name. */
  NAME_TWICE("batch.name-twice"),
  /** Drafts that contain themselves, directly or through others. */
  CIRCLE("batch.circle"),
  /** A draft that names a recipe that is not there. */
  UNKNOWN_RECIPE("batch.unknown-recipe"),
  /** A draft that names a batch that is not there. */
  UNKNOWN_BATCH("batch.unknown-batch"),
  /** An item that is not in stock. */
  UNKNOWN_ITEM("batch.unknown-item"),
  /** A line that names none or both of two things. */
  ONE_OF_TWO("batch.one-of-two"),
  /** A line that states no amount, or several. */
  AMOUNT_ONCE("batch.amount-once"),
  /** A recipe with a ratio and lines. */
  RATIO_OR_PARTS("batch.ratio-or-parts"),
  /** A form of another version. */
  VERSION("batch.version"),
  /** A text that is not a point in time. */
  TIME("batch.time");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(BatchProblem.class);

  private final String id;

  BatchProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
