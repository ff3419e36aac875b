// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.DynamicViscosity;
import org.meltwright.units.MaterialState;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.SpecificEnergy;
import org.meltwright.units.SpecificHeatCapacity;
import org.meltwright.units.ThermalConductivity;

/**
 * The name of a property, which knows the type of its value: asking for a density gives a density
 * range.
 *
 * <p>For example, to ask a material, to read a figure of a data sheet, and to learn that nobody
 * knows:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * PropertyRange<Density> melt = wax.require(PropertyKey.LIQUID_DENSITY).value();
 * melt.range().middleSi(); // 835 kg/m³
 * PropertyKey.LIQUID_DENSITY.parse("0.85 g/ml at 80 °C").range().middleSi(); // 850 kg/m³
 * wax.find(PropertyKey.AUTOIGNITION).isPresent(); // false
 * wax.absence(PropertyKey.AUTOIGNITION); // No reliable value is published.
 * }</pre>
 *
 * <p>This class is immutable and thread-safe; two keys are the same only if they are one object.
 *
 * <p>Compared by identity: there is one of each property.
 *
 * @param <V> the type of the value
 */
public final class PropertyKey<V> {

  private static final Map<String, PropertyKey<?>> ALL = new LinkedHashMap<>();

  /** Density of the solid. */
  public static final PropertyKey<PropertyRange<Density>> SOLID_DENSITY =
      key("solid-density", PropertyType.quantity(QuantityKind.DENSITY, MaterialState.SOLID));

  /** Density of the melt, or of what is liquid at room temperature. */
  public static final PropertyKey<PropertyRange<Density>> LIQUID_DENSITY =
      key("liquid-density", PropertyType.quantity(QuantityKind.DENSITY, MaterialState.LIQUID));

  /** Density of loose bulk, as scooped. */
  public static final PropertyKey<PropertyRange<Density>> BULK_DENSITY =
      key("bulk-density", PropertyType.quantity(QuantityKind.DENSITY, MaterialState.BULK));

  /** Melting range, with its definition. */
  public static final PropertyKey<DefinedTemperature> MELTING_RANGE =
      key(
          "melting-range",
          PropertyType.temperature(
              EnumSet.of(
                  TemperatureDefinition.CAPILLARY_RANGE,
                  TemperatureDefinition.DROP_POINT,
                  TemperatureDefinition.CONGEALING_POINT,
                  TemperatureDefinition.COOLING_CURVE,
                  TemperatureDefinition.DSC_PEAK,
                  TemperatureDefinition.MELTING_POINT,
                  TemperatureDefinition.CLEAR_POINT,
                  TemperatureDefinition.ONSET,
                  TemperatureDefinition.NOT_STATED)));

  /** Softening range of what has no melting point. */
  public static final PropertyKey<DefinedTemperature> SOFTENING_RANGE =
      key("softening-range", PropertyType.temperature(TemperatureDefinition.SOFTENING));

  /** Glass transition of a resin or polymer. */
  public static final PropertyKey<DefinedTemperature> GLASS_TRANSITION =
      key("glass-transition", PropertyType.temperature(TemperatureDefinition.GLASS_TRANSITION));

  /** Temperature from which a resin dissolves in molten wax: a lower bound only. */
  public static final PropertyKey<DefinedTemperature> DISSOLVES_FROM =
      key("dissolves-from", PropertyType.onset());

  /** Temperature that a hard resin must be heated to before it dissolves in oils. */
  public static final PropertyKey<DefinedTemperature> RUNS_FROM =
      key("runs-from", PropertyType.onset());

  /** Flash point, with its definition. */
  public static final PropertyKey<DefinedTemperature> FLASH_POINT =
      key(
          "flash-point",
          PropertyType.temperature(
              EnumSet.of(
                  TemperatureDefinition.FLASH_CLOSED_CUP,
                  TemperatureDefinition.FLASH_OPEN_CUP,
                  TemperatureDefinition.NOT_STATED)));

