// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * The hazards of what is mixed in a studio: of each pigment, and of the mixture with its label.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.hazard.PigmentHazards} — the one table of pigments: heat and
 *       dust.
 *   <li>{@link org.meltwright.safety.hazard.RuleSet} — the law on one day, with what it says of
 *       single substances ({@link org.meltwright.safety.hazard.SubstanceHazards}).
 *   <li>{@link org.meltwright.safety.hazard.CopiedSheet} — what a supplier's data sheet says, read
 *       from a copy of its text.
 *   <li>{@link org.meltwright.safety.hazard.HazardMixture} — ingredients by mass, and what was
 *       measured on the whole.
 *   <li>{@link org.meltwright.safety.hazard.HazardReview} — the answer of each class, with its
 *       arithmetic.
 *   <li>{@link org.meltwright.safety.hazard.HazardLabel} — the label, finished or honestly
 *       incomplete, in English and German.
 * </ol>
 *
 * <p>For example, a cake with ten per cent of zinc white: ten times its share reaches the 25 % of
 * category 2.
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(
 *         List.of(shelf.require("beeswax"), shelf.require("zinc-white")), 90, 10);
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardReview review = HazardReview.ofCake(cake, rules); // aquatic-chronic 2 H411
 * HazardLabel label = HazardLabel.of(review, LabelDetails.builder().build());
 * label.gaps(); // [PRODUCT_NAME, NOMINAL_MASS, …
 * }</pre>
 *
 * <p>Review and label leave as plain data in {@link org.meltwright.safety.hazard.HazardReviewData}
 * and {@link org.meltwright.safety.hazard.HazardLabelData}: codes with their texts, masses in
 * kilograms, temperatures in degrees Celsius; what is absent is null.
 *
 * <p>A screening aid, not a legal classification: the suppliers' data sheets and local law come
 * first. Unknown is never "not hazardous".
 */
@NullMarked
package org.meltwright.safety.hazard;

import org.jspecify.annotations.NullMarked;
