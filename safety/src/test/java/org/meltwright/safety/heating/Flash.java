// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.TemperatureRange;

/** Materials with another flash point, or with none. */
final class Flash {

  private Flash() {}

  /** A copy with a flash point in °C; "none" for a copy in which nothing has one. */
  static Material of(Material material, String celsius) {
    Material.Builder copy = without(material);
    if (!celsius.equals("none")) {
      TemperatureRange range = TemperatureRange.of(Plans.point(celsius));
      DefinedTemperature flash =
          new DefinedTemperature(range, TemperatureDefinition.FLASH_CLOSED_CUP);
      copy.figure(PropertyKey.FLASH_POINT, Sourced.of(flash, Source.USER, Knowledge.READ));
    }
    return copy.build();
  }

  private static Material.Builder without(Material material) {
    Material.Builder copy =
        Material.builder(material.id())
            .names(material.name(Locale.ENGLISH), material.name(Locale.GERMAN))
            .family(material.family(), material.role());
    material.otherNames().forEach(copy::otherName);
    for (IdentifierScheme scheme : IdentifierScheme.values()) {
      material.identifiers(scheme).forEach(each -> copy.identifier(scheme, each));
    }
    material
        .constituents()
        .forEach(c -> copy.constituent(without(c.material()).build(), c.share()));
    material.alternatives().forEach(each -> copy.alternative(without(each).build()));
    material.properties().stream()
        .filter(key -> key != PropertyKey.FLASH_POINT)
        .forEach(key -> copyFigures(material, key, copy));
    return copy;
  }

  private static <V> void copyFigures(Material from, PropertyKey<V> key, Material.Builder to) {
    from.figures(key).forEach(figure -> to.figure(key, figure));
  }
}
