// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

/** The problems that plans report. */
public enum PlanningProblem implements ProblemCode {
  /** A material that no offer of the day holds. */
  NO_OFFER("planning.no-offer"),
  /** A supplier whose carriage nobody stated. */
  TERMS_MISSING("planning.terms-missing"),
  /** A material or a supplier that is stated twice. */
  TWICE("planning.twice"),
  /** Amounts beyond what a plan counts. */
  TOO_DEAR("planning.too-dear"),
  /** An amount of money below zero where none can be. */
  AMOUNT_NEGATIVE("planning.amount.negative"),
  /** Shares that make more than the whole. */
  SHARES("planning.shares");

  private final String id;

  PlanningProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  static ProblemException exception(PlanningProblem code, Object found) {
    return new ProblemException(Problem.of(code, found.toString()));
  }
}
