// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * The answer for one hazard class of a mixture; none of the three is a word of safety.
 *
 * <p>No data is not "not classified":
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture mixture =
 *     HazardMixture.builder(rules)
 *         .cas("8012-89-3", 90)
 *         .substance(SubstanceHazards.unknown("a powder from the attic"), 10)
 *         .build();
 * HazardReview review = HazardReview.of(mixture, rules);
 * review.finding(HazardClass.SKIN_SENSITISATION).status(); // INSUFFICIENT_DATA
 * }</pre>
 */
public enum HazardStatus {
  /** The mixture falls in a category of the class. */
  CLASSIFIED,
  /** No limit is reached on what is known of all relevant ingredients. */
  NOT_CLASSIFIED,
  /** Something is missing that could change the answer; never read as "not hazardous". */
  INSUFFICIENT_DATA
}
