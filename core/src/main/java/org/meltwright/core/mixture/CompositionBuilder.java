// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.units.ProblemException;

/**
 * Gathers the parts of a composition; not thread-safe.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * CompositionBuilder parts = Composition.builder().part(shelf.require("damar"), 1);
 * parts.part(shelf.require("beeswax-yellow"), 8).build().size(); // 2
 * }</pre>
 *
 * <p>Compared by identity: a builder changes.
 */
public final class CompositionBuilder {

  private final List<Material> materials = new ArrayList<>();
  private final List<Double> parts = new ArrayList<>();

  CompositionBuilder() {}

  /**
   * Adds a part; parts of a material that is there already are added up.
   *
   * @param material the material
   * @param byMass how much of it, in any unit that all parts share; zero or more
   * @return this builder
   */
  public CompositionBuilder part(Material material, double byMass) {
    materials.add(material);
    parts.add(byMass);
    return this;
  }

  /**
   * Puts the parts together.
   *
   * @return the composition, in the order of the parts
   * @throws ProblemException if a part is negative or not finite, or none is above zero
   */
  public Composition build() {
    return Composition.ofParts(
        materials, parts.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
