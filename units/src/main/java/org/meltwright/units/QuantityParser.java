// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
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
 * Reads what people write: "1 1/2 lb", "62–65 °C", "1:8 resin:wax", "10 % by volume".
 *
 * <p>Each method asks for one kind of value, reads the whole text and returns the value, or throws
 * a {@link ProblemException} whose problem says what was found, what is allowed and what to do. The
 * words are those of English and German alike; the decimal sign is declared: a point, a comma, the
 * one of a {@linkplain #forLocale locale}, or {@linkplain DecimalSign#EITHER either}. Digits are
 * never grouped. A parser with a comma reads "1,5 kg" and refuses "1.5 kg", since a point may there
 * mean thousands.
 *
 * <p>A quantity comes back in the unit that was written, the first one for "1 lb 4 oz". Its number
 * is a {@link Double}; one of more digits than a {@code double} gives back is kept whole.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityParser parser = QuantityParser.localeFree();
 * parser.parseMass("1 1/2 lb"); // 1.5 lb
 * parser.parseTime("1 h 30 min"); // 1.5 h
 * parser.parseTemperatureRange("62–65 °C"); // 62.0–65.0 °C
 * parser.parseMixingRatio("1:8 resin:wax").firstShare(); // 0.1111111111111111
 * // a comma may mean decimals or thousands: it is declared, never guessed
 * parser.parseMass("1,5 kg"); // throws ProblemException
 * QuantityParser.forLocale(Locale.GERMANY).parseMass("1,5 kg"); // 1.5 kg
 * }</pre>
 *
 * <p>This class is immutable and thread-safe. A text of more than 100 characters is refused unread.
 */
public final class QuantityParser {

  private static final QuantityParser LOCALE_FREE = new QuantityParser(DecimalSign.POINT, true);
  private static final QuantityParser DECIMAL_COMMA = new QuantityParser(DecimalSign.COMMA, true);
  private static final QuantityParser EITHER = new QuantityParser(DecimalSign.EITHER, true);
  private static final QuantityParser POINT_FIRST = new QuantityParser(DecimalSign.POINT, false);
  private static final QuantityParser COMMA_FIRST = new QuantityParser(DecimalSign.COMMA, false);

  private final DecimalSign decimalSign;
  private final boolean strict;

  /** {@return the parser that reads a decimal point, whatever the locale} */
  public static QuantityParser localeFree() {
    return LOCALE_FREE;
  }

  /** {@return the parser that reads a decimal comma, and no point} */
  public static QuantityParser withDecimalComma() {
    return DECIMAL_COMMA;
  }

  /**
   * Returns the parser of what a person types: it reads the decimal sign of their locale, and the
   * other where it can only stand before decimals.
   *
   * <p>For a German reader "1,500 kg" and "1.5 kg" are both 1.5 kg; "1.500 kg" is refused with both
   * meanings.
   *
   * @param locale the person's locale
   * @return the parser with a comma where {@link DecimalSign#of} has one, else with a point
   */
  public static QuantityParser forLocale(Locale locale) {
    return DecimalSign.of(locale) == DecimalSign.COMMA ? COMMA_FIRST : POINT_FIRST;
  }

  /**
   * Returns the parser that reads a decimal sign, and not the other.
   *
   * @param sign the sign, or either
   * @return the parser
   */
  public static QuantityParser of(DecimalSign sign) {
    return switch (sign) {
      case POINT -> LOCALE_FREE;
      case COMMA -> DECIMAL_COMMA;
      case EITHER -> EITHER;
    };
  }

  private QuantityParser(DecimalSign decimalSign, boolean strict) {
    this.decimalSign = decimalSign;
    this.strict = strict;
  }

  /**
   * Returns what this parser reads before decimals.
   *
   * @return the decimal sign; the one of the locale if it was made for one
   */
  public DecimalSign decimalSign() {
    return decimalSign;
  }

  /**
   * Reads a mass.
   *
   * @param text for example "730 g, 1 1/2 lb or 1 lb 4 oz"
   * @return the mass, in the unit written
   * @throws ProblemException if the text is not a mass
   */
  public Quantity<Mass> parseMass(CharSequence text) {
    return parse(text, QuantityKind.MASS);
  }

  /**
   * Reads a volume.
   *
   * @param text for example "250 ml, ½ tsp US or 1 pint imp"
   * @return the volume, in the unit written
   * @throws ProblemException if the text is not a volume
   */
  public Quantity<Volume> parseVolume(CharSequence text) {
    return parse(text, QuantityKind.VOLUME);
  }

