// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.meltwright.units.Problem;

/** Names that stand more than once where each may stand once. */
final class Repeated {

  private Repeated() {}

  /** A problem for each name that is repeated. */
  static List<Problem> of(Stream<String> names) {
    Set<String> seen = new HashSet<>();
    return names
        .filter(n -> !seen.add(n))
        .distinct()
        .map(n -> Problem.of(PlanningProblem.TWICE, n))
        .toList();
  }
}
