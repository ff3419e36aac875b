// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/**
 * The arithmetic behind one answer.
 *
 * <p>A quarter of turpentine, whose estimate is 500 mg/kg: 100/(25/500) for the mixture.
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture polish =
 *     HazardMixture.builder(rules).cas("8006-64-2", 25).cas("8012-89-3", 75).build();
 * HazardFinding swallowed = HazardReview.of(polish, rules).finding(HazardClass.ACUTE_ORAL);
 * Working working = swallowed.workings().get(0);
 * working.kind(); // ACUTE
 * working.value(); // 2000 mg/kg
 * swallowed.category(); // 4
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kind how the shares were combined
 * @param level the category that the sum was held against; the form of uptake for acute toxicity
 * @param value the sum of quotients, or the highest of them, reached at 1; for acute toxicity the
 *     estimate of the mixture in the form's unit, infinite if nothing enters it
 * @param unknownPercent the share of unknown acute toxicity, in per cent
 * @param contributions what each ingredient added
 */
public record Working(
    Kind kind,
    String level,
    double value,
    double unknownPercent,
    List<Contribution> contributions) {

  /** How shares are combined. */
  public enum Kind {
    /** Each share over its limit, added up. */
    SUM,
    /** Each share over its limit, the highest counts. */
    HIGHEST,
    /** The acute toxicity estimate of the mixture. */
    ACUTE,
    /** The acute toxicity estimate, corrected for a share of unknown toxicity above 10 %. */
    ACUTE_CORRECTED
  }

  /**
   * Copies the contributions.
   *
   * @param kind how the shares were combined
   * @param level the category or form
   * @param value the sum, the highest quotient or the estimate
   * @param unknownPercent the share of unknown acute toxicity
   * @param contributions what each ingredient added
   */
  public Working {
    contributions = List.copyOf(contributions);
  }
}