  /**
   * Reads a length.
   *
   * @param text for example "12.5 mm or 5 ft 3 in"
   * @return the length, in the unit written
   * @throws ProblemException if the text is not a length
   */
  public Quantity<Length> parseLength(CharSequence text) {
    return parse(text, QuantityKind.LENGTH);
  }

  /**
   * Reads an area.
   *
   * @param text for example "600 cm² or 2 ft²"
   * @return the area, in the unit written
   * @throws ProblemException if the text is not an area
   */
  public Quantity<Area> parseArea(CharSequence text) {
    return parse(text, QuantityKind.AREA);
  }

  /**
   * Reads a time.
   *
   * @param text for example "1 h 30 min"
   * @return the time, in the unit written
   * @throws ProblemException if the text is not a time
   */
  public Quantity<Time> parseTime(CharSequence text) {
    return parse(text, QuantityKind.TIME);
  }

  /**
   * Reads a power.
   *
   * @param text for example "1.5 kW"
   * @return the power, in the unit written
   * @throws ProblemException if the text is not a power
   */
  public Quantity<Power> parsePower(CharSequence text) {
    return parse(text, QuantityKind.POWER);
  }

  /**
   * Reads an energy.
   *
   * @param text for example "0.5 kWh"
   * @return the energy, in the unit written
   * @throws ProblemException if the text is not an energy
   */
  public Quantity<Energy> parseEnergy(CharSequence text) {
    return parse(text, QuantityKind.ENERGY);
  }

  /**
   * Reads a pressure.
   *
   * @param text for example "1013 hPa"
   * @return the pressure, in the unit written
   * @throws ProblemException if the text is not a pressure
   */
  public Quantity<Pressure> parsePressure(CharSequence text) {
    return parse(text, QuantityKind.PRESSURE);
  }

  /**
   * Reads a density.
   *
   * @param text for example "0.96 g/cm³"
   * @return the density, in the unit written
   * @throws ProblemException if the text is not a density
   */
  public Quantity<Density> parseDensity(CharSequence text) {
    return parse(text, QuantityKind.DENSITY);
  }

  /**
   * Reads a specific heat capacity.
   *
   * @param text for example "2.9 kJ/(kg K)"
   * @return the specific heat capacity, in the unit written
   * @throws ProblemException if the text is not a specific heat capacity
   */
  public Quantity<SpecificHeatCapacity> parseSpecificHeatCapacity(CharSequence text) {
    return parse(text, QuantityKind.SPECIFIC_HEAT_CAPACITY);
  }

  /**
   * Reads a specific energy.
   *
   * @param text for example "177 kJ/kg"
   * @return the specific energy, in the unit written
   * @throws ProblemException if the text is not a specific energy
   */
  public Quantity<SpecificEnergy> parseSpecificEnergy(CharSequence text) {
    return parse(text, QuantityKind.SPECIFIC_ENERGY);
  }

  /**
   * Reads a thermal conductivity.
   *
   * @param text for example "0.25 W/(m K)"
   * @return the thermal conductivity, in the unit written
   * @throws ProblemException if the text is not a thermal conductivity
   */
  public Quantity<ThermalConductivity> parseThermalConductivity(CharSequence text) {
    return parse(text, QuantityKind.THERMAL_CONDUCTIVITY);
  }

  /**
   * Reads a heat transfer coefficient.
   *
   * @param text for example "10 W/(m² K)"
   * @return the heat transfer coefficient, in the unit written
   * @throws ProblemException if the text is not a heat transfer coefficient
   */
  public Quantity<HeatTransferCoefficient> parseHeatTransferCoefficient(CharSequence text) {
    return parse(text, QuantityKind.HEAT_TRANSFER_COEFFICIENT);
  }

  /**
   * Reads a dynamic viscosity.
   *
   * @param text for example "12 mPa s"
   * @return the dynamic viscosity, in the unit written
   * @throws ProblemException if the text is not a dynamic viscosity
   */
  public Quantity<DynamicViscosity> parseDynamicViscosity(CharSequence text) {
    return parse(text, QuantityKind.DYNAMIC_VISCOSITY);
  }

  /**
   * Reads a quantity of a kind.
   *
   * @param <Q> the kind as a type
   * @param text for example "730 g"
   * @param kind the kind asked for
   * @return the quantity, in the unit written
   * @throws ProblemException if the text is not a quantity of that kind
   */
  public <Q extends Quantity<Q>> Quantity<Q> parse(CharSequence text, QuantityKind<Q> kind) {
    try {
      return QuantityReader.quantity(read(text), kind);
    } catch (ProblemException refused) {
      return Gloss.find(this, text, kind).orElseThrow(() -> refused);
    }
  }

