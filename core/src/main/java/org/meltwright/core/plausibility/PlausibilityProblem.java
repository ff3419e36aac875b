// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.plausibility;

import org.meltwright.units.ProblemCode;

/**
 * The problems that a list of usual sizes reports.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   SenseOfSize.parse("film | 1 mm | 0.1 mm | 5 | own policy");
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // MALFORMED
 * }</pre>
 */
public enum PlausibilityProblem implements ProblemCode {
  /** A line that cannot be used. */
  MALFORMED("plausibility.malformed");

  private final String id;

  PlausibilityProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
