// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import org.meltwright.units.ProblemCode;

/**
 * The problem that an unknown name reports which is a name of hazard.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * HazardNames.require(shelf, "Mennige"); // throws ProblemException
 * NamingProblem.HAZARD_NAME.id(); // naming.hazard-name
 * }</pre>
 */
public enum NamingProblem implements ProblemCode {
  /** A name that no material of the catalogue has, and that the list of hazard names knows. */
  HAZARD_NAME("naming.hazard-name");

  private final String id;

  NamingProblem(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
