// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.laws;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Density;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MaterialState;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperatureRange;

/** Materials with round figures of our own, for tests; no figure of theirs is a fact. */
public final class SampleMaterials {

  /** A soft base: 960 kg/m³ cold, 860 molten. */
  public static final Material WAX =
      melting(material("wax", MaterialFamily.WAX, MaterialRole.BASE, 960, 860), 62, 65);

  /** A hard base: 990 kg/m³ cold, 870 molten. */
  public static final Material HARD_WAX =
      melting(material("hard-wax", MaterialFamily.WAX, MaterialRole.BASE, 990, 870), 82, 86);

  /** A hardener: 1060 kg/m³ cold; its liquid density is unknown. */
  public static final Material RESIN =
      material("resin", MaterialFamily.RESIN, MaterialRole.HARDENER, 1060, 0);

  /** A heavy pigment: 4170 kg/m³; its oil absorption is unknown. */
  public static final Material WHITE =
      material("white", MaterialFamily.PIGMENT, MaterialRole.COLOURANT, 4170, 0);

  /** A light pigment: 1500 kg/m³. */
  public static final Material BLUE =
      material("blue", MaterialFamily.PIGMENT, MaterialRole.COLOURANT, 1500, 0);

  /** A drying oil: 930 kg/m³, liquid when cold. */
  public static final Material OIL =
      material("oil", MaterialFamily.DRYING_OIL, MaterialRole.OIL, 0, 930);

  /** An oil paint of the heavy pigment with 20 to 25 % of oil. */
  public static final Material WHITE_PAINT =
      builder("white-paint", MaterialFamily.OIL_PAINT, MaterialRole.COLOURANT)
          .constituent(WHITE, range(0.75, 0.80))
          .constituent(OIL, range(0.20, 0.25))
          .build();

  private SampleMaterials() {}

  /**
   * Returns all of them that have a density in every state but bulk.
   *
   * @return the materials
   */
  public static List<Material> all() {
    return List.of(WAX, HARD_WAX, RESIN, WHITE, BLUE, OIL, WHITE_PAINT);
  }

  /**
   * Returns all of them, some also as lots and as a version with another figure.
   *
   * @return the materials, all different, some of one id
   */
  public static List<Material> withLotsAndVersions() {
    List<Material> materials = new ArrayList<>(all());
    materials.add(WAX.withLot("7"));
    materials.add(WAX.withLot("8"));
    materials.add(
        melting(material("wax", MaterialFamily.WAX, MaterialRole.BASE, 950, 850), 58, 60));
    materials.add(RESIN.withLot("7"));
    return List.copyOf(materials);
  }

  /**
   * Returns a material with one density for every state.
   *
   * @param id its id
   * @param kilogramsPerCubicMetre the density
   * @return the material
   */
  public static Material withDensity(String id, double kilogramsPerCubicMetre) {
    return builder(id, MaterialFamily.OTHER, MaterialRole.BASE)
        .figure(PropertyKey.SOLID_DENSITY, density(kilogramsPerCubicMetre, MaterialState.SOLID))
        .figure(PropertyKey.LIQUID_DENSITY, density(kilogramsPerCubicMetre, MaterialState.LIQUID))
        .figure(PropertyKey.BULK_DENSITY, density(kilogramsPerCubicMetre, MaterialState.BULK))
        .build();
  }

  private static Material material(
      String id, MaterialFamily family, MaterialRole role, double solid, double liquid) {
    Material.Builder builder = builder(id, family, role);
    if (solid > 0) {
      builder.figure(PropertyKey.SOLID_DENSITY, density(solid, MaterialState.SOLID));
    }
    if (liquid > 0) {
      builder.figure(PropertyKey.LIQUID_DENSITY, density(liquid, MaterialState.LIQUID));
    }
    return builder.build();
  }

  private static Material melting(Material material, double low, double high) {
    Material.Builder builder = builder(material.id(), material.family(), material.role());
    material
        .figures(PropertyKey.SOLID_DENSITY)
        .forEach(f -> builder.figure(PropertyKey.SOLID_DENSITY, f));
    material
        .figures(PropertyKey.LIQUID_DENSITY)
        .forEach(f -> builder.figure(PropertyKey.LIQUID_DENSITY, f));
    DefinedTemperature melts =
        new DefinedTemperature(
            TemperatureRange.ofCelsius(low, high), TemperatureDefinition.CAPILLARY_RANGE);
    return builder
        .figure(PropertyKey.MELTING_RANGE, Sourced.of(melts, Source.USER, Knowledge.READ))
        .build();
  }

  private static Material.Builder builder(String id, MaterialFamily family, MaterialRole role) {
    return Material.builder(id).names(id, id).family(family, role);
  }

  private static Sourced<PropertyRange<Density>> density(double value, MaterialState state) {
    QuantityRange<Density> range = new QuantityRange<>(QuantityKind.DENSITY, value, value);
    return Sourced.of(PropertyRange.of(range, state), Source.USER, Knowledge.READ);
  }

  private static MassFractionRange range(double low, double high) {
    return new MassFractionRange(MassFraction.of(low), MassFraction.of(high));
  }
}
