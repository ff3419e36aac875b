// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.quantity.Quantities;

/**
 * A kind of quantity, and the door of the library: a quantity in, one {@code double} in the kind's
 * SI unit out, and back.
 *
 * <p>Values of this library hold {@code double}s in one stated SI unit and meet {@link Quantity}
 * only here. For example {@code MASS.toSi(grams(730))} is 0.73. Temperature has its own types,
 * {@link TemperaturePoint} and {@link TemperatureDifference}, since a point and a difference
 * convert in two ways.
 *
 * <p>This class is immutable and thread-safe.
 *
 * @param <Q> the kind as a type
 */
public final class QuantityKind<Q extends Quantity<Q>> {

  /** Mass, in kilograms. */
  public static final QuantityKind<Mass> MASS = new QuantityKind<>("mass", MetricUnits.KILOGRAM);

  /** Volume, in cubic metres. */
  public static final QuantityKind<Volume> VOLUME =
      new QuantityKind<>("volume", MetricUnits.CUBIC_METRE);

  /** Length, in metres. */
  public static final QuantityKind<Length> LENGTH = new QuantityKind<>("length", MetricUnits.METRE);

  /** Area, in square metres. */
  public static final QuantityKind<Area> AREA =
      new QuantityKind<>("area", MetricUnits.SQUARE_METRE);

  /** Time, in seconds. */
  public static final QuantityKind<Time> TIME = new QuantityKind<>("time", MetricUnits.SECOND);

  /** Power, in watts. */
  public static final QuantityKind<Power> POWER = new QuantityKind<>("power", MetricUnits.WATT);

  /** Energy, in joules. */
  public static final QuantityKind<Energy> ENERGY = new QuantityKind<>("energy", MetricUnits.JOULE);

  /** Pressure, in pascals. */
  public static final QuantityKind<Pressure> PRESSURE =
      new QuantityKind<>("pressure", MetricUnits.PASCAL);

  /** Density, in kilograms per cubic metre. */
  public static final QuantityKind<Density> DENSITY =
      new QuantityKind<>("density", MetricUnits.KILOGRAM_PER_CUBIC_METRE);

  /** Specific heat capacity, in joules per kilogram and kelvin. */
  public static final QuantityKind<SpecificHeatCapacity> SPECIFIC_HEAT_CAPACITY =
      new QuantityKind<>("specific-heat-capacity", MetricUnits.JOULE_PER_KILOGRAM_KELVIN);

  /** Specific energy (heat of fusion, say), in joules per kilogram. */
  public static final QuantityKind<SpecificEnergy> SPECIFIC_ENERGY =
      new QuantityKind<>("specific-energy", MetricUnits.JOULE_PER_KILOGRAM);

  /** Thermal conductivity, in watts per metre and kelvin. */
  public static final QuantityKind<ThermalConductivity> THERMAL_CONDUCTIVITY =
      new QuantityKind<>("thermal-conductivity", MetricUnits.WATT_PER_METRE_KELVIN);

  /** Heat transfer coefficient, in watts per square metre and kelvin. */
  public static final QuantityKind<HeatTransferCoefficient> HEAT_TRANSFER_COEFFICIENT =
      new QuantityKind<>("heat-transfer-coefficient", MetricUnits.WATT_PER_SQUARE_METRE_KELVIN);

  /** Dynamic viscosity, in pascal seconds. */
  public static final QuantityKind<DynamicViscosity> DYNAMIC_VISCOSITY =
      new QuantityKind<>("dynamic-viscosity", MetricUnits.PASCAL_SECOND);

  private final String id;
  private final Unit<Q> siUnit;
  private final Map<Unit<?>, UnitConverter> converters = new ConcurrentHashMap<>();

  private QuantityKind(String id, Unit<Q> siUnit) {
    this.id = id;
    this.siUnit = siUnit;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, words joined by hyphens, for example {@code specific-energy}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the kind's name with its article.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "a mass" or "eine Masse"
   */
  public String name(Locale locale) {
    return Messages.beside(QuantityKind.class).text("kind." + id, locale);
  }

  /**
   * Returns the unit that values of this kind are held in.
   *
   * @return the coherent SI unit
   */
  public Unit<Q> siUnit() {
    return siUnit;
  }

  /**
   * Turns a quantity into a number in the SI unit.
   *
   * @param quantity the quantity, in any unit of this kind
   * @return its value in {@link #siUnit()}, finite
   * @throws ProblemException if the value is not finite
   */
  public double toSi(Quantity<Q> quantity) {
    return toSi(quantity.getValue().doubleValue(), quantity.getUnit());
  }

  /**
   * Turns a number in a unit into a number in the SI unit.
   *
   * @param value the number
   * @param unit its unit
   * @return the value in {@link #siUnit()}, finite
   * @throws ProblemException if the value is not finite
   */
  public double toSi(double value, Unit<Q> unit) {
    double si =
        unit == siUnit
            ? value
            : converters.computeIfAbsent(unit, u -> unit.getConverterTo(siUnit)).convert(value);
    return UnitsProblem.requireFinite(si, id);
  }

  /**
   * Turns a number in the SI unit into a quantity.
   *
   * @param si the value in {@link #siUnit()}
   * @return the quantity in the SI unit
   */
  public Quantity<Q> ofSi(double si) {
    return Quantities.getQuantity(si, siUnit);
  }

  /**
   * Turns a number in the SI unit into a number in another unit.
   *
   * @param si the value in {@link #siUnit()}
   * @param unit the unit wanted
   * @return the number in that unit
   */
  public double fromSi(double si, Unit<Q> unit) {
    return siUnit.getConverterTo(unit).convert(si);
  }

  @Override
  public String toString() {
    return id;
  }
}
