// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.SpecificEnergy;
import org.meltwright.units.SpecificHeatCapacity;

/**
 * What to assume of materials that state no specific heat or heat of fusion; every result lists
 * what it assumed.
 *
 * <p>Damar states no specific heat; 60 K at 1500 to 2600 J/(kg K) are assumed if the caller says
 * so:
 *
 * <pre>{@code
 * Mixture resin = Mixture.of(MaterialCatalogue.standard().require("damar"), kilograms(1));
 * TemperaturePoint room = ofCelsius(20);
 * TemperaturePoint hot = ofCelsius(80);
 * HeatDemand.of(resin, room, hot, HeatAssumptions.NONE); // throws ProblemException
 * HeatAssumptions typical = HeatAssumptions.TYPICAL;
 * HeatDemand demand = HeatDemand.of(resin, room, hot, typical);
 * demand.totalHeat().lowSi(); // 90000 J
 * demand.totalHeat().highSi(); // 156000 J
 * demand.assumed(); // [damar liquid-specific-heat]
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatAssumptions {

  private static final Source ORGANIC_HEATS =
      remembered(
          "organic-specific-heats",
          "Specific heats from resins to molten waxes, remembered from handbook tables");
  private static final Source MINERAL_HEATS =
      remembered(
          "mineral-specific-heats",
          "Specific heats from vermilion to chalk (CRC Handbook) and of organic pigments,"
              + " remembered");
  private static final Source FUSION_HEATS =
      remembered(
          "wax-heats-of-fusion",
          "Heats of fusion from candelilla wax (Dassanayake et al., JAOCS 86, 2009) to paraffin"
              + " (an encyclopaedia, remembered)");

  private static Source remembered(String id, String title) {
    return Source.of(id, title, SourceKind.HANDBOOK);
  }

  /** Nothing is assumed: a missing figure is a problem. */
  public static final HeatAssumptions NONE = new HeatAssumptions(null, null, null);

  /**
   * Wide ranges that hold the figures known of such materials.
   *
   * <p>Organic: 1500–2600 J/(kg K), from resins to molten waxes (remembered). Pigments and fillers:
   * 200–1300 J/(kg K), from vermilion 208 to chalk 834 (CRC Handbook) and organic pigments
   * (remembered). Heat of fusion: 129–220 kJ/kg, from candelilla wax (Dassanayake et al., JAOCS 86,
   * 2009) to paraffin (encyclopaedia).
   */
  public static final HeatAssumptions TYPICAL =
      new HeatAssumptions(
          new Assumption<>(
              new QuantityRange<>(QuantityKind.SPECIFIC_HEAT_CAPACITY, 1500, 2600), ORGANIC_HEATS),
          new Assumption<>(
              new QuantityRange<>(QuantityKind.SPECIFIC_HEAT_CAPACITY, 200, 1300), MINERAL_HEATS),
          new Assumption<>(
              new QuantityRange<>(QuantityKind.SPECIFIC_ENERGY, 129_000, 220_000), FUSION_HEATS));

  private final @Nullable Assumption<SpecificHeatCapacity> organic;
  private final @Nullable Assumption<SpecificHeatCapacity> mineral;
  private final @Nullable Assumption<SpecificEnergy> fusion;

  /** A range and where it comes from. */
  record Assumption<Q extends Quantity<Q>>(QuantityRange<Q> range, Source source) {

    static <Q extends Quantity<Q>> Assumption<Q> ofUser(QuantityRange<Q> range) {
      return new Assumption<>(range, Source.USER);
    }
  }

  private HeatAssumptions(
      @Nullable Assumption<SpecificHeatCapacity> organic,
      @Nullable Assumption<SpecificHeatCapacity> mineral,
      @Nullable Assumption<SpecificEnergy> fusion) {
    this.organic = organic;
    this.mineral = mineral;
    this.fusion = fusion;
  }

  /**
   * Returns a copy with a specific heat for organic materials: what melts, resins, oils.
   *
   * @param range the range
   * @return the new assumptions
   */
  public HeatAssumptions withOrganicSpecificHeat(QuantityRange<SpecificHeatCapacity> range) {
    return new HeatAssumptions(Assumption.ofUser(range), mineral, fusion);
  }

  /**
   * Returns a copy with a specific heat for pigments and fillers.
   *
   * @param range the range
   * @return the new assumptions
   */
  public HeatAssumptions withMineralSpecificHeat(QuantityRange<SpecificHeatCapacity> range) {
    return new HeatAssumptions(organic, Assumption.ofUser(range), fusion);
  }

  /**
   * Returns a copy with a heat of fusion for what melts.
   *
   * @param range the range
   * @return the new assumptions
   */
  public HeatAssumptions withHeatOfFusion(QuantityRange<SpecificEnergy> range) {
    return new HeatAssumptions(organic, mineral, Assumption.ofUser(range));
  }

  Optional<Assumption<SpecificHeatCapacity>> heat(Material material) {
    boolean isMineral =
        material.family() == MaterialFamily.PIGMENT || material.family() == MaterialFamily.FILLER;
    return Optional.ofNullable(isMineral ? mineral : organic);
  }

  Optional<Assumption<SpecificEnergy>> fusion() {
    return Optional.ofNullable(fusion);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatAssumptions that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<@Nullable Object> stated() {
    return Arrays.asList(organic, mineral, fusion);
  }

  @Override
  public String toString() {
    return "heat assumed: " + organic + ", " + mineral + ", " + fusion;
  }

  /**
   * Returns which figure is the specific heat of what does not melt: a pigment states the solid's,
   * an oil its own, and either serves.
   *
   * @param material the material
   * @return the key of the solid's specific heat, or that of the liquid's where only that may be
   *     known
   */
  public static PropertyKey<PropertyRange<SpecificHeatCapacity>> heatOfWhatStays(
      Material material) {
    return material.find(PropertyKey.SOLID_SPECIFIC_HEAT).isEmpty()
        ? PropertyKey.LIQUID_SPECIFIC_HEAT
        : PropertyKey.SOLID_SPECIFIC_HEAT;
  }
}