  /** Autoignition temperature. */
  public static final PropertyKey<DefinedTemperature> AUTOIGNITION =
      key("autoignition", PropertyType.temperature(TemperatureDefinition.AUTOIGNITION));

  /** Heat that it gives off when it burns, in MJ/kg: for a remark on fire, no rule asks for it. */
  public static final PropertyKey<NumberRange> HEAT_OF_COMBUSTION =
      key("heat-of-combustion", PropertyType.number("MJ/kg"));

  /** Boiling range. */
  public static final PropertyKey<DefinedTemperature> BOILING_RANGE =
      key("boiling-range", PropertyType.temperature(TemperatureDefinition.BOILING));

  /** Temperature from which it discolours. */
  public static final PropertyKey<DefinedTemperature> DISCOLOURATION_ONSET =
      key("discolouration-onset", PropertyType.onset());

  /** Temperature from which it decomposes, loses water or is no longer stable. */
  public static final PropertyKey<DefinedTemperature> DECOMPOSITION_ONSET =
      key("decomposition-onset", PropertyType.onset());

  /** Temperature from which a balance shows loss of mass on steady heating; no exposure limit. */
  public static final PropertyKey<DefinedTemperature> MASS_LOSS_ONSET =
      key("mass-loss-onset", PropertyType.onset());

  /** Temperature from which it thickens for good. */
  public static final PropertyKey<DefinedTemperature> POLYMERISATION_ONSET =
      key("polymerisation-onset", PropertyType.onset());

  /** Highest temperature at which the saponification cloud test may cloud: a test of purity. */
  public static final PropertyKey<DefinedTemperature> SAPONIFICATION_CLOUD =
      key("saponification-cloud", PropertyType.temperature(TemperatureDefinition.CLEAR_POINT));

  /** Lowest temperature at which a dispersion dries to a film. */
  public static final PropertyKey<DefinedTemperature> FILM_FORMING =
      key("film-forming", PropertyType.onset());

  /** Specific heat capacity of the solid. */
  public static final PropertyKey<PropertyRange<SpecificHeatCapacity>> SOLID_SPECIFIC_HEAT =
      key(
          "solid-specific-heat",
          PropertyType.quantity(QuantityKind.SPECIFIC_HEAT_CAPACITY, MaterialState.SOLID));

  /** Specific heat capacity of the melt or liquid. */
  public static final PropertyKey<PropertyRange<SpecificHeatCapacity>> LIQUID_SPECIFIC_HEAT =
      key(
          "liquid-specific-heat",
          PropertyType.quantity(QuantityKind.SPECIFIC_HEAT_CAPACITY, MaterialState.LIQUID));

  /** Heat of fusion. */
  public static final PropertyKey<PropertyRange<SpecificEnergy>> HEAT_OF_FUSION =
      key(
          "heat-of-fusion",
          PropertyType.quantity(QuantityKind.SPECIFIC_ENERGY, MaterialState.SOLID));

  /** Thermal conductivity of the solid. */
  public static final PropertyKey<PropertyRange<ThermalConductivity>> SOLID_CONDUCTIVITY =
      key(
          "solid-conductivity",
          PropertyType.quantity(QuantityKind.THERMAL_CONDUCTIVITY, MaterialState.SOLID));

  /** Thermal conductivity of the melt or liquid. */
  public static final PropertyKey<PropertyRange<ThermalConductivity>> LIQUID_CONDUCTIVITY =
      key(
          "liquid-conductivity",
          PropertyType.quantity(QuantityKind.THERMAL_CONDUCTIVITY, MaterialState.LIQUID));

  /** Dynamic viscosity of the melt or liquid, at its temperature. */
  public static final PropertyKey<PropertyRange<DynamicViscosity>> VISCOSITY =
      key("viscosity", PropertyType.quantity(QuantityKind.DYNAMIC_VISCOSITY, MaterialState.LIQUID));

  /**
   * Kinematic viscosity of the melt, in mm²/s; the note states the temperature, and a figure
   * without one is barred from rules.
   */
  public static final PropertyKey<NumberRange> KINEMATIC_VISCOSITY =
      key("kinematic-viscosity", PropertyType.number("mm²/s"));

