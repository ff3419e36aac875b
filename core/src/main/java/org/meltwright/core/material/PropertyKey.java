// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.Density;
import org.meltwright.units.DynamicViscosity;
import org.meltwright.units.SpecificEnergy;
import org.meltwright.units.SpecificHeatCapacity;
import org.meltwright.units.ThermalConductivity;

/**
 * The name of a property, which knows the type of its value: asking for a density gives a density
 * range.
 *
 * <p>This class is immutable and thread-safe; two keys are the same only if they are one object.
 *
 * @param <V> the type of the value
 */
@SuppressWarnings("UnusedTypeParameter") // V is what makes a look-up type-safe
public final class PropertyKey<V> {

  /** Density of the solid. */
  public static final PropertyKey<PropertyRange<Density>> SOLID_DENSITY = key("solid-density");

  /** Density of the melt, or of what is liquid at room temperature. */
  public static final PropertyKey<PropertyRange<Density>> LIQUID_DENSITY = key("liquid-density");

  /** Density of loose bulk, as scooped. */
  public static final PropertyKey<PropertyRange<Density>> BULK_DENSITY = key("bulk-density");

  /** Melting range, with its definition. */
  public static final PropertyKey<DefinedTemperature> MELTING_RANGE = key("melting-range");

  /** Softening range of what has no melting point. */
  public static final PropertyKey<DefinedTemperature> SOFTENING_RANGE = key("softening-range");

  /** Temperature from which a resin dissolves in molten wax: a lower bound only. */
  public static final PropertyKey<DefinedTemperature> DISSOLVES_FROM = key("dissolves-from");

  /** Flash point, with its definition. */
  public static final PropertyKey<DefinedTemperature> FLASH_POINT = key("flash-point");

  /** Autoignition temperature. */
  public static final PropertyKey<DefinedTemperature> AUTOIGNITION = key("autoignition");

  /** Boiling range. */
  public static final PropertyKey<DefinedTemperature> BOILING_RANGE = key("boiling-range");

  /** Temperature from which it discolours. */
  public static final PropertyKey<DefinedTemperature> DISCOLOURATION_ONSET =
      key("discolouration-onset");

  /** Temperature from which it decomposes. */
  public static final PropertyKey<DefinedTemperature> DECOMPOSITION_ONSET =
      key("decomposition-onset");

  /** Specific heat capacity of the solid. */
  public static final PropertyKey<PropertyRange<SpecificHeatCapacity>> SOLID_SPECIFIC_HEAT =
      key("solid-specific-heat");

  /** Specific heat capacity of the melt or liquid. */
  public static final PropertyKey<PropertyRange<SpecificHeatCapacity>> LIQUID_SPECIFIC_HEAT =
      key("liquid-specific-heat");

  /** Heat of fusion. */
  public static final PropertyKey<PropertyRange<SpecificEnergy>> HEAT_OF_FUSION =
      key("heat-of-fusion");

  /** Thermal conductivity of the solid. */
  public static final PropertyKey<PropertyRange<ThermalConductivity>> SOLID_CONDUCTIVITY =
      key("solid-conductivity");

  /** Thermal conductivity of the melt or liquid. */
  public static final PropertyKey<PropertyRange<ThermalConductivity>> LIQUID_CONDUCTIVITY =
      key("liquid-conductivity");

  /** Dynamic viscosity of the melt or liquid, at its temperature. */
  public static final PropertyKey<PropertyRange<DynamicViscosity>> VISCOSITY = key("viscosity");

  /** Oil that 100 g of a pigment take up, in g per 100 g. */
  public static final PropertyKey<NumberRange> OIL_ABSORPTION = key("oil-absorption");

  /** Share by mass that stays behind when a resin is dissolved. */
  public static final PropertyKey<MassFractionRange> INSOLUBLES = key("insolubles");

  /** Whether it can burn: "burns" or "does not burn". */
  public static final PropertyKey<String> COMBUSTIBILITY = key("combustibility");

  private final String id;

  private static <V> PropertyKey<V> key(String id) {
    return new PropertyKey<>(id);
  }

  private PropertyKey(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, words joined by hyphens, for example {@code solid-density}
   */
  public String id() {
    return id;
  }

  @Override
  public String toString() {
    return id;
  }
}
