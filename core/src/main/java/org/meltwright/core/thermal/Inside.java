// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;

/** What is inside materials that are mixes themselves and state no figure of the kind asked for. */
final class Inside {

  private final Predicate<Material> states;
  private final Map<Material, Double> parts = new LinkedHashMap<>();

  /**
   * Puts the constituents of each material that does not state a figure in its place, at the middle
   * of their ranges, scaled to make the whole; what has no constituents stays.
   */
  static Composition of(Composition composition, Predicate<Material> states) {
    Inside inside = new Inside(states);
    if (composition.materials().stream().allMatch(inside::isWhole)) {
      return composition;
    }
    for (int i = 0; i < composition.size(); i++) {
      inside.add(composition.materials().get(i), composition.massFractionValue(i));
    }
    return Composition.ofParts(inside.parts);
  }

  private Inside(Predicate<Material> states) {
    this.states = states;
  }

  private boolean isWhole(Material material) {
    return material.constituents().isEmpty() || states.test(material);
  }

  private void add(Material material, double share) {
    if (isWhole(material)) {
      parts.merge(material, share, Double::sum);
      return;
    }
    List<Constituent> constituents = material.constituents();
    double all = constituents.stream().mapToDouble(Inside::middle).sum();
    constituents.forEach(c -> add(c.material(), share * middle(c) / all));
  }

  private static double middle(Constituent constituent) {
    return constituent.share().middle().value();
  }
}
