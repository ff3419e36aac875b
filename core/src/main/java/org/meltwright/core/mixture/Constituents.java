// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;

/** What materials that are themselves mixes are made of. */
final class Constituents {

  private Constituents() {}

  /** Returns what a mix is made of, down to what states no constituents. */
  static Composition expanded(Composition mix) {
    List<Material> materials = mix.materials();
    if (materials.stream().allMatch(m -> m.constituents().isEmpty())) {
      return mix;
    }
    Map<Material, Composition> seen = new HashMap<>();
    double[] shares = new double[mix.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = mix.massFractionValue(i);
    }
    return Composition.blend(materials.stream().map(m -> expanded(m, seen)).toList(), shares);
  }

  /** Returns what a material is made of, down to what states no constituents. */
  static Composition expanded(Material material) {
    return expanded(material, new HashMap<>());
  }

  private static Composition expanded(Material material, Map<Material, Composition> seen) {
    Composition known = seen.get(material);
    if (known != null) {
      return known;
    }
    List<Constituent> parts = material.constituents();
    Composition result =
        parts.isEmpty()
            ? Composition.of(material)
            : Composition.blend(
                parts.stream().map(c -> expanded(c.material(), seen)).toList(), middles(parts));
    seen.put(material, result);
    return result;
  }

  static double[] middles(List<Constituent> parts) {
    return parts.stream().mapToDouble(c -> c.share().middle().value()).toArray();
  }
}
