// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * The imperial units: volumes of the imperial gallon, and the masses that differ from those of the
 * United States.
 *
 * <p>Each is an exact fraction of its SI unit: 1 imperial gallon = 4.546 09 l (United Kingdom,
 * Units of Measurement Regulations 1995, schedule). A bare "cup", "pint" or "fl oz" is no unit: the
 * country belongs to the name.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityParser parser = QuantityParser.localeFree();
 * Quantity<Volume> pint = parser.parseVolume("1 pt imp");
 * QuantityKind.VOLUME.fromSi(QuantityKind.VOLUME.toSi(pint), MILLILITRE); // 568.26125 ml
 * QuantityKind.MASS.toSi(1, ImperialUnits.STONE); // 6.35029318 kg
 * // the country belongs to the name
 * parser.parseVolume("1 pint"); // throws ProblemException
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class ImperialUnits {

  static final UnitTable TABLE = new UnitTable();

  /** Avoirdupois ounce, oz: the same as {@link UsCustomaryUnits#OUNCE}. */
  public static final Unit<Mass> OUNCE = UsCustomaryUnits.OUNCE;

  /** Avoirdupois pound, lb: the same as {@link UsCustomaryUnits#POUND}. */
  public static final Unit<Mass> POUND = UsCustomaryUnits.POUND;

  /** Stone, st: 14 lb. */
  public static final Unit<Mass> STONE =
      TABLE.unit(QuantityKind.MASS, "st", 635_029_318, 100_000_000, "stone");

  /** Long ton: 2240 lb. */
  public static final Unit<Mass> LONG_TON =
      TABLE.unit(
          QuantityKind.MASS, "long ton", 101_604_690_880L, 100_000_000, "imperial ton, UK ton");

  /** Imperial teaspoon: 1/6 imperial fluid ounce, about 4.736 ml (common practice, not statute). */
  public static final Unit<Volume> TEASPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " imp",
          454_609,
          96_000_000_000L,
          "tsp, teaspoon, teaspoons, TL, Teelöffel");

  /**
   * Imperial tablespoon: 1/2 imperial fluid ounce, about 14.21 ml (common practice, not statute).
   */
  public static final Unit<Volume> TABLESPOON =
      TABLE.national(
          QuantityKind.VOLUME,
          " imp",
          454_609,
          32_000_000_000L,
          "tbsp, tablespoon, tablespoons, EL, Esslöffel");

  /** Imperial fluid ounce: 1/160 imperial gallon, about 28.413 ml; a volume, not a mass. */
  public static final Unit<Volume> FLUID_OUNCE =
      TABLE.national(
          QuantityKind.VOLUME,
          " imp",
          454_609,
          16_000_000_000L,
          "fl oz, floz, fluid ounce, fluid ounces, Flüssigunze, Flüssigunzen");

  /** Imperial cup: 1/2 imperial pint, about 284.13 ml (common practice, not statute). */
  public static final Unit<Volume> CUP =
      TABLE.national(
          QuantityKind.VOLUME, " imp", 454_609, 1_600_000_000, "cup, cups, Tasse, Tassen");

  /** Imperial pint: 1/8 imperial gallon, about 568.26 ml. */
  public static final Unit<Volume> PINT =
      TABLE.national(QuantityKind.VOLUME, " imp", 454_609, 800_000_000, "pt, pint, pints");

  /** Imperial quart: 1/4 imperial gallon, about 1136.5 ml. */
  public static final Unit<Volume> QUART =
      TABLE.national(QuantityKind.VOLUME, " imp", 454_609, 400_000_000, "qt, quart, quarts");

  /** Imperial gallon: exactly 4.546 09 l. */
  public static final Unit<Volume> GALLON =
      TABLE.national(
          QuantityKind.VOLUME,
          " imp",
          454_609,
          100_000_000,
          "gal, gallon, gallons, Gallone, Gallonen");

  /** Pound per imperial gallon, about 99.776 kg/m³. */
  public static final Unit<Density> POUND_PER_GALLON =
      TABLE.unit(QuantityKind.DENSITY, "lb/gal imp", 45_359_237, 454_609, "lb/imp gal, lb/UK gal");

  static {
    TABLE.shared("ton", LONG_TON);
    TABLE.shared("lb/gal", POUND_PER_GALLON);
  }

  private ImperialUnits() {}
}
