// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
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
import org.jspecify.annotations.Nullable;

/**
 * A kind of quantity, and the door of the library: a quantity in, one {@code double} in the kind's
 * SI unit out, and back.
 *
 * <p>Values of this library hold {@code double}s in one stated SI unit and meet {@link Quantity}
 * only here. For example {@code MASS.toSi(grams(730))} is 0.73. Temperature has its own types,
 * {@link TemperaturePoint} and {@link TemperatureDifference}, since a point and a difference
 * convert in two ways.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityKind.MASS.toSi(grams(730)); // 0.73 kg
 * QuantityKind.MASS.ofSi(0.73); // 0.73 kg
 * // a number in one unit, asked for in another
 * double litres = QuantityKind.VOLUME.fromSi(0.00075, LITRE); // 0.75 l
 * QuantityKind.of(KILOWATT).name(Locale.ENGLISH); // a power
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 *
 * <p>Compared by identity: there is one of each kind.
 *
 * @param <Q> the kind as a type
 */
public final class QuantityKind<Q extends Quantity<Q>> {

  /** Mass, in kilograms. */
  public static final QuantityKind<Mass> MASS = new QuantityKind<>("mass", "kg", SiUnits.KILOGRAM);

  /** Volume, in cubic metres. */
  public static final QuantityKind<Volume> VOLUME =
      new QuantityKind<>("volume", "m³", SiUnits.CUBIC_METRE);

  /** Length, in metres. */
  public static final QuantityKind<Length> LENGTH =
      new QuantityKind<>("length", "m", SiUnits.METRE);

  /** Area, in square metres. */
  public static final QuantityKind<Area> AREA =
      new QuantityKind<>("area", "m²", SiUnits.SQUARE_METRE);

  /** Time, in seconds. */
  public static final QuantityKind<Time> TIME = new QuantityKind<>("time", "s", SiUnits.SECOND);

  /** Power, in watts. */
  public static final QuantityKind<Power> POWER = new QuantityKind<>("power", "W", SiUnits.WATT);

  /** Energy, in joules. */
  public static final QuantityKind<Energy> ENERGY =
      new QuantityKind<>("energy", "J", SiUnits.JOULE);

  /** Pressure, in pascals. */
  public static final QuantityKind<Pressure> PRESSURE =
      new QuantityKind<>("pressure", "Pa", SiUnits.PASCAL);

  /** Density, in kilograms per cubic metre. */
  public static final QuantityKind<Density> DENSITY =
      new QuantityKind<>("density", "kg/m³", SiUnits.KILOGRAM_PER_CUBIC_METRE);

  /** Specific heat capacity, in joules per kilogram and kelvin. */
  public static final QuantityKind<SpecificHeatCapacity> SPECIFIC_HEAT_CAPACITY =
      new QuantityKind<>("specific-heat-capacity", "J/(kg K)", SiUnits.JOULE_PER_KILOGRAM_KELVIN);

  /** Specific energy (heat of fusion, say), in joules per kilogram. */
  public static final QuantityKind<SpecificEnergy> SPECIFIC_ENERGY =
      new QuantityKind<>("specific-energy", "J/kg", SiUnits.JOULE_PER_KILOGRAM);

  /** Thermal conductivity, in watts per metre and kelvin. */
  public static final QuantityKind<ThermalConductivity> THERMAL_CONDUCTIVITY =
      new QuantityKind<>("thermal-conductivity", "W/(m K)", SiUnits.WATT_PER_METRE_KELVIN);

  /** Heat transfer coefficient, in watts per square metre and kelvin. */
  public static final QuantityKind<HeatTransferCoefficient> HEAT_TRANSFER_COEFFICIENT =
      new QuantityKind<>(
          "heat-transfer-coefficient", "W/(m² K)", SiUnits.WATT_PER_SQUARE_METRE_KELVIN);

  /** Dynamic viscosity, in pascal seconds. */
  public static final QuantityKind<DynamicViscosity> DYNAMIC_VISCOSITY =
      new QuantityKind<>("dynamic-viscosity", "Pa s", SiUnits.PASCAL_SECOND);

  private static final List<QuantityKind<?>> ALL =
      List.of(
          MASS,
          VOLUME,
          LENGTH,
          AREA,
          TIME,
          POWER,
          ENERGY,
          PRESSURE,
          DENSITY,
          SPECIFIC_HEAT_CAPACITY,
          SPECIFIC_ENERGY,
          THERMAL_CONDUCTIVITY,
          HEAT_TRANSFER_COEFFICIENT,
          DYNAMIC_VISCOSITY);

  private final String id;
  private final String noun;
  private final Unit<Q> siUnit;
  private final UnitDefinition<Q> siDefinition;
  private final UnitFactors<Q> factors = new UnitFactors<>(this);

  /**
   * Returns all kinds.
   *
   * @return an unmodifiable list, mass first
   */
  public static List<QuantityKind<?>> all() {
    return ALL;
  }

