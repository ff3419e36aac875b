// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/** What a substance is held to do in one class: its category, split by effect where a law does. */
record Claim(Category category, Effect effect, String statement, List<String> details) {

  static List<Claim> of(HazardCategory c) {
    if (c.hazardClass() != HazardClass.REPRODUCTION) {
      return List.of(new Claim(c.category(), Effect.WHOLE, c.statement(), c.details()));
    }
    return Effect.of(c.category(), c.statement()).entrySet().stream()
        .map(e -> new Claim(e.getValue(), e.getKey(), c.statement(), c.details()))
        .toList();
  }
}
