// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.LinkedHashMap;
import java.util.Map;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperatureRange;

/** Materials of the tests. */
final class TestMaterials {

  private static final Map<String, Material> ALL = new LinkedHashMap<>();

  static {
    add(
        base("beeswax-yellow", MaterialFamily.WAX)
            .figure(PropertyKey.FLASH_POINT, t(204))
            .figure(PropertyKey.MELTING_RANGE, t(62, 65)));
    add(
        base("carnauba", MaterialFamily.WAX)
            .figure(PropertyKey.FLASH_POINT, t(282))
            .figure(PropertyKey.MELTING_RANGE, t(80, 86)));
    add(
        base("paraffin", MaterialFamily.WAX)
            .figure(PropertyKey.FLASH_POINT, t(199))
            .figure(PropertyKey.MELTING_RANGE, t(50, 62)));
    add(
        base("damar", MaterialFamily.RESIN)
            .figure(PropertyKey.COMBUSTIBILITY, s("burns"))
            .figure(PropertyKey.MELTING_RANGE, t(120, 150))
            .figure(PropertyKey.DISSOLVES_FROM, t(75, 90)));
    add(base("linseed-oil", MaterialFamily.DRYING_OIL).figure(PropertyKey.FLASH_POINT, t(222)));
    add(
        base("titanium-white-rutile", MaterialFamily.PIGMENT)
            .figure(PropertyKey.COMBUSTIBILITY, s("does not burn")));
    add(base("gum-turpentine", MaterialFamily.SOLVENT).figure(PropertyKey.FLASH_POINT, t(35)));
    add(base("water", MaterialFamily.WATER).figure(PropertyKey.COMBUSTIBILITY, s("does not burn")));
    add(
        base("acrylic-dispersion", MaterialFamily.DISPERSION)
            .figure(PropertyKey.COMBUSTIBILITY, s("burns")));
    add(
        base("paint-titanium", MaterialFamily.OIL_PAINT)
            .constituent(of("linseed-oil"), range(20, 25))
            .constituent(of("titanium-white-rutile"), range(75, 80)));
  }

  private TestMaterials() {}

  static Material of(String id) {
    Material material = ALL.get(id);
    if (material == null) {
      throw new IllegalArgumentException("no test material " + id);
    }
    return material;
  }

  private static Material.Builder base(String id, MaterialFamily family) {
    return Material.builder(id).family(family, MaterialRole.BASE);
  }

  private static void add(Material.Builder builder) {
    Material material = builder.build();
    ALL.put(material.id(), material);
  }

  private static Sourced<DefinedTemperature> t(double... ends) {
    return Sourced.of(
        new DefinedTemperature(
            TemperatureRange.ofCelsius(ends[0], ends[ends.length - 1]),
            TemperatureDefinition.NOT_STATED),
        Source.USER,
        Knowledge.READ);
  }

  private static Sourced<String> s(String text) {
    return Sourced.of(text, Source.USER, Knowledge.READ);
  }

  private static MassFractionRange range(double low, double high) {
    return new MassFractionRange(MassFraction.ofPercent(low), MassFraction.ofPercent(high));
  }
}
