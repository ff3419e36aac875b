// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import org.meltwright.units.ProblemCode;

/** The problems that compositions and mixtures report. */
public enum MixtureProblem implements ProblemCode {
  /** No part is larger than zero. */
  NO_PARTS("mixture.no-parts"),
  /** A part or an amount that is negative, not finite or beyond all measure. */
  AMOUNT("mixture.amount");

  private final String id;

  MixtureProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
