// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning;

import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.Density;
import org.meltwright.units.QuantityRange;

/** What a kilogram of a material takes, in m³. */
final class Volumes {

  private Volumes() {}

  /** A mix without a figure of its own takes what any shares of its constituents may take. */
  static double of(Material material, DensityBasis basis, Figure.End end) {
    QuantityRange<Density> density = basis.density(material);
    double own = end.of(1 / density.highSi(), 1 / density.middleSi(), 1 / density.lowSi());
    boolean isOfParts =
        !material.constituents().isEmpty() && material.find(basis.property(material)).isEmpty();
    if (end == Figure.End.MIDDLE || !isOfParts) {
      return own;
    }
    double any = Extremes.ofConstituents(material, m -> of(m, basis, end), end);
    return end == Figure.End.LARGEST ? Math.max(own, any) : Math.min(own, any);
  }
}
