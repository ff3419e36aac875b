// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;

/** What materials that are themselves mixes are made of. */
final class Constituents {

  private final Predicate<Material> stays;
  private final Map<Material, Composition> seen = new HashMap<>();

  private Constituents(Predicate<Material> stays) {
    this.stays = stays;
  }

  /** Returns what a mix is made of, down to what states no constituents. */
  static Composition expanded(Composition mix) {
    return expandedUnless(mix, material -> false);
  }

  /** Returns what a mix is made of, down to what states no constituents or is to stay whole. */
  static Composition expandedUnless(Composition mix, Predicate<Material> stays) {
    Constituents constituents = new Constituents(stays);
    List<Material> materials = mix.materials();
    if (materials.stream().allMatch(constituents::isWhole)) {
      return mix;
    }
    double[] shares = new double[mix.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = mix.massFractionValue(i);
    }
    return Composition.blend(materials.stream().map(constituents::of).toList(), shares);
  }

  /** Returns what a material is made of, down to what states no constituents. */
  static Composition expanded(Material material) {
    return new Constituents(m -> false).of(material);
  }

  private boolean isWhole(Material material) {
    return material.constituents().isEmpty() || stays.test(material);
  }

  private Composition of(Material material) {
    Composition known = seen.get(material);
    if (known != null) {
      return known;
    }
    List<Constituent> parts = material.constituents();
    Composition result =
        isWhole(material)
            ? Composition.of(material)
            : Composition.blend(parts.stream().map(c -> of(c.material())).toList(), middles(parts));
    seen.put(material, result);
    return result;
  }

  static double[] middles(List<Constituent> parts) {
    return parts.stream().mapToDouble(c -> c.share().middle().value()).toArray();
  }
}
