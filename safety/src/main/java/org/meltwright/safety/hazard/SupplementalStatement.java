// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/**
 * A statement that the law adds for an ingredient, such as EUH208 for a sensitiser.
 *
 * <p>Half a per cent of colophony is below the limit of 1 %, but not below a tenth of it, where it
 * may set off an allergy:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture mixture =
 *     HazardMixture.builder(rules).cas("8012-89-3", 99.5).cas("8050-09-7", 0.5).build();
 * SupplementalStatement added = HazardReview.of(mixture, rules).supplements().get(0);
 * added.code(); // EUH208
 * added.ingredients(); // [0.5 % rosin (colophony)]
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param code the code, for example "EUH208"
 * @param ingredients the ingredients that ask for it
 */
public record SupplementalStatement(String code, List<HazardIngredient> ingredients) {

  public SupplementalStatement {
    ingredients = List.copyOf(ingredients);
  }
}
