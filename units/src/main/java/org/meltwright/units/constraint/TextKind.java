// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units.constraint;

import java.util.function.BiFunction;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * The kinds of value that a text may stand for.
 *
 * <p>For example, with the {@code validator} of {@link QuantityText}:
 *
 * <pre>{@code
 * record Pot(@QuantityText(kind = TextKind.TEMPERATURE, max = "90 °C") String reading) {}
 * validator.validate(new Pot("194 °F")).size(); // 0
 * validator.validate(new Pot("95 °C")).size(); // 1
 * validator.validate(new Pot("90 g")).size(); // 1
 * }</pre>
 */
public enum TextKind {
  /** A mass, such as "730 g". */
  MASS((parser, text) -> parser.parseMass(text)),
  /** A volume, such as "250 ml". */
  VOLUME((parser, text) -> parser.parseVolume(text)),
  /** A length, such as "12.5 mm". */
  LENGTH((parser, text) -> parser.parseLength(text)),
  /** An area, such as "600 cm²". */
  AREA((parser, text) -> parser.parseArea(text)),
  /** A time, such as "1 h 30 min". */
  TIME((parser, text) -> parser.parseTime(text)),
  /** A power, such as "1.5 kW". */
  POWER((parser, text) -> parser.parsePower(text)),
  /** An energy, such as "0.5 kWh". */
  ENERGY((parser, text) -> parser.parseEnergy(text)),
  /** A pressure, such as "1013 hPa". */
  PRESSURE((parser, text) -> parser.parsePressure(text)),
  /** A density, such as "0.96 g/cm³". */
  DENSITY((parser, text) -> parser.parseDensity(text)),
  /** A specific heat capacity, such as "2.9 kJ/(kg K)". */
  SPECIFIC_HEAT_CAPACITY((parser, text) -> parser.parseSpecificHeatCapacity(text)),
  /** A specific energy, such as "177 kJ/kg". */
  SPECIFIC_ENERGY((parser, text) -> parser.parseSpecificEnergy(text)),
  /** A thermal conductivity, such as "0.25 W/(m K)". */
  THERMAL_CONDUCTIVITY((parser, text) -> parser.parseThermalConductivity(text)),
  /** A heat transfer coefficient, such as "10 W/(m² K)". */
  HEAT_TRANSFER_COEFFICIENT((parser, text) -> parser.parseHeatTransferCoefficient(text)),
  /** A dynamic viscosity, such as "12 mPa s". */
  DYNAMIC_VISCOSITY((parser, text) -> parser.parseDynamicViscosity(text)),
  /** A range of densities, such as "0.82–0.86 g/ml"; takes no bounds. */
  DENSITY_RANGE((parser, text) -> parser.parseRange(text, QuantityKind.DENSITY)),
  /** A density with its state, such as "0.55 g/ml bulk"; takes no bounds. */
  STATED_DENSITY((parser, text) -> parser.parseStatedDensity(text)),
  /** A temperature, such as "90 °C". */
  TEMPERATURE((parser, text) -> parser.parseTemperature(text)),
  /** A temperature range, such as "62–65 °C"; its bounds are temperatures. */
  TEMPERATURE_RANGE((parser, text) -> parser.parseTemperatureRange(text)),
  /** A temperature difference, such as "5 K". */
  TEMPERATURE_DIFFERENCE((parser, text) -> parser.parseTemperatureDifference(text)),
  /** A mixing ratio, such as "1:8 resin:wax"; takes no bounds. */
  MIXING_RATIO((parser, text) -> parser.parseMixingRatio(text)),
  /** A mass fraction, such as "10 %". */
  MASS_FRACTION((parser, text) -> parser.parseMassFraction(text)),
  /** A volume fraction, such as "10 % by volume". */
  VOLUME_FRACTION((parser, text) -> parser.parseVolumeFraction(text));

  @SuppressWarnings("ImmutableEnumChecker") // none of the functions holds state
  private final BiFunction<QuantityParser, CharSequence, Object> reading;

  TextKind(BiFunction<QuantityParser, CharSequence, Object> reading) {
    this.reading = reading;
  }

  /** Reads a text as this kind. */
  Object read(QuantityParser parser, CharSequence text) {
    return reading.apply(parser, text);
  }
}
