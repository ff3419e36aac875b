// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.meltwright.units.Messages;

/**
 * Something that was taken for granted, shown with the result.
 *
 * <p>Zinc white states no M-factor, beeswax has no entry; both are taken for granted, and said so:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(
 *         List.of(shelf.require("beeswax"), shelf.require("zinc-white")), 90, 10);
 * HazardReview review = HazardReview.ofCake(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * review.assumptions().get(0).kind(); // PRESUMED_NONE
 * review.assumptions().get(1).kind(); // MISSING_FACTOR
 * review.assumptions().get(1).text(Locale.ENGLISH); // No M-factor is stated; taken as 1…
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kind what was assumed
 * @param ingredients for which ingredients
 */
public record Assumption(Kind kind, List<HazardIngredient> ingredients) {

  /** What can be assumed. */
  public enum Kind {
    /** No harmonised entry; taken as not classified, as suppliers usually do. */
    PRESUMED_NONE("presumed-none"),
    /** In which form it is inhaled is not stated: vapour and dust are reckoned, the worse taken. */
    FORM_NOT_STATED("form-not-stated"),
    /** What was not named is held to be in no class. */
    REST_NOT_CLASSIFIED("rest-not-classified"),
    /** No M-factor is stated; taken as 1. */
    MISSING_FACTOR("missing-factor"),
    /** That the Union has set a limit for workplaces is remembered, not read. */
    WORKPLACE_LIMIT_REMEMBERED("workplace-limit-remembered"),
    /** The entry is a minimum; better data may be stricter. */
    MINIMUM_CATEGORY("minimum-category"),
    /** A sheet says category 1 where the law has 1A and 1B; taken as 1A. */
    UNDIVIDED_CATEGORY("undivided-category"),
    /** The share of the metal is not known; the whole compound counts. */
    METAL_SHARE_UNKNOWN("metal-share-unknown"),
    /** The entry speaks of part of the compound only. */
    PART_OF_COMPOUND("part-of-compound"),
    /** The entry holds unless the supplier states that a note's condition is met. */
    NOTE_NOT_LIFTED("note-not-lifted"),
    /** What dries the skin is taken as too little to say so, by convention. */
    DRYNESS_BELOW_CONVENTION("dryness-below-convention"),
    /** The user's data sheet stands in place of a harmonised entry. */
    DATA_SHEET_OVERRIDES("data-sheet-overrides"),
    /** The user's data sheet is milder than the harmonised entry, which binds. */
    DATA_SHEET_MILDER("data-sheet-milder");

    private final String id;

    Kind(String id) {
      this.id = id;
    }

    /**
     * Returns the stable id.
     *
     * @return lower case and hyphens, for example {@code presumed-none}
     */
    public String id() {
      return id;
    }
  }

  public Assumption {
    ingredients = List.copyOf(ingredients);
  }

  /**
   * Says what was assumed.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return a sentence that names the ingredients
   */
  public String text(Locale locale) {
    String names = HazardTexts.names(ingredients, locale);
    return Messages.beside(Assumption.class)
        .text("assumption." + kind.id, locale, Map.of("names", names));
  }
}