  @SuppressWarnings("ThisEscapedInObjectConstruction")
  private QuantityKind(String id, String siSymbol, Unit<Q> siUnit) {
    this.id = id;
    this.noun = id.replace('-', ' ');
    this.siUnit = siUnit;
    this.siDefinition = UnitDefinition.si(this, siSymbol, siUnit);
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
   * <p>A number of more digits than a {@code double} holds, in a unit of this library, is converted
   * exactly and rounded once.
   *
   * @param quantity the quantity, in any unit of this kind
   * @return its value in {@link #siUnit()}, finite
   * @throws ProblemException if the value is not finite or the unit is of another kind
   */
  public double toSi(Quantity<Q> quantity) {
    Number value = quantity.getValue();
    BigDecimal precise = ManyDigits.of(value);
    if (precise != null) {
      UnitDefinition<Q> definition = definition(quantity.getUnit());
      if (definition != null) {
        return UnitsProblem.CHECK.finite(definition.toSi(precise), noun);
      }
    }
    return toSi(value.doubleValue(), quantity.getUnit());
  }

  /**
   * Turns a number in a unit into a number in the SI unit.
   *
   * @param value the number
   * @param unit its unit
   * @return the value in {@link #siUnit()}, finite
   * @throws ProblemException if the value is not finite or the unit is of another kind
   */
  public double toSi(double value, Unit<Q> unit) {
    double si = unit == siUnit ? value : factors.get(unit).toSi(value);
    return UnitsProblem.CHECK.finite(si, noun);
  }

  /**
   * Returns a quantity as a number in a unit: the one step from a quantity to plain arithmetic.
   *
   * @param quantity the quantity, in any unit of this kind
   * @param unit the unit wanted
   * @return the number in that unit, finite
   * @throws ProblemException if the value is not finite or a unit is of another kind
   */
  public double in(Quantity<Q> quantity, Unit<Q> unit) {
    return quantity.getUnit() == unit
        ? UnitsProblem.CHECK.finite(quantity.getValue().doubleValue(), noun)
        : fromSi(toSi(quantity), unit);
  }

  /**
   * Turns a number in the SI unit into a quantity.
   *
   * @param si the value in {@link #siUnit()}, finite
   * @return the quantity in the SI unit
   * @throws ProblemException if the value is not finite
   */
  public Quantity<Q> ofSi(double si) {
    return Quantities.of(si, siUnit);
  }

  /**
   * Turns a number in the SI unit into a number in another unit.
   *
   * @param si the value in {@link #siUnit()}
   * @param unit the unit wanted
   * @return the number in that unit
   * @throws ProblemException if the unit is of another kind
   */
  public double fromSi(double si, Unit<Q> unit) {
    return unit == siUnit ? si : factors.get(unit).fromSi(si);
  }

  /**
   * Returns the kind of a unit, by its dimension.
   *
   * @param <Q> the kind as a type
   * @param unit the unit, ours or another's
   * @return the kind
   * @throws ProblemException if no kind has its dimension
   */
  @SuppressWarnings("unchecked") // the dimension decides the kind's type
  public static <Q extends Quantity<Q>> QuantityKind<Q> of(Unit<Q> unit) {
    for (QuantityKind<?> kind : ALL) {
      if (kind.siUnit.getDimension().equals(unit.getDimension())) {
        return (QuantityKind<Q>) kind;
      }
    }
    throw new ProblemException(UnitProblems.noSymbol(unit, "quantity"));
  }

  /** The definition of a unit, or of the unit of ours that a unit of others equals. */
  UnitDefinition<Q> known(Unit<Q> unit) {
    UnitDefinition<Q> definition = find(unit);
    if (definition == null) {
      throw new ProblemException(
          UnitProblems.noSymbol(unit, id).with("units", UnitProblems.units(this)));
    }
    return definition;
  }

  /** Whether a unit of this kind, ours or another's, is one that text can name. */
  boolean hasSymbol(Unit<Q> unit) {
    return find(unit) != null;
  }

  @SuppressWarnings("unchecked") // a unit of this kind is a unit of its type
  private @Nullable UnitDefinition<Q> find(Unit<Q> unit) {
    UnitDefinition<Q> definition = definition(unit);
    if (definition != null) {
      return definition;
    }
    double factor = toSi(1, unit);
    for (UnitDefinition<?> ours : UnitTables.all()) {
      if (ours.kind() == this && ours.toSi(1) == factor) {
        return (UnitDefinition<Q>) ours;
      }
    }
    return null;
  }

  /** The English name without an article, as guards say it. */
  String noun() {
    return noun;
  }

  /** A number in the SI unit, as each reader reads it. */
  Bilingual inWords(double si) {
    return Bilingual.of(si).plus(" " + siDefinition.symbol());
  }

  UnitDefinition<Q> siDefinition() {
    return siDefinition;
  }

  /** The definition of this very unit; null for a unit that others define. */
  @SuppressWarnings("unchecked") // the table holds units of this kind only
  @Nullable UnitDefinition<Q> definition(Unit<Q> unit) {
    return (UnitDefinition<Q>) factors.definition(unit);
  }

  void register(UnitDefinition<Q> definition) {
    factors.add(definition.unit(), definition);
  }

  @Override
  public String toString() {
    return id;
  }
}
