// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;

/** What is inside materials that are mixes themselves and state no figure of the kind asked for. */
final class Inside {

  private final Predicate<Material> states;

  /**
   * Puts the constituents of each material that does not state a figure in its place, at the middle
   * of their ranges, scaled to make the whole; what has no constituents stays.
   */
  static Composition of(Composition composition, Predicate<Material> states) {
    Inside inside = new Inside(states);
    List<Material> materials = composition.materials();
    if (materials.stream().allMatch(inside::isWhole)) {
      return composition;
    }
    double[] shares = new double[materials.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = composition.massFractionValue(i);
    }
    return Composition.blend(materials.stream().map(inside::of).toList(), shares);
  }

  private Inside(Predicate<Material> states) {
    this.states = states;
  }

  private boolean isWhole(Material material) {
    return material.constituents().isEmpty() || states.test(material);
  }

  private Composition of(Material material) {
    List<Constituent> parts = material.constituents();
    return isWhole(material)
        ? Composition.of(material)
        : Composition.blend(
            parts.stream().map(c -> of(c.material())).toList(),
            parts.stream().mapToDouble(c -> c.share().middle().value()).toArray());
  }
}
