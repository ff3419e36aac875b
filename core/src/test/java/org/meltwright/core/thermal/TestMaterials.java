// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import java.util.List;
import org.meltwright.core.material.DefinedTemperature;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.settling.MeltBath;
import org.meltwright.units.MaterialState;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** Materials with cited figures, for the tests of this package. */
public final class TestMaterials {

  private static final Source USP = source("usp-nf", "USP–NF, White Wax", SourceKind.STANDARD);
  private static final Source JECFA =
      source("jecfa-carnauba", "JECFA, FNP 52 Add 6 (1998), Carnauba wax", SourceKind.STANDARD);
  private static final Source BUCIO =
      source("bucio-2021", "Bucio et al., Coatings 11(3):261 (2021), abstract", SourceKind.PAPER);
  private static final Source ZHANG =
      source("zhang-2011", "Zhang et al., Procedia Engineering 18:101 (2011)", SourceKind.PAPER);
  private static final Source MERCK =
      source("merck-damar", "Merck Index, Damar", SourceKind.HANDBOOK);
  private static final Source TABLE =
      source("heater-guide", "Physical properties of non-metallic solids", SourceKind.HANDBOOK);
  private static final Source REMEMBERED =
      source("pcm-papers", "Papers on beeswax as a heat store", SourceKind.PAPER);
  private static final Source CRC =
      source("crc", "CRC Handbook of Chemistry and Physics", SourceKind.HANDBOOK);

  public static final Material BEESWAX =
      Material.builder("beeswax")
          .names("Beeswax", "Bienenwachs")
          .family(MaterialFamily.WAX, MaterialRole.BASE)
          .figure(
              PropertyKey.MELTING_RANGE,
              melting(62, 65, TemperatureDefinition.CAPILLARY_RANGE, USP))
          .figure(
              PropertyKey.MELTING_RANGE, melting(45.5, 45.5, TemperatureDefinition.ONSET, BUCIO))
          .figure(
              PropertyKey.MELTING_RANGE,
              melting(70.34, 70.34, TemperatureDefinition.DSC_PEAK, ZHANG))
          .figure(
              PropertyKey.HEAT_OF_FUSION,
              figure(QuantityKind.SPECIFIC_ENERGY, 140e3, 203.2e3, MaterialState.SOLID, ZHANG))
          .figure(
              PropertyKey.SOLID_SPECIFIC_HEAT,
              figure(
                  QuantityKind.SPECIFIC_HEAT_CAPACITY, 1900, 2400, MaterialState.SOLID, REMEMBERED))
          .figure(
              PropertyKey.LIQUID_SPECIFIC_HEAT,
              figure(
                  QuantityKind.SPECIFIC_HEAT_CAPACITY,
                  2100,
                  2600,
                  MaterialState.LIQUID,
                  REMEMBERED))
          .figure(
              PropertyKey.SOLID_CONDUCTIVITY,
              figure(QuantityKind.THERMAL_CONDUCTIVITY, 0.24, 0.24, MaterialState.SOLID, TABLE))
          .figure(
              PropertyKey.LIQUID_CONDUCTIVITY,
              figure(
                  QuantityKind.THERMAL_CONDUCTIVITY, 0.15, 0.25, MaterialState.LIQUID, REMEMBERED))
          .figure(
              PropertyKey.SOLID_DENSITY,
              figure(QuantityKind.DENSITY, 951, 970, MaterialState.SOLID, TABLE))
          .figure(
              PropertyKey.LIQUID_DENSITY,
              figure(QuantityKind.DENSITY, 820, 850, MaterialState.LIQUID, REMEMBERED))
          .build();

  public static final Material CARNAUBA =
      Material.builder("carnauba")
          .names("Carnauba wax", "Carnaubawachs")
          .family(MaterialFamily.WAX, MaterialRole.HARDENER)
          .figure(
              PropertyKey.MELTING_RANGE,
              melting(80, 86, TemperatureDefinition.CAPILLARY_RANGE, JECFA))
          .figure(
              PropertyKey.HEAT_OF_FUSION,
              figure(QuantityKind.SPECIFIC_ENERGY, 137.6e3, 137.6e3, MaterialState.SOLID, ZHANG))
          .figure(
              PropertyKey.SOLID_SPECIFIC_HEAT,
              figure(
                  QuantityKind.SPECIFIC_HEAT_CAPACITY, 1900, 2300, MaterialState.SOLID, REMEMBERED))
          .build();

  public static final Material DAMAR =
      Material.builder("damar")
          .names("Damar resin", "Dammarharz")
          .family(MaterialFamily.RESIN, MaterialRole.HARDENER)
          .figure(
              PropertyKey.MELTING_RANGE, melting(120, 150, TemperatureDefinition.NOT_STATED, MERCK))
          .figure(
              PropertyKey.DISSOLVES_FROM,
              melting(75, 90, TemperatureDefinition.NOT_STATED, Source.COMMON_PRACTICE))
          .figure(
              PropertyKey.SOLID_DENSITY,
              figure(QuantityKind.DENSITY, 1040, 1120, MaterialState.SOLID, MERCK))
          .build();

  public static final Material IRON_OXIDE =
      Material.builder("red-iron-oxide")
          .names("Red iron oxide", "Eisenoxidrot")
          .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT)
          .figure(
              PropertyKey.SOLID_SPECIFIC_HEAT,
              figure(QuantityKind.SPECIFIC_HEAT_CAPACITY, 651, 651, MaterialState.SOLID, CRC))
          .figure(
              PropertyKey.SOLID_DENSITY,
              figure(QuantityKind.DENSITY, 5100, 5250, MaterialState.SOLID, CRC))
          .build();

  public static final Material UNKNOWN_WAX =
      Material.builder("unknown-wax").family(MaterialFamily.WAX, MaterialRole.BASE).build();

  private TestMaterials() {}

  public static Composition mix(
      Material first, double firstParts, Material second, double secondParts) {
    return Composition.ofParts(List.of(first, second), firstParts, secondParts);
  }

  private static Sourced<DefinedTemperature> melting(
      double low, double high, TemperatureDefinition definition, Source source) {
    return Sourced.of(
        new DefinedTemperature(TemperatureRange.ofCelsius(low, high), definition),
        source,
        Knowledge.READ);
  }

  private static <Q extends javax.measure.Quantity<Q>> Sourced<PropertyRange<Q>> figure(
      QuantityKind<Q> kind, double low, double high, MaterialState state, Source source) {
    return Sourced.of(
        PropertyRange.of(new QuantityRange<>(kind, low, high), state), source, Knowledge.READ);
  }

  private static Source source(String id, String title, SourceKind kind) {
    return Source.of(id, title, kind);
  }

  /** A pot of melt from plain ranges, in SI units. */
  public static MeltBath pot(
      double lowDensityKilogramsPerCubicMetre,
      double highDensityKilogramsPerCubicMetre,
      double lowViscosityPascalSeconds,
      double highViscosityPascalSeconds,
      double depthMetres,
      double layerMetres,
      TemperaturePoint temperature) {
    return MeltBath.of(
        new QuantityRange<>(
            QuantityKind.DENSITY,
            lowDensityKilogramsPerCubicMetre,
            highDensityKilogramsPerCubicMetre),
        new QuantityRange<>(
            QuantityKind.DYNAMIC_VISCOSITY, lowViscosityPascalSeconds, highViscosityPascalSeconds),
        QuantityKind.LENGTH.ofSi(depthMetres),
        QuantityKind.LENGTH.ofSi(layerMetres),
        temperature);
  }
}
