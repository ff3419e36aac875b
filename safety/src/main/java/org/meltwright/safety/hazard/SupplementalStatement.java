// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/**
 * A statement that the law adds for an ingredient, such as EUH208 for a sensitiser.
 *
 * <p>Immutable and thread-safe.
 *
 * @param code the code, for example "EUH208"
 * @param ingredients the ingredients that ask for it
 */
public record SupplementalStatement(String code, List<HazardIngredient> ingredients) {

  /**
   * Copies the ingredients.
   *
   * @param code the code
   * @param ingredients the ingredients that ask for it
   */
  public SupplementalStatement {
    ingredients = List.copyOf(ingredients);
  }
}
