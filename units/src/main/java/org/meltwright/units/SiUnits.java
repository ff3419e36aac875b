// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.AlternateUnit;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.ProductUnit;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.UnitDimension;

/**
 * The coherent SI units that values are held in, equal to the engine's own but built without its
 * table of all units, whose loading takes most of a program's first tenth of a second.
 */
final class SiUnits {

  static final Unit<Mass> KILOGRAM = new BaseUnit<>("kg", "Kilogram", UnitDimension.MASS);
  static final Unit<Length> METRE = new BaseUnit<>("m", "Metre", UnitDimension.LENGTH);
  static final Unit<Time> SECOND = new BaseUnit<>("s", "Second", UnitDimension.TIME);
  static final Unit<Temperature> KELVIN = new BaseUnit<>("K", "Kelvin", UnitDimension.TEMPERATURE);
  static final Unit<Temperature> CELSIUS =
      new TransformedUnit<>("°C", KELVIN, new AddConverter(273.15));

  static final Unit<Area> SQUARE_METRE = new ProductUnit<>(METRE.pow(2));
  static final Unit<Volume> CUBIC_METRE = new ProductUnit<>(METRE.pow(3));

  private static final Unit<Force> NEWTON =
      AlternateUnit.of(METRE.multiply(KILOGRAM).divide(SECOND.pow(2)), "N", "Newton");

  static final Unit<Pressure> PASCAL =
      AlternateUnit.of(NEWTON.divide(SQUARE_METRE), "Pa", "Pascal");
  static final Unit<Energy> JOULE = AlternateUnit.of(NEWTON.multiply(METRE), "J", "Joule");
  static final Unit<Power> WATT = AlternateUnit.of(JOULE.divide(SECOND), "W", "Watt");

  static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
      new ProductUnit<>(KILOGRAM.divide(CUBIC_METRE));
  static final Unit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
      new ProductUnit<>(JOULE.divide(KILOGRAM).divide(KELVIN));
  static final Unit<SpecificEnergy> JOULE_PER_KILOGRAM = new ProductUnit<>(JOULE.divide(KILOGRAM));
  static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
      new ProductUnit<>(WATT.divide(METRE).divide(KELVIN));
  static final Unit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
      new ProductUnit<>(WATT.divide(SQUARE_METRE).divide(KELVIN));
  static final Unit<DynamicViscosity> PASCAL_SECOND = new ProductUnit<>(PASCAL.multiply(SECOND));

  private SiUnits() {}

  /** Built in two steps, since composing converters costs the engine ten milliseconds. */
  static Unit<Temperature> fahrenheit() {
    Unit<Temperature> rankine =
        new TransformedUnit<>("°R", KELVIN, MultiplyConverter.ofRational(5, 9));
    return new TransformedUnit<>("°F", rankine, KELVIN, new AddConverter(459.67));
  }
}
