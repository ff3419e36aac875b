// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.safety.naming.HazardNames;
import org.meltwright.safety.naming.NameKind;
import org.meltwright.safety.naming.NamedHazard;
import org.meltwright.units.TemperaturePoint;

/**
 * What counts as fragrance: the family says so, or the name of a thing that is no mixture tells an
 * essential oil, a perfume, camphor, menthol or thymol.
 */
final class FragranceNames {

  private static final PerMaterial<Boolean> FRAGRANCE =
      PerMaterial.of(m -> m.family() == MaterialFamily.FRAGRANCE || named(m).findAny().isPresent());

  private FragranceNames() {}

  static boolean isFragrance(Material material) {
    return FRAGRANCE.get(material);
  }

  /** The flash point that the name tells where none is stated: that of camphor, for example. */
  static Optional<TemperaturePoint> flashPoint(Material material) {
    return material.find(PropertyKey.FLASH_POINT).isPresent()
        ? Optional.empty()
        : named(material)
            .flatMap(n -> n.hazard().flashPoint().stream())
            .min(TemperaturePoint::compareTo);
  }

  private static Stream<NamedHazard> named(Material material) {
    return material.constituents().isEmpty()
        ? HazardNames.of(material).stream()
            .filter(n -> n.hazard().kind() == NameKind.FRAGRANCE && n.isBinding())
        : Stream.empty();
  }
}
