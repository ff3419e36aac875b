// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import org.meltwright.core.material.Material;
import org.meltwright.units.VolumeFraction;

/**
 * The volume of a kilogram of a mix in two: what is counted, and all else, in m³.
 *
 * @param counted the volume of what is counted
 * @param other the volume of all else
 */
record VolumeSplit(double counted, double other) {

  /** Either side keeps its density where the share by mass is taken at an end of its range. */
  static VolumeSplit of(ShareOf what, Composition mix, DensityBasis basis) {
    double share = what.valueIn(mix);
    Composition parts = what.expanded(mix);
    DensityTable densities = basis.table(parts.materials());
    double middle = 0;
    double counted = 0;
    double other = 0;
    for (int i = 0; i < parts.size(); i++) {
      Material material = parts.materials().get(i);
      double volume = parts.massFractionValue(i) * densities.volume(i);
      boolean counts = what.counts(material);
      middle += counts ? parts.massFractionValue(i) : 0;
      counted += counts ? volume : 0;
      other += counts ? 0 : volume;
    }
    return new VolumeSplit(
        middle > 0 ? counted / middle * share : 0,
        middle < 1 ? other / (1 - middle) * (1 - share) : 0);
  }

  /** The share by volume, from 0 to 1. */
  double share() {
    return counted / (counted + other);
  }

  /** How much more is counted than a share of the whole, in m³. */
  double beyond(VolumeFraction target) {
    return counted * (1 - target.value()) - other * target.value();
  }
}