  /** Saybolt universal viscosity of the melt, in seconds; the note states the temperature. */
  public static final PropertyKey<NumberRange> SAYBOLT_VISCOSITY =
      key("saybolt-viscosity", PropertyType.number("SUS"));

  /** Linear shrinkage of a casting on cooling, in per cent. */
  public static final PropertyKey<NumberRange> LINEAR_SHRINKAGE =
      key("linear-shrinkage", PropertyType.number("%"));

  /** Oil that 100 g of a pigment take up in the rub-out test, in g per 100 g. */
  public static final PropertyKey<NumberRange> OIL_ABSORPTION =
      key("oil-absorption", PropertyType.number("g/100 g"));

  /** Oil that 100 g of a pigment take up in the rub-out test, in ml per 100 g. */
  public static final PropertyKey<NumberRange> OIL_ABSORPTION_BY_VOLUME =
      key("oil-absorption-by-volume", PropertyType.number("ml/100 g"));

  /** Oil that 100 g of a pigment need to become paint or paste, in g per 100 g. */
  public static final PropertyKey<NumberRange> OIL_DEMAND =
      key("oil-demand", PropertyType.number("g/100 g"));

  /** Refractive index. */
  public static final PropertyKey<NumberRange> REFRACTIVE_INDEX =
      key("refractive-index", PropertyType.number(""));

  /**
   * Size of the single grains of a powder, in micrometres: as its maker states it or a microscope
   * shows it. Grains cling together, so this is never the size of what settles.
   */
  public static final PropertyKey<NumberRange> PRIMARY_PARTICLE_SIZE =
      key("primary-particle-size", PropertyType.number("µm"));

  /** Size of the clumps that grains form, in micrometres: what settles as one piece. */
  public static final PropertyKey<NumberRange> CLUMP_SIZE =
      key("clump-size", PropertyType.number("µm"));

  /** Mean molecular weight, in g/mol. */
  public static final PropertyKey<NumberRange> MOLECULAR_WEIGHT =
      key("molecular-weight", PropertyType.number("g/mol"));

  /** Acid value, in mg KOH/g. */
  public static final PropertyKey<NumberRange> ACID_VALUE =
      key("acid-value", PropertyType.number("mg KOH/g"));

  /** Ester value, in mg KOH/g: saponification value less acid value. */
  public static final PropertyKey<NumberRange> ESTER_VALUE =
      key("ester-value", PropertyType.number("mg KOH/g"));

  /** Saponification value, in mg KOH/g. */
  public static final PropertyKey<NumberRange> SAPONIFICATION_VALUE =
      key("saponification-value", PropertyType.number("mg KOH/g"));

  /** Ester value divided by acid value. */
  public static final PropertyKey<NumberRange> ESTER_TO_ACID_RATIO =
      key("ester-to-acid-ratio", PropertyType.number(""));

  /** Iodine value, in g of iodine per 100 g. */
  public static final PropertyKey<NumberRange> IODINE_VALUE =
      key("iodine-value", PropertyType.number("g I2/100 g"));

  /** Lower flammable limit of the vapour in air, in per cent by volume. */
  public static final PropertyKey<NumberRange> LOWER_FLAMMABLE_LIMIT =
      key("lower-flammable-limit", PropertyType.number("%"));

  /** Share by mass that stays behind when a resin is dissolved. */
  public static final PropertyKey<MassFractionRange> INSOLUBLES =
      key("insolubles", PropertyType.fraction());

  /** Share of oil by mass. */
  public static final PropertyKey<MassFractionRange> OIL_CONTENT =
      key("oil-content", PropertyType.fraction());

  /** Share of water by mass. */
  public static final PropertyKey<MassFractionRange> WATER_CONTENT =
      key("water-content", PropertyType.fraction());

  /** Share by mass that stays when the water is gone. */
  public static final PropertyKey<MassFractionRange> SOLIDS_CONTENT =
      key("solids-content", PropertyType.fraction());

