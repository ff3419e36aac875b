// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * What one ingredient adds to a sum.
 *
 * <p>Three per cent of colophony, held against the limit of 1 %:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture mixture =
 *     HazardMixture.builder(rules).cas("8012-89-3", 97).cas("8050-09-7", 3).build();
 * HazardFinding skin = HazardReview.of(mixture, rules).finding(HazardClass.SKIN_SENSITISATION);
 * Contribution rosin = skin.workings().get(0).contributions().get(0);
 * rosin.ingredient(); // 3.0 % rosin (colophony)
 * rosin.divisor(); // 1 %
 * rosin.quotient(); // 3
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient the ingredient
 * @param percent the share that counts, in per cent: that of the metal under note 1 of a limit
 * @param divisor the limit in per cent, M-factor worked in, or the acute toxicity estimate
 */
public record Contribution(HazardIngredient ingredient, double percent, double divisor) {

  /**
   * Returns what it adds.
   *
   * @return the share divided by limit or estimate
   */
  public double quotient() {
    return percent / divisor;
  }
}
