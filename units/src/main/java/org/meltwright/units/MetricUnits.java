// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.ProductUnit;
import tech.units.indriya.unit.Units;

/**
 * The units of the SI and those used beside it, with short factories such as {@code grams(730)}.
 *
 * <p>Not instantiable; thread-safe.
 */
public final class MetricUnits {

  /** Kilogram, kg. */
  public static final Unit<Mass> KILOGRAM = Units.KILOGRAM;

  /** Gram, g. */
  public static final Unit<Mass> GRAM = Units.GRAM;

  /** Cubic metre, m³. */
  public static final Unit<Volume> CUBIC_METRE = Units.CUBIC_METRE;

  /** Litre, l: 0.001 m³. */
  public static final Unit<Volume> LITRE = Units.LITRE;

  /** Millilitre, ml. */
  public static final Unit<Volume> MILLILITRE = LITRE.divide(1000);

  /** Metre, m. */
  public static final Unit<Length> METRE = Units.METRE;

  /** Square metre, m². */
  public static final Unit<Area> SQUARE_METRE = Units.SQUARE_METRE;

  /** Second, s. */
  public static final Unit<Time> SECOND = Units.SECOND;

  /** Watt, W. */
  public static final Unit<Power> WATT = Units.WATT;

  /** Joule, J. */
  public static final Unit<Energy> JOULE = Units.JOULE;

  /** Pascal, Pa. */
  public static final Unit<Pressure> PASCAL = Units.PASCAL;

  /** Kilogram per cubic metre, kg/m³. */
  public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
      new ProductUnit<>(KILOGRAM.divide(CUBIC_METRE));

  /** Gram per millilitre, g/ml. */
  public static final Unit<Density> GRAM_PER_MILLILITRE =
      new ProductUnit<>(GRAM.divide(MILLILITRE));

  /** Joule per kilogram and kelvin, J/(kg K). */
  public static final Unit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
      new ProductUnit<>(JOULE.divide(KILOGRAM).divide(Units.KELVIN));

  /** Joule per kilogram, J/kg. */
  public static final Unit<SpecificEnergy> JOULE_PER_KILOGRAM =
      new ProductUnit<>(JOULE.divide(KILOGRAM));

  /** Watt per metre and kelvin, W/(m K). */
  public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
      new ProductUnit<>(WATT.divide(METRE).divide(Units.KELVIN));

  /** Watt per square metre and kelvin, W/(m² K). */
  public static final Unit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
      new ProductUnit<>(WATT.divide(SQUARE_METRE).divide(Units.KELVIN));

  /** Pascal second, Pa s. */
  public static final Unit<DynamicViscosity> PASCAL_SECOND =
      new ProductUnit<>(PASCAL.multiply(SECOND));

  private MetricUnits() {}

  /**
   * Returns a mass in grams.
   *
   * @param value the number of grams
   * @return the mass
   */
  public static Quantity<Mass> grams(double value) {
    return Quantities.getQuantity(value, GRAM);
  }

  /**
   * Returns a mass in kilograms.
   *
   * @param value the number of kilograms
   * @return the mass
   */
  public static Quantity<Mass> kilograms(double value) {
    return Quantities.getQuantity(value, KILOGRAM);
  }

  /**
   * Returns a volume in millilitres.
   *
   * @param value the number of millilitres
   * @return the volume
   */
  public static Quantity<Volume> millilitres(double value) {
    return Quantities.getQuantity(value, MILLILITRE);
  }

  /**
   * Returns a density in grams per millilitre.
   *
   * @param value the number of grams per millilitre
   * @return the density
   */
  public static Quantity<Density> gramsPerMillilitre(double value) {
    return Quantities.getQuantity(value, GRAM_PER_MILLILITRE);
  }
}