  /**
   * Reads a range of quantities, or a single one, which is a range too.
   *
   * @param <Q> the kind as a type
   * @param text for example "0.82–0.86 g/ml"
   * @param kind the kind asked for
   * @return the range
   * @throws ProblemException if the text is not a range of that kind
   */
  public <Q extends Quantity<Q>> QuantityRange<Q> parseRange(
      CharSequence text, QuantityKind<Q> kind) {
    return QuantityReader.range(read(text), kind);
  }

  /**
   * Reads a density with the state it belongs to, since a loose powder, a melt and a solid of one
   * material have three densities.
   *
   * @param text for example "0.55 g/ml bulk"
   * @return the density and its state
   * @throws ProblemException if the text is not a density followed by a state word
   */
  public StatedDensity parseStatedDensity(CharSequence text) {
    return QuantityReader.statedDensity(read(text));
  }

  /**
   * Reads a temperature, a point on a scale; "90 C" and "200 F" are temperatures here.
   *
   * @param text for example "90 °C"
   * @return the point
   * @throws ProblemException if the text is not a temperature
   */
  public TemperaturePoint parseTemperature(CharSequence text) {
    return TemperatureReader.point(read(text));
  }

  /**
   * Reads a temperature range, or a single temperature, which is a range too.
   *
   * @param text for example "62–65 °C" or "62 to 65 °C"
   * @return the range
   * @throws ProblemException if the text is not a temperature range
   */
  public TemperatureRange parseTemperatureRange(CharSequence text) {
    return TemperatureReader.range(read(text));
  }

  /**
   * Reads a temperature difference; "9 °F" is 5 K here.
   *
   * @param text for example "5 K"
   * @return the difference
   * @throws ProblemException if the text is not a temperature difference
   */
  public TemperatureDifference parseTemperatureDifference(CharSequence text) {
    return TemperatureReader.difference(read(text));
  }

  /**
   * Reads a mixing ratio, which names its sides.
   *
   * @param text for example "1:8 resin:wax"
   * @return the ratio
   * @throws ProblemException if the text is not a ratio with two different sides
   */
  public MixingRatio parseMixingRatio(CharSequence text) {
    return new RatioReader(text, this).named();
  }

  /**
   * Reads a mixing ratio whose sides the question names.
   *
   * @param text for example "1:8"
   * @param firstSide the name of the first side
   * @param secondSide the name of the second side
   * @return the ratio
   * @throws ProblemException if the text is not two numbers
   */
  public MixingRatio parseMixingRatio(CharSequence text, String firstSide, String secondSide) {
    return new RatioReader(text, this).of(firstSide, secondSide);
  }

  /**
   * Reads a mass fraction; a bare "10" or "0.1" is refused, since it may be either.
   *
   * @param text for example "10 %", "10 % by mass", "5 ‰" or "200 ppm"
   * @return the fraction
   * @throws ProblemException if the text is not a mass fraction
   */
  public MassFraction parseMassFraction(CharSequence text) {
    return ShareReader.massFraction(read(text));
  }

  /**
   * Reads a volume fraction; a bare "10" or "0.1" is refused, since it may be either.
   *
   * @param text for example "10 %" or "10 % by volume"
   * @return the fraction
   * @throws ProblemException if the text is not a volume fraction
   */
  public VolumeFraction parseVolumeFraction(CharSequence text) {
    return ShareReader.volumeFraction(read(text));
  }

  /**
   * Reads a number without a unit, such as an amount of money.
   *
   * @param text for example "12.50"
   * @return the number, with the decimals that were written
   * @throws ProblemException if the text is not one decimal number
   */
  public BigDecimal parseNumber(CharSequence text) {
    return read(text).readDecimal();
  }

  QuantityText read(CharSequence text) {
    return read(text, QuantityText.LONGEST);
  }

  QuantityText read(CharSequence text, int longest) {
    return new QuantityText(text, decimalSign, strict, longest);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof QuantityParser that
        && decimalSign == that.decimalSign
        && strict == that.strict;
  }

  @Override
  public int hashCode() {
    return Objects.hash(decimalSign, strict);
  }

  @Override
  public String toString() {
    return "parser of quantities with decimal sign " + decimalSign + (strict ? "" : " first");
  }
}
