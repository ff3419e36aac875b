// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.ProblemCode;

/** The problems that materials report. */
public enum MaterialProblem implements ProblemCode {
  /** A figure that nobody knows is needed. */
  PROPERTY_MISSING("material.property-missing"),
  /** No material has this name. */
  UNKNOWN("material.unknown");

  private final String id;

  MaterialProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
