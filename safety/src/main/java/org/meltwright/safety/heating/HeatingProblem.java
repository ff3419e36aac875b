// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import org.meltwright.units.Check;
import org.meltwright.units.ProblemCode;

/**
 * The problems that plans and rule sets report.
 *
 * <p>For example:
 *
 * <pre>{@code
 * List<Problem> problems = new ArrayList<>();
 * try {
 *   HeatingRules.standard().without("hard-ceiling", "we are careful");
 * } catch (ProblemException e) {
 *   problems.addAll(e.problems());
 * }
 * problems.get(0).code(); // RULE_FIXED
 * problems.get(0).what(Locale.ENGLISH); // The rule "hard-ceiling" is fixed and cannot …
 * }</pre>
 */
public enum HeatingProblem implements ProblemCode {
  /** A liquid reading is given, but the thermometer does not measure in the liquid. */
  READING_PLACE("heating.reading-place"),
  /** A rule that is fixed was to be switched off. */
  RULE_FIXED("heating.rule-fixed"),
  /** No rule of the set has this id. */
  RULE_UNKNOWN("heating.rule-unknown"),
  /** A rule of this id is in the set already. */
  RULE_TWICE("heating.rule-twice"),
  /** A rule was to be switched off, or a limit tightened, without saying why. */
  REASON_MISSING("heating.reason-missing"),
  /** A rule has no text for what it was asked to say. */
  TEXT_MISSING("heating.text-missing"),
  /** A limit is looser than allowed. */
  LIMIT_LOOSER("heating.limit-looser");

  /** The guards of this package. */
  static final Check CHECK = Check.beside(HeatingProblem.class);

  private final String id;

  HeatingProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
