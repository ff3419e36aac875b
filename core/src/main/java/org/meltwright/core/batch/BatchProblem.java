// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import org.meltwright.units.ProblemCode;

/** The problems that recipes, batches and castings report. */
public enum BatchProblem implements ProblemCode {
  /** A recipe without a name. */
  NAME_MISSING("batch.name-missing"),
  /** A recipe without parts. */
  NO_PARTS("batch.no-parts"),
  /** A recipe that does not hold the ingredient that a batch starts from. */
  NOT_IN_RECIPE("batch.not-in-recipe"),
  /** Losses that leave nothing of a batch. */
  NOTHING_LEFT("batch.nothing-left"),
  /** A fill level of nothing, or above the brim. */
  FILL_LEVEL("batch.fill-level"),
  /** No balance to weigh on. */
  NO_BALANCE("batch.no-balance");

  private final String id;

  BatchProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
