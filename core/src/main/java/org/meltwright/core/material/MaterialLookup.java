// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.ProblemException;

/**
 * Finds the material that a draft names: in a catalogue, on a shelf, wherever an app keeps them.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MaterialLookup catalogue = MaterialCatalogue.standard()::require;
 * catalogue.require("Damar"); // damar
 * catalogue.require("damarr"); // throws ProblemException
 * }</pre>
 */
@FunctionalInterface
public interface MaterialLookup {

  /**
   * Returns the material that a text names.
   *
   * @param reference its id, or a name that the lookup knows
   * @return the material
   * @throws ProblemException if it knows none, or several
   */
  Material require(String reference);
}
