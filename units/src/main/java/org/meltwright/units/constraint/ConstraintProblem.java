// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import org.meltwright.units.ProblemCode;

/**
 * The problems that constraints report beside those of the parser.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Problem problem = Problem.of(ConstraintProblem.TOO_HIGH, "95 °C").with("limit", "90 °C");
 * problem.code().id(); // bound.too-high
 * problem.what(Locale.ENGLISH); // The value is too high.
 * problem.allowed(Locale.ENGLISH); // at most 90 °C
 * problem.allowed(Locale.GERMAN); // höchstens 90 °C
 * }</pre>
 */
public enum ConstraintProblem implements ProblemCode {
  /** A value below its bound. */
  TOO_LOW("bound.too-low"),
  /** A value above its bound. */
  TOO_HIGH("bound.too-high"),
  /** A value at or below a bound that must be passed. */
  NOT_ABOVE("bound.not-above"),
  /** A value at or above a bound that must not be reached. */
  NOT_BELOW("bound.not-below"),
  /** A value that is zero or negative. */
  NOT_POSITIVE("bound.not-positive"),
  /** Fractions that do not sum to one. */
  SUM_NOT_ONE("fractions.sum-not-one"),
  /** Fractions by mass and by volume in one sum. */
  MIXED_BASES("fractions.mixed-bases");

  private final String id;

  ConstraintProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
