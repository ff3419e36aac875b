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
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * The units of the SI and those used beside it, with short factories such as {@code grams(730)}.
 *
 * <p>Each is an exact fraction of its SI unit: BIPM, The International System of Units, 9th
 * edition, 2019; the kilocalories and the standard atmosphere: NIST Special Publication 811, 2008,
 * appendix B.8.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<Mass> wax = grams(730);
 * wax; // 730 g
 * QuantityKind.MASS.toSi(wax); // 0.73 kg
 * QuantityKind.ENERGY.toSi(kilowattHours(0.5)); // 1800000.0 J
 * QuantityFormatter.exact().format(millimetres(12.5), CENTIMETRE); // 1.25 cm
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class MetricUnits {

  static final UnitTable TABLE = new UnitTable();

  /** Kilogram, kg. */
  public static final Unit<Mass> KILOGRAM =
      TABLE.si(QuantityKind.MASS, "kilo, kilogram, Kilogramm, kilogramme");

  /** Gram, g: 0.001 kg. */
  public static final Unit<Mass> GRAM =
      TABLE.unit(QuantityKind.MASS, "g", 1, 1000, "gm, gram, Gramm, gramme");

  /** Decagram, dag, also written dkg: 0.01 kg. */
  public static final Unit<Mass> DECAGRAM =
      TABLE.unit(QuantityKind.MASS, "dag", 1, 100, "dkg, Deka, decagram, dekagram, Dekagramm");

  /** Milligram, mg: 0.000 001 kg. */
  public static final Unit<Mass> MILLIGRAM =
      TABLE.unit(QuantityKind.MASS, "mg", 1, 1_000_000, "milligram, Milligramm, milligramme");

  /** Microgram, µg: 1e-9 kg. */
  public static final Unit<Mass> MICROGRAM =
      TABLE.unit(QuantityKind.MASS, "µg", 1, 1_000_000_000, "ug, mcg, microgram, Mikrogramm");

  /** Metric carat, ct: 0.0002 kg. */
  public static final Unit<Mass> CARAT =
      TABLE.unit(QuantityKind.MASS, "ct", 1, 5000, "carat, Karat");

  /** Tonne, t: 1000 kg, also called a metric ton. */
  public static final Unit<Mass> TONNE =
      TABLE.unit(QuantityKind.MASS, "t", 1000, 1, "tonne, Tonnen, metric ton");

  /** Cubic metre, m³. */
  public static final Unit<Volume> CUBIC_METRE = TABLE.si(QuantityKind.VOLUME, "cbm");

  /** Cubic decimetre, dm³: 0.001 m³. */
  public static final Unit<Volume> CUBIC_DECIMETRE =
      TABLE.unit(QuantityKind.VOLUME, "dm³", 1, 1000);

  /** Cubic centimetre, cm³: 0.000 001 m³. */
  public static final Unit<Volume> CUBIC_CENTIMETRE =
      TABLE.unit(QuantityKind.VOLUME, "cm³", 1, 1_000_000, "ccm, cc");

  /** Cubic millimetre, mm³: 1e-9 m³. */
  public static final Unit<Volume> CUBIC_MILLIMETRE =
      TABLE.unit(QuantityKind.VOLUME, "mm³", 1, 1_000_000_000);

  /** Hectolitre, hl: 0.1 m³. */
  public static final Unit<Volume> HECTOLITRE =
      TABLE.unit(QuantityKind.VOLUME, "hl", 1, 10, "hL, hectolitre, hectoliter, Hektoliter");

  /** Litre, l: 0.001 m³. */
  public static final Unit<Volume> LITRE =
      TABLE.unit(QuantityKind.VOLUME, "l", 1, 1000, "L, ltr, litre, liter");

  /** Decilitre, dl: 0.0001 m³. */
  public static final Unit<Volume> DECILITRE =
      TABLE.unit(QuantityKind.VOLUME, "dl", 1, 10_000, "dL, decilitre, deciliter, Deziliter");

  /** Centilitre, cl: 0.000 01 m³. */
  public static final Unit<Volume> CENTILITRE =
      TABLE.unit(QuantityKind.VOLUME, "cl", 1, 100_000, "cL, centilitre, centiliter, Zentiliter");

  /** Millilitre, ml: 0.000 001 m³. */
  public static final Unit<Volume> MILLILITRE =
      TABLE.unit(QuantityKind.VOLUME, "ml", 1, 1_000_000, "mL, millilitre, milliliter");

  /** Microlitre, µl: 1e-9 m³. */
  public static final Unit<Volume> MICROLITRE =
      TABLE.unit(
          QuantityKind.VOLUME,
          "µl",
          1,
          1_000_000_000,
          "µL, ul, uL, microlitre, microliter, Mikroliter");

  /** Metric cup: 250 ml (common practice in kitchens of metric countries). */
  public static final Unit<Volume> METRIC_CUP =
      TABLE.national(QuantityKind.VOLUME, " metric", 1, 4000, "cup, cups, Tasse, Tassen");

  /** Metric tablespoon: 15 ml (common practice; 20 ml in Australia). */
  public static final Unit<Volume> METRIC_TABLESPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " metric",
          15,
          1_000_000,
          "tbsp, tablespoon, tablespoons, EL, Esslöffel");

  /** Metric teaspoon: 5 ml (common practice). */
  public static final Unit<Volume> METRIC_TEASPOON =
      TABLE.national(
          QuantityKind.VOLUME, " metric", 5, 1_000_000, "tsp, teaspoon, teaspoons, TL, Teelöffel");

  /** Metre, m. */
  public static final Unit<Length> METRE = TABLE.si(QuantityKind.LENGTH, "metre, meter");

  /** Kilometre, km: 1000 m. */
  public static final Unit<Length> KILOMETRE =
      TABLE.unit(QuantityKind.LENGTH, "km", 1000, 1, "kilometre, kilometer");

  /** Decimetre, dm: 0.1 m. */
  public static final Unit<Length> DECIMETRE =
      TABLE.unit(QuantityKind.LENGTH, "dm", 1, 10, "decimetre, decimeter, Dezimeter");

  /** Centimetre, cm: 0.01 m. */
  public static final Unit<Length> CENTIMETRE =
      TABLE.unit(QuantityKind.LENGTH, "cm", 1, 100, "centimetre, centimeter, Zentimeter");

  /** Millimetre, mm: 0.001 m. */
  public static final Unit<Length> MILLIMETRE =
      TABLE.unit(QuantityKind.LENGTH, "mm", 1, 1000, "millimetre, millimeter");

  /** Micrometre, µm: 0.000 001 m. */
  public static final Unit<Length> MICROMETRE =
      TABLE.unit(
          QuantityKind.LENGTH,
          "µm",
          1,
          1_000_000,
          "um, micrometre, micrometer, Mikrometer, micron");

  /** Square metre, m². */
  public static final Unit<Area> SQUARE_METRE = TABLE.si(QuantityKind.AREA, "qm");

  /** Square decimetre, dm²: 0.01 m². */
  public static final Unit<Area> SQUARE_DECIMETRE =
      TABLE.unit(QuantityKind.AREA, "dm²", 1, 100, "qdm");

  /** Square centimetre, cm²: 0.0001 m². */
  public static final Unit<Area> SQUARE_CENTIMETRE =
      TABLE.unit(QuantityKind.AREA, "cm²", 1, 10_000, "qcm");

  /** Square millimetre, mm²: 0.000 001 m². */
  public static final Unit<Area> SQUARE_MILLIMETRE =
      TABLE.unit(QuantityKind.AREA, "mm²", 1, 1_000_000, "qmm");

  /** Hectare, ha: 10 000 m². */
  public static final Unit<Area> HECTARE =
      TABLE.unit(QuantityKind.AREA, "ha", 10_000, 1, "hectare, Hektar");

  /** Second, s. */
  public static final Unit<Time> SECOND =
      TABLE.si(QuantityKind.TIME, "sec, second, Sek, Sekunde, Sekunden");

  /** Millisecond, ms: 0.001 s. */
  public static final Unit<Time> MILLISECOND =
      TABLE.unit(QuantityKind.TIME, "ms", 1, 1000, "millisecond, Millisekunde, Millisekunden");

  /** Minute, min: 60 s. */
  public static final Unit<Time> MINUTE =
      TABLE.unit(QuantityKind.TIME, "min", 60, 1, "minute, Minuten");

  /** Hour, h: 3600 s. */
  public static final Unit<Time> HOUR =
      TABLE.unit(QuantityKind.TIME, "h", 3600, 1, "hr, hour, Std, Stunde, Stunden");

  /** Day, d: 86 400 s. */
  public static final Unit<Time> DAY =
      TABLE.unit(QuantityKind.TIME, "d", 86_400, 1, "day, Tag, Tage, Tagen");

  /** Week: 7 days. */
  public static final Unit<Time> WEEK =
      TABLE.unit(QuantityKind.TIME, "wk", 604_800, 1, "week, Woche, Wochen");

  /** Watt, W. */
  public static final Unit<Power> WATT = TABLE.si(QuantityKind.POWER, "watt");

  /** Kilowatt, kW: 1000 W. */
  public static final Unit<Power> KILOWATT =
      TABLE.unit(QuantityKind.POWER, "kW", 1000, 1, "kilowatt");

  /** Megawatt, MW: 1 000 000 W. */
  public static final Unit<Power> MEGAWATT =
      TABLE.unit(QuantityKind.POWER, "MW", 1_000_000, 1, "megawatt");

  /** Milliwatt, mW: 0.001 W. */
  public static final Unit<Power> MILLIWATT =
      TABLE.unit(QuantityKind.POWER, "mW", 1, 1000, "milliwatt");

  /** Metric horsepower, PS: 75 kgf m/s, exactly 735.498 75 W. */
  public static final Unit<Power> METRIC_HORSEPOWER =
      TABLE.unit(
          QuantityKind.POWER,
          "PS",
          73_549_875,
          100_000,
          "metric horsepower, Pferdestärke, Pferdestärken");

  /** Joule, J. */
  public static final Unit<Energy> JOULE = TABLE.si(QuantityKind.ENERGY, "joule");

  /** Kilojoule, kJ: 1000 J. */
  public static final Unit<Energy> KILOJOULE =
      TABLE.unit(QuantityKind.ENERGY, "kJ", 1000, 1, "kilojoule");

  /** Megajoule, MJ: 1 000 000 J. */
  public static final Unit<Energy> MEGAJOULE =
      TABLE.unit(QuantityKind.ENERGY, "MJ", 1_000_000, 1, "megajoule");

  /** Watt hour, Wh: 3600 J. */
  public static final Unit<Energy> WATT_HOUR =
      TABLE.unit(QuantityKind.ENERGY, "Wh", 3600, 1, "watt hour, Wattstunde, Wattstunden");

  /** Kilowatt hour, kWh: 3 600 000 J. */
  public static final Unit<Energy> KILOWATT_HOUR =
      TABLE.unit(
          QuantityKind.ENERGY,
          "kWh",
          3_600_000,
          1,
          "kilowatt hour, Kilowattstunde, Kilowattstunden");

  /** Thermochemical kilocalorie, kcal(th): 4184 J. */
  public static final Unit<Energy> THERMOCHEMICAL_KILOCALORIE =
      TABLE.unit(QuantityKind.ENERGY, "kcal(th)", 4184, 1, "kcal_th, kcalth, kcal (th)");

  /** International Table kilocalorie, kcal(IT): 4186.8 J. */
  public static final Unit<Energy> INTERNATIONAL_TABLE_KILOCALORIE =
      TABLE.unit(QuantityKind.ENERGY, "kcal(IT)", 41_868, 10, "kcal_IT, kcalIT, kcal (IT)");

  /** Pascal, Pa. */
  public static final Unit<Pressure> PASCAL = TABLE.si(QuantityKind.PRESSURE, "pascal");

  /** Hectopascal, hPa: 100 Pa. */
  public static final Unit<Pressure> HECTOPASCAL =
      TABLE.unit(QuantityKind.PRESSURE, "hPa", 100, 1, "hectopascal, Hektopascal");

  /** Kilopascal, kPa: 1000 Pa. */
  public static final Unit<Pressure> KILOPASCAL =
      TABLE.unit(QuantityKind.PRESSURE, "kPa", 1000, 1, "kilopascal");

  /** Millibar, mbar: 100 Pa. */
  public static final Unit<Pressure> MILLIBAR =
      TABLE.unit(QuantityKind.PRESSURE, "mbar", 100, 1, "millibar");

  /** Bar, bar: 100 000 Pa. */
  public static final Unit<Pressure> BAR = TABLE.unit(QuantityKind.PRESSURE, "bar", 100_000, 1);

  /** Standard atmosphere, atm: 101 325 Pa. */
  public static final Unit<Pressure> STANDARD_ATMOSPHERE =
      TABLE.unit(QuantityKind.PRESSURE, "atm", 101_325, 1, "standard atmosphere");

  /** Kilogram per cubic metre, kg/m³. */
  public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE = TABLE.si(QuantityKind.DENSITY);

  /** Gram per millilitre, g/ml: 1000 kg/m³. */
  public static final Unit<Density> GRAM_PER_MILLILITRE =
      TABLE.unit(QuantityKind.DENSITY, "g/ml", 1000, 1);

  /** Gram per cubic centimetre, g/cm³: 1000 kg/m³. */
  public static final Unit<Density> GRAM_PER_CUBIC_CENTIMETRE =
      TABLE.unit(QuantityKind.DENSITY, "g/cm³", 1000, 1, "g/cc");

  /** Tonne per cubic metre, t/m³: 1000 kg/m³. */
  public static final Unit<Density> TONNE_PER_CUBIC_METRE =
      TABLE.unit(QuantityKind.DENSITY, "t/m³", 1000, 1);

  /** Kilogram per litre, kg/l: 1000 kg/m³. */
  public static final Unit<Density> KILOGRAM_PER_LITRE =
      TABLE.unit(QuantityKind.DENSITY, "kg/l", 1000, 1, "kg/dm³");

  /** Gram per litre, g/l: 1 kg/m³. */
  public static final Unit<Density> GRAM_PER_LITRE =
      TABLE.unit(QuantityKind.DENSITY, "g/l", 1, 1, "g/dm³, mg/ml");

  /** Milligram per litre, mg/l: 0.001 kg/m³. */
  public static final Unit<Density> MILLIGRAM_PER_LITRE =
      TABLE.unit(QuantityKind.DENSITY, "mg/l", 1, 1000);

  /** Joule per kilogram and kelvin, J/(kg K). */
  public static final Unit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
      TABLE.si(QuantityKind.SPECIFIC_HEAT_CAPACITY, "J/kg/K, J/kg K, J/(kg °C)");

  /** Kilojoule per kilogram and kelvin, kJ/(kg K): 1000 J/(kg K). */
  public static final Unit<SpecificHeatCapacity> KILOJOULE_PER_KILOGRAM_KELVIN =
      TABLE.unit(
          QuantityKind.SPECIFIC_HEAT_CAPACITY,
          "kJ/(kg K)",
          1000,
          1,
          "kJ/kg/K, kJ/kg K, kJ/(kg °C)");

  /** Joule per gram and kelvin, J/(g K): 1000 J/(kg K). */
  public static final Unit<SpecificHeatCapacity> JOULE_PER_GRAM_KELVIN =
      TABLE.unit(QuantityKind.SPECIFIC_HEAT_CAPACITY, "J/(g K)", 1000, 1, "J/g/K, J/g K, J/(g °C)");

  /** Joule per kilogram, J/kg. */
  public static final Unit<SpecificEnergy> JOULE_PER_KILOGRAM =
      TABLE.si(QuantityKind.SPECIFIC_ENERGY);

  /** Kilojoule per kilogram, kJ/kg: 1000 J/kg. */
  public static final Unit<SpecificEnergy> KILOJOULE_PER_KILOGRAM =
      TABLE.unit(QuantityKind.SPECIFIC_ENERGY, "kJ/kg", 1000, 1);

  /** Joule per gram, J/g: 1000 J/kg. */
  public static final Unit<SpecificEnergy> JOULE_PER_GRAM =
      TABLE.unit(QuantityKind.SPECIFIC_ENERGY, "J/g", 1000, 1);

  /** Watt per metre and kelvin, W/(m K). */
  public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
      TABLE.si(QuantityKind.THERMAL_CONDUCTIVITY, "W/m/K, W/m K");

  /** Milliwatt per metre and kelvin, mW/(m K): 0.001 W/(m K). */
  public static final Unit<ThermalConductivity> MILLIWATT_PER_METRE_KELVIN =
      TABLE.unit(QuantityKind.THERMAL_CONDUCTIVITY, "mW/(m K)", 1, 1000, "mW/m/K, mW/m K");

  /** Watt per square metre and kelvin, W/(m² K). */
  public static final Unit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
      TABLE.si(QuantityKind.HEAT_TRANSFER_COEFFICIENT, "W/m²/K, W/m² K");

  /** Pascal second, Pa s. */
  public static final Unit<DynamicViscosity> PASCAL_SECOND =
      TABLE.si(QuantityKind.DYNAMIC_VISCOSITY);

  /** Millipascal second, mPa s: 0.001 Pa s. */
  public static final Unit<DynamicViscosity> MILLIPASCAL_SECOND =
      TABLE.unit(QuantityKind.DYNAMIC_VISCOSITY, "mPa s", 1, 1000);

  /** Poise, P: 0.1 Pa s. */
  public static final Unit<DynamicViscosity> POISE =
      TABLE.unit(QuantityKind.DYNAMIC_VISCOSITY, "P", 1, 10, "poise");

  /** Centipoise, cP: 0.001 Pa s. */
  public static final Unit<DynamicViscosity> CENTIPOISE =
      TABLE.unit(QuantityKind.DYNAMIC_VISCOSITY, "cP", 1, 1000, "centipoise");

  /** Kelvin, K, the unit in which sums of temperature quantities come out right. */
  public static final Unit<Temperature> KELVIN = SiUnits.KELVIN;

  /**
   * Degree Celsius, °C, for quantities of others. Prefer {@link TemperaturePoint}: the units engine
   * adds degrees Celsius wrong by 273.15.
   */
  public static final Unit<Temperature> CELSIUS = SiUnits.CELSIUS;

  static {
    TABLE.shared("gr", GRAM);
    TABLE.shared("mil", MILLIMETRE);
    TABLE.also(METRIC_TABLESPOON, "EL, Esslöffel");
    TABLE.also(METRIC_TEASPOON, "TL, Teelöffel");
    TABLE.shared("ton", TONNE);
    TABLE.shared("kcal", THERMOCHEMICAL_KILOCALORIE);
    TABLE.shared("kcal", INTERNATIONAL_TABLE_KILOCALORIE);
  }

  private MetricUnits() {}

  /**
   * Returns a mass in grams.
   *
   * @param value the number of grams, finite
   * @return the mass
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Mass> grams(double value) {
    return Quantities.of(value, GRAM);
  }

  /**
   * Returns a mass in kilograms.
   *
   * @param value the number of kilograms, finite
   * @return the mass
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Mass> kilograms(double value) {
    return Quantities.of(value, KILOGRAM);
  }

  /**
   * Returns a volume in millilitres.
   *
   * @param value the number of millilitres, finite
   * @return the volume
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Volume> millilitres(double value) {
    return Quantities.of(value, MILLILITRE);
  }

  /**
   * Returns a volume in litres.
   *
   * @param value the number of litres, finite
   * @return the volume
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Volume> litres(double value) {
    return Quantities.of(value, LITRE);
  }

  /**
   * Returns a density in grams per millilitre.
   *
   * @param value the number of grams per millilitre, finite
   * @return the density
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Density> gramsPerMillilitre(double value) {
    return Quantities.of(value, GRAM_PER_MILLILITRE);
  }

  /**
   * Returns a length in millimetres.
   *
   * @param value the number of millimetres, finite
   * @return the length
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Length> millimetres(double value) {
    return Quantities.of(value, MILLIMETRE);
  }

  /**
   * Returns an area in square centimetres.
   *
   * @param value the number of square centimetres, finite
   * @return the area
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Area> squareCentimetres(double value) {
    return Quantities.of(value, SQUARE_CENTIMETRE);
  }

  /**
   * Returns a time in minutes.
   *
   * @param value the number of minutes, finite
   * @return the time
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Time> minutes(double value) {
    return Quantities.of(value, MINUTE);
  }

  /**
   * Returns a power in watts.
   *
   * @param value the number of watts, finite
   * @return the power
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Power> watts(double value) {
    return Quantities.of(value, WATT);
  }

  /**
   * Returns an energy in kilowatt hours.
   *
   * @param value the number of kilowatt hours, finite
   * @return the energy
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Energy> kilowattHours(double value) {
    return Quantities.of(value, KILOWATT_HOUR);
  }
}