  /** Share of surfactant by mass. */
  public static final PropertyKey<MassFractionRange> SURFACTANT_CONTENT =
      key("surfactant-content", PropertyType.fraction());

  /** Share of stabilisers by mass, such as aluminium stearate. */
  public static final PropertyKey<MassFractionRange> STABILISER_CONTENT =
      key("stabiliser-content", PropertyType.fraction());

  /** Share of hydrocarbons by mass. */
  public static final PropertyKey<MassFractionRange> HYDROCARBON_CONTENT =
      key("hydrocarbon-content", PropertyType.fraction());

  /** Share of free fatty acids by mass. */
  public static final PropertyKey<MassFractionRange> FREE_FATTY_ACID_CONTENT =
      key("free-fatty-acid-content", PropertyType.fraction());

  /** Share of monoesters by mass. */
  public static final PropertyKey<MassFractionRange> MONOESTER_CONTENT =
      key("monoester-content", PropertyType.fraction());

  /** Share of complex esters by mass. */
  public static final PropertyKey<MassFractionRange> COMPLEX_ESTER_CONTENT =
      key("complex-ester-content", PropertyType.fraction());

  /** Share of resenes by mass: what is neutral in a resin. */
  public static final PropertyKey<MassFractionRange> RESENE_CONTENT =
      key("resene-content", PropertyType.fraction());

  /** Share of resin by mass. */
  public static final PropertyKey<MassFractionRange> RESIN_CONTENT =
      key("resin-content", PropertyType.fraction());

  /** Share of wax by mass. */
  public static final PropertyKey<MassFractionRange> WAX_CONTENT =
      key("wax-content", PropertyType.fraction());

  /** Share of sulfated ash by mass. */
  public static final PropertyKey<MassFractionRange> SULFATED_ASH =
      key("sulfated-ash", PropertyType.fraction());

  /** Share of carbon by mass. */
  public static final PropertyKey<MassFractionRange> CARBON_CONTENT =
      key("carbon-content", PropertyType.fraction());

  /** Share of manganese oxide by mass. */
  public static final PropertyKey<MassFractionRange> MANGANESE_OXIDE_CONTENT =
      key("manganese-oxide-content", PropertyType.fraction());

  /** Share of lead by mass, as the element. */
  public static final PropertyKey<MassFractionRange> LEAD_CONTENT =
      key("lead-content", PropertyType.fraction());

  /** Share of mercury by mass, as the element. */
  public static final PropertyKey<MassFractionRange> MERCURY_CONTENT =
      key("mercury-content", PropertyType.fraction());

  /** Share by mass of a finished mix at which it is commonly used. */
  public static final PropertyKey<MassFractionRange> USUAL_SHARE =
      key("usual-share", PropertyType.fraction());

  /** Share by mass of a finished mix that custom stays below. */
  public static final PropertyKey<MassFractionRange> LARGEST_SHARE =
      key("largest-share", PropertyType.fraction());

  /** Whether it can burn: "burns" or "does not burn". */
  public static final PropertyKey<Combustibility> COMBUSTIBILITY =
      key("combustibility", PropertyType.words(Combustibility.class));

  /** Whether it may go into a hot melt: "fit", "caution" or "refuse". */
  public static final PropertyKey<HotMeltUse> USE_IN_HOT_MELT =
      key("use-in-hot-melt", PropertyType.words(HotMeltUse.class));

  /** Whether it dissolves in a molten wax: "yes" or "no". */
  public static final PropertyKey<Boolean> DISSOLVES_IN_MELT =
      key("dissolves-in-melt", PropertyType.yesOrNo(false));

  /** The harmful substance it gives off when overheated. */
  public static final PropertyKey<String> FORMS_ON_OVERHEATING =
      key("forms-on-overheating", PropertyType.text());

  /** What heat does to it, in words. */
  public static final PropertyKey<String> HEAT_BEHAVIOUR =
      key("heat-behaviour", PropertyType.text());

  /** The form in which it can catch fire by itself. */
  public static final PropertyKey<String> SELF_HEATING = key("self-heating", PropertyType.text());

