// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * What one ingredient adds to a sum.
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
