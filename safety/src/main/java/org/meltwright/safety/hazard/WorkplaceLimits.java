// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Set;
import java.util.stream.Collectors;

/**
 * Substances for which the Union has set a limit for the air of workplaces, as far as remembered.
 */
final class WorkplaceLimits {

  private static final Set<String> CAS_NUMBERS = column("substance");
  private static final Set<String> METALS = column("metal");

  private WorkplaceLimits() {}

  private static Set<String> column(String kind) {
    return TextTable.rows("union-workplace-limits.txt").stream()
        .filter(r -> r.get(0).equals(kind))
        .map(r -> r.get(1))
        .collect(Collectors.toSet());
  }

  /** Whether its own sheet says so. */
  static boolean stated(HazardIngredient i) {
    return i.hazards().hasUnionWorkplaceLimit();
  }

  /** Whether the table here says so: remembered, not read. */
  static boolean remembered(HazardIngredient i) {
    return i.hazards().casNumbers().stream().anyMatch(CAS_NUMBERS::contains)
        || i.hazards().metal().filter(METALS::contains).isPresent()
        || i.pigment().filter(p -> METALS.stream().anyMatch(p::holds)).isPresent();
  }

  static boolean has(HazardIngredient i) {
    return stated(i) || remembered(i);
  }
}
