// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * Substances for which the Union has set a limit for the air of workplaces, as far as remembered.
 */
final class WorkplaceLimits {

  private static final List<List<String>> ROWS = TextTable.rows("union-workplace-limits.txt");

  private WorkplaceLimits() {}

  private static Stream<String> column(String kind, LocalDate day) {
    return ROWS.stream()
        .filter(r -> r.get(0).equals(kind) && Days.of(r).holdOn(day))
        .map(r -> r.get(1));
  }

  /** Whether its own sheet says so. */
  static boolean stated(HazardIngredient i) {
    return i.hazards().hasUnionWorkplaceLimit();
  }

  /** Whether the table here says so: remembered, not read. */
  static boolean remembered(HazardIngredient i, LocalDate day) {
    return column("substance", day).anyMatch(i.hazards().casNumbers()::contains)
        || column("metal", day).anyMatch(metal -> holds(i, metal));
  }

  private static boolean holds(HazardIngredient i, String metal) {
    return i.hazards().metal().filter(metal::equals).isPresent()
        || i.pigment().filter(p -> p.holds(metal)).isPresent();
  }

  static boolean has(HazardIngredient i, LocalDate day) {
    return stated(i) || remembered(i, day);
  }
}