  /** Whether it sensitises skin or airways: "yes" or "no". */
  public static final PropertyKey<Boolean> SENSITISER =
      key("sensitiser", PropertyType.yesOrNo(true));

  /** Whether its colour migrates in a warm melt: "yes", "no" or "possible". */
  public static final PropertyKey<String> BLEEDING =
      key("bleeding", PropertyType.words("yes", "possible", "no"));

  /** Whether acids destroy its colour: "yes" or "no". */
  public static final PropertyKey<Boolean> ACID_SENSITIVE =
      key("acid-sensitive", PropertyType.yesOrNo(true));

  /** Group in the IARC list of carcinogens: "1", "2A", "2B" or "3". */
  public static final PropertyKey<String> IARC_GROUP =
      key("iarc-group", PropertyType.words("1", "2A", "2B", "3"));

  private final String id;
  private final PropertyType<V> type;

  /**
   * Returns all properties, in the order in which this page of documentation lists them.
   *
   * @return the keys
   */
  public static List<PropertyKey<?>> all() {
    return List.copyOf(ALL.values());
  }

  /**
   * Returns the property with an id.
   *
   * @param id the id, for example {@code solid-density}
   * @return the key; empty if there is none
   */
  public static Optional<PropertyKey<?>> find(String id) {
    return Optional.ofNullable(ALL.get(id));
  }

  private static <V> PropertyKey<V> key(String id, PropertyType<V> type) {
    PropertyKey<V> key = new PropertyKey<>(id, type);
    ALL.put(id, key);
    return key;
  }

  private PropertyKey(String id, PropertyType<V> type) {
    this.id = id;
    this.type = type;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, words joined by hyphens, for example {@code solid-density}
   */
  public String id() {
    return id;
  }

  /**
   * Returns what problems call it: the id, in German with its name before it.
   *
   * @return for example "flash-point" and "Flammpunkt (flash-point)"
   */
  public Bilingual inWords() {
    String german = MaterialProblem.CHECK.name(id.replace('-', ' ')).german();
    return new Bilingual(id, german + " (" + id + ")");
  }

  /**
   * Guards a value made in code as {@link #parse} guards a text: a density is above zero, a drop
   * point is no flash point, a number has the unit of its property.
   *
   * @param value the value
   * @return the value as it is
   * @throws org.meltwright.units.ProblemException if this property cannot have it
   */
  public V require(V value) {
    type.require(value);
    return value;
  }

  /**
   * Reads a value of this property as a materials file writes it.
   *
   * <p>For example, {@code SOLID_DENSITY.parse("0.95 to 0.96 g/ml at 20 °C")}.
   *
   * @param text the value with its unit
   * @return the value
   * @throws org.meltwright.units.ProblemException if the text is no value of this property
   */
  public V parse(String text) {
    return type.parse(text);
  }

  /**
   * Writes a value of this property as a materials file holds it; {@link #parse} reads it back.
   *
   * @param value the value
   * @return for example "0.95 to 0.96 g/ml at 20 °C"
   */
  public String format(V value) {
    return type.format(value);
  }

  /** What burns, and from where, is asked of the supplier: nobody tries it at home. */
  void requireNotMeasuredAtHome(Sourced<V> figure) {
    boolean fire = equals(FLASH_POINT) || equals(AUTOIGNITION) || equals(LOWER_FLAMMABLE_LIMIT);
    if (fire && figure.source().kind() == SourceKind.OWN_MEASUREMENT) {
      throw new ProblemException(Problem.of(MaterialProblem.NOT_AT_HOME, inWords()));
    }
  }

  boolean isInWords() {
    return type instanceof PropertyType.TextType || type instanceof PropertyType.WordType;
  }

  /**
   * Returns the range that spans two values.
   *
   * @param one a value
   * @param other another
   * @return from the lower of the low ends to the higher of the high ones
   */
  public V span(V one, V other) {
    return type.span(one, other);
  }

  @Override
  public String toString() {
    return id;
  }
}
