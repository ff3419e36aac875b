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
import javax.measure.quantity.Volume;

/**
 * The units of the United States: the pound and the inch with their multiples, kitchen volumes, and
 * those of food labels.
 *
 * <p>Each is an exact fraction of its SI unit: 1 lb = 0.453 592 37 kg, 1 in = 25.4 mm, 1 US gallon
 * = 231 in³ (NIST Handbook 44, appendix C, 2024). A bare "cup", "pint" or "fl oz" is no unit: the
 * country belongs to the name.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Quantity<Mass> pound = UsCustomaryUnits.pounds(1);
 * QuantityKind.MASS.toSi(pound); // 0.45359237 kg
 * // an ounce is a mass, a fluid ounce a volume
 * QuantityKind.MASS.fromSi(0.45359237, UsCustomaryUnits.OUNCE); // 16.0000 oz
 * Quantity<Volume> cup = QuantityParser.localeFree().parseVolume("1 cup US");
 * QuantityKind.VOLUME.fromSi(QuantityKind.VOLUME.toSi(cup), MILLILITRE); // 236.5882365 ml
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class UsCustomaryUnits {

  static final UnitTable TABLE = new UnitTable();

  /**
   * Grain: 1/7000 lb, exactly 64.798 91 mg; its symbol gr is not read, since much of Europe writes
   * it for gram.
   */
  public static final Unit<Mass> GRAIN =
      TABLE.unit(QuantityKind.MASS, "grain", 6_479_891, 100_000_000_000L, "");

  /** Avoirdupois ounce, oz: 1/16 lb, a mass; the fluid ounce is a volume. */
  public static final Unit<Mass> OUNCE =
      TABLE.unit(QuantityKind.MASS, "oz", 45_359_237, 1_600_000_000, "ounce, Unze");

  /** Troy ounce, oz t: 480 grains, exactly 31.103 476 8 g. */
  public static final Unit<Mass> TROY_OUNCE =
      TABLE.unit(
          QuantityKind.MASS,
          "oz t",
          311_034_768,
          10_000_000_000L,
          "ozt, troy ounce, troy oz, oz troy, Feinunze");

  /** Avoirdupois pound, lb: exactly 0.453 592 37 kg. */
  public static final Unit<Mass> POUND =
      TABLE.unit(QuantityKind.MASS, "lb", 45_359_237, 100_000_000, "pound");

  /** Short ton: 2000 lb. */
  public static final Unit<Mass> SHORT_TON =
      TABLE.unit(QuantityKind.MASS, "short ton", 90_718_474_000L, 100_000_000, "ton US, US ton");

  /** Cubic inch, in³: exactly 16.387 064 cm³. */
  public static final Unit<Volume> CUBIC_INCH =
      TABLE.unit(QuantityKind.VOLUME, "in³", 16_387_064, 1_000_000_000_000L, "");

  /** Cubic foot, ft³: 1728 in³. */
  public static final Unit<Volume> CUBIC_FOOT =
      TABLE.unit(QuantityKind.VOLUME, "ft³", 28_316_846_592L, 1_000_000_000_000L, "");

  /** Cubic yard, yd³: 27 ft³. */
  public static final Unit<Volume> CUBIC_YARD =
      TABLE.unit(QuantityKind.VOLUME, "yd³", 764_554_857_984L, 1_000_000_000_000L, "");

  /** US teaspoon: 1/768 US gallon, about 4.929 ml. */
  public static final Unit<Volume> TEASPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " US",
          3_785_411_784L,
          768_000_000_000_000L,
          "tsp, teaspoon, teaspoons, TL, Teelöffel");

  /** US tablespoon: 1/256 US gallon, about 14.787 ml. */
  public static final Unit<Volume> TABLESPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " US",
          3_785_411_784L,
          256_000_000_000_000L,
          "tbsp, tablespoon, tablespoons, EL, Esslöffel");

  /** US fluid ounce: 1/128 US gallon, about 29.574 ml; a volume, not a mass. */
  public static final Unit<Volume> FLUID_OUNCE =
      TABLE.national(
          QuantityKind.VOLUME,
          " US",
          3_785_411_784L,
          128_000_000_000_000L,
          "fl oz, floz, fluid ounce, fluid ounces, Flüssigunze, Flüssigunzen");

  /** US cup: 1/16 US gallon, about 236.59 ml. */
  public static final Unit<Volume> CUP =
      TABLE.national(
          QuantityKind.VOLUME,
          " US",
          3_785_411_784L,
          16_000_000_000_000L,
          "cup, cups, Tasse, Tassen");

  /** US liquid pint: 1/8 US gallon, about 473.18 ml. */
  public static final Unit<Volume> PINT =
      TABLE.national(
          QuantityKind.VOLUME, " US", 3_785_411_784L, 8_000_000_000_000L, "pt, pint, pints");

  /** US liquid quart: 1/4 US gallon, about 946.35 ml. */
  public static final Unit<Volume> QUART =
      TABLE.national(
          QuantityKind.VOLUME, " US", 3_785_411_784L, 4_000_000_000_000L, "qt, quart, quarts");

  /** US gallon: 231 in³, exactly 3.785 411 784 l. */
  public static final Unit<Volume> GALLON =
      TABLE.national(
          QuantityKind.VOLUME,
          " US",
          3_785_411_784L,
          1_000_000_000_000L,
          "gal, gallon, gallons, Gallone, Gallonen");

  /** Teaspoon on US food labels: 5 ml (21 CFR 101.9(b)(5)(viii)). */
  public static final Unit<Volume> LABEL_TEASPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " US label",
          5,
          1_000_000,
          "tsp, teaspoon, teaspoons, TL, Teelöffel");

  /** Tablespoon on US food labels: 15 ml (21 CFR 101.9(b)(5)(viii)). */
  public static final Unit<Volume> LABEL_TABLESPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " US label",
          15,
          1_000_000,
          "tbsp, tablespoon, tablespoons, EL, Esslöffel");

  /** Fluid ounce on US food labels: 30 ml (21 CFR 101.9(b)(5)(viii)). */
  public static final Unit<Volume> LABEL_FLUID_OUNCE =
      TABLE.national(
          QuantityKind.VOLUME,
          " US label",
          30,
          1_000_000,
          "fl oz, floz, fluid ounce, fluid ounces, Flüssigunze, Flüssigunzen");

  /** Cup on US food labels: 240 ml (21 CFR 101.9(b)(5)(viii)). */
  public static final Unit<Volume> LABEL_CUP =
      TABLE.national(QuantityKind.VOLUME, " US label", 240, 1_000_000, "cup, cups, Tasse, Tassen");

  /**
   * Thou, also called a mil: 0.001 in, exactly 25.4 µm; a bare mil is not read, since people say it
   * for a millimetre too.
   */
  public static final Unit<Length> THOU =
      TABLE.unit(QuantityKind.LENGTH, "thou", 254, 10_000_000, "");

  /** Inch, in: exactly 25.4 mm. */
  public static final Unit<Length> INCH =
      TABLE.unit(QuantityKind.LENGTH, "in", 254, 10_000, "inch, inches, Zoll, \", ″, ”, ''");

  /** Foot, ft: 12 in, exactly 0.3048 m. */
  public static final Unit<Length> FOOT =
      TABLE.unit(QuantityKind.LENGTH, "ft", 3048, 10_000, "foot, feet, Fuß, Fuss, ', ′");

  /** Yard, yd: 3 ft, exactly 0.9144 m. */
  public static final Unit<Length> YARD =
      TABLE.unit(QuantityKind.LENGTH, "yd", 9144, 10_000, "yard");

  /** Square inch, in²: exactly 6.4516 cm². */
  public static final Unit<Area> SQUARE_INCH =
      TABLE.unit(QuantityKind.AREA, "in²", 64_516, 100_000_000, "");

  /** Square foot, ft²: 144 in². */
  public static final Unit<Area> SQUARE_FOOT =
      TABLE.unit(QuantityKind.AREA, "ft²", 9_290_304, 100_000_000, "");

  /** Square yard, yd²: 9 ft². */
  public static final Unit<Area> SQUARE_YARD =
      TABLE.unit(QuantityKind.AREA, "yd²", 83_612_736, 100_000_000, "");

  /** International acre: 4840 yd², exactly 4046.856 422 4 m². */
  public static final Unit<Area> ACRE =
      TABLE.unit(QuantityKind.AREA, "acre", 40_468_564_224L, 10_000_000, "");

  /** Pound per cubic foot, lb/ft³, about 16.018 kg/m³. */
  public static final Unit<Density> POUND_PER_CUBIC_FOOT =
      TABLE.unit(QuantityKind.DENSITY, "lb/ft³", 453_592_370_000L, 28_316_846_592L, "lb/cu ft");

  /** Pound per cubic inch, lb/in³, about 27 680 kg/m³. */
  public static final Unit<Density> POUND_PER_CUBIC_INCH =
      TABLE.unit(QuantityKind.DENSITY, "lb/in³", 453_592_370_000L, 16_387_064, "lb/cu in");

  /** Pound per US gallon, about 119.83 kg/m³. */
  public static final Unit<Density> POUND_PER_GALLON =
      TABLE.unit(QuantityKind.DENSITY, "lb/gal US", 453_592_370_000L, 3_785_411_784L, "lb/US gal");

  /** Ounce per US fluid ounce, about 958.61 kg/m³. */
  public static final Unit<Density> OUNCE_PER_FLUID_OUNCE =
      TABLE.unit(
          QuantityKind.DENSITY, "oz/fl oz US", 3_628_738_960_000L, 3_785_411_784L, "oz/US fl oz");

  /** International Table British thermal unit, Btu(IT): exactly 1055.055 852 62 J. */
  public static final Unit<Energy> INTERNATIONAL_TABLE_BTU =
      TABLE.unit(
          QuantityKind.ENERGY,
          "Btu(IT)",
          105_505_585_262L,
          100_000_000,
          "BtuIT, Btu_IT, Btu (IT), BTU(IT), BTU_IT");

  /** Thermochemical British thermal unit, Btu(th): about 1054.350 J. */
  public static final Unit<Energy> THERMOCHEMICAL_BTU =
      TABLE.unit(
          QuantityKind.ENERGY,
          "Btu(th)",
          948_915_238_040L,
          900_000_000,
          "Btu_th, Btu (th), BTU(th), BTU_th");

  /** International Table British thermal unit per hour, about 0.293 07 W. */
  public static final Unit<Power> INTERNATIONAL_TABLE_BTU_PER_HOUR =
      TABLE.unit(
          QuantityKind.POWER, "Btu(IT)/h", 105_505_585_262L, 360_000_000_000L, "BtuIT/h, Btu_IT/h");

  /** Pound-force per square inch, psi, about 6894.8 Pa. */
  public static final Unit<Pressure> POUND_FORCE_PER_SQUARE_INCH =
      TABLE.unit(QuantityKind.PRESSURE, "psi", 44_482_216_152_605L, 6_451_600_000L, "lbf/in²");

  /** International Table British thermal unit per pound: exactly 2326 J/kg. */
  public static final Unit<SpecificEnergy> INTERNATIONAL_TABLE_BTU_PER_POUND =
      TABLE.unit(QuantityKind.SPECIFIC_ENERGY, "Btu(IT)/lb", 2326, 1, "BtuIT/lb, Btu_IT/lb");

  /**
   * International Table British thermal unit per pound and Fahrenheit degree: exactly 4186.8 J/(kg
   * K).
   */
  public static final Unit<SpecificHeatCapacity> INTERNATIONAL_TABLE_BTU_PER_POUND_FAHRENHEIT =
      TABLE.unit(
          QuantityKind.SPECIFIC_HEAT_CAPACITY,
          "Btu(IT)/(lb °F)",
          41_868,
          10,
          "BtuIT/(lb °F), Btu_IT/(lb °F), Btu(IT)/lb/°F");

  /**
   * International Table British thermal unit per hour, foot and Fahrenheit degree, about 1.7307
   * W/(m K).
   */
  public static final Unit<ThermalConductivity> INTERNATIONAL_TABLE_BTU_PER_HOUR_FOOT_FAHRENHEIT =
      TABLE.unit(
          QuantityKind.THERMAL_CONDUCTIVITY,
          "Btu(IT)/(h ft °F)",
          949_550_267_358L,
          548_640_000_000L,
          "BtuIT/(h ft °F), Btu_IT/(h ft °F)");

  /**
   * International Table British thermal unit per hour, square foot and Fahrenheit degree, about
   * 5.6783 W/(m² K).
   */
  public static final Unit<HeatTransferCoefficient>
      INTERNATIONAL_TABLE_BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT =
          TABLE.unit(
              QuantityKind.HEAT_TRANSFER_COEFFICIENT,
              "Btu(IT)/(h ft² °F)",
              949_550_267_358L,
              167_225_472_000L,
              "BtuIT/(h ft² °F), Btu_IT/(h ft² °F)");

  /**
   * Degree Fahrenheit, °F, for quantities of others: K = (°F + 459.67) × 5/9. Prefer {@link
   * TemperaturePoint#ofFahrenheit}.
   */
  public static final Unit<Temperature> FAHRENHEIT = SiUnits.fahrenheit();

  static {
    TABLE.shared("gr", GRAIN);
    TABLE.shared("mil", THOU);
    TABLE.shared("ton", SHORT_TON);
    TABLE.shared("lb/gal", POUND_PER_GALLON);
    TABLE.shared("oz/fl oz", OUNCE_PER_FLUID_OUNCE);
    TABLE.shared("Btu", INTERNATIONAL_TABLE_BTU);
    TABLE.shared("Btu", THERMOCHEMICAL_BTU);
  }

  private UsCustomaryUnits() {}

  /**
   * Returns a mass in pounds.
   *
   * @param value the number of pounds, finite
   * @return the mass
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Mass> pounds(double value) {
    return Quantities.of(value, POUND);
  }

  /**
   * Returns a mass in avoirdupois ounces.
   *
   * @param value the number of avoirdupois ounces, finite
   * @return the mass
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Mass> ounces(double value) {
    return Quantities.of(value, OUNCE);
  }

  /**
   * Returns a volume in US fluid ounces.
   *
   * @param value the number of US fluid ounces, finite
   * @return the volume
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Volume> fluidOunces(double value) {
    return Quantities.of(value, FLUID_OUNCE);
  }

  /**
   * Returns a length in inches.
   *
   * @param value the number of inches, finite
   * @return the length
   * @throws ProblemException if the number is not finite
   */
  public static Quantity<Length> inches(double value) {
    return Quantities.of(value, INCH);
  }
}
