// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * A temperature on a scale, such as 90 °C: a point, not a difference.
 *
 * <p>Point minus point is a {@link TemperatureDifference}; point plus point does not compile. 200
 * °F is 93.33 °C, not 90.
 *
 * <p>For example:
 *
 * <pre>{@code
 * TemperaturePoint pot = ofFahrenheit(194);
 * pot.celsius(); // 90.00
 * pot.minus(ofCelsius(65)); // 25.0 K
 * pot.minus(TemperatureDifference.ofKelvin(5)); // 85.0 °C
 * pot.isAbove(ofCelsius(90)); // false
 * ofCelsius(-300); // throws ProblemException
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class TemperaturePoint implements Comparable<TemperaturePoint> {

  static final double ICE_POINT = 273.15;
  private static final double FAHRENHEIT_DEGREE = 5.0 / 9.0;

  /** Held as degrees Celsius, the scale that nearly all figures come in, so that they come back. */
  private final double celsius;

  /**
   * Returns the point at a number of degrees Celsius.
   *
   * @param celsius degrees Celsius, at least −273.15
   * @return the point
   * @throws ProblemException if the number is not finite or below absolute zero
   */
  public static TemperaturePoint ofCelsius(double celsius) {
    UnitsProblem.CHECK.finite(celsius, "temperature");
    if (celsius < -ICE_POINT) {
      throw new ProblemException(
          Problem.of(
              UnitsProblem.TEMPERATURE_BELOW_ABSOLUTE_ZERO,
              TemperatureScale.CELSIUS.inWords(celsius)));
    }
    return new TemperaturePoint(celsius + 0.0);
  }

  /**
   * Returns the point at a number of degrees Fahrenheit.
   *
   * @param fahrenheit degrees Fahrenheit, at least −459.67
   * @return the point
   * @throws ProblemException if the number is not finite or below absolute zero
   */
  public static TemperaturePoint ofFahrenheit(double fahrenheit) {
    return TemperatureScale.FAHRENHEIT.point(fahrenheit);
  }

  /**
   * Returns the point at a number of kelvins.
   *
   * @param kelvin kelvins above absolute zero, at least 0
   * @return the point
   * @throws ProblemException if the number is not finite or below zero
   */
  public static TemperaturePoint ofKelvin(double kelvin) {
    return TemperatureScale.KELVIN.point(kelvin);
  }

  /**
   * Reads a temperature with a decimal point; {@link QuantityParser#parseTemperature} reads one
   * with a decimal comma.
   *
   * @param text for example "185 °F"
   * @return the point
   * @throws ProblemException if the text is not a temperature
   */
  public static TemperaturePoint parse(CharSequence text) {
    return QuantityParser.localeFree().parseTemperature(text);
  }

  /**
   * Returns the point that a quantity stands for on its unit's scale.
   *
   * @param quantity the temperature, in K, °C, °F or a unit that converts to them
   * @return the point
   * @throws ProblemException if it is not finite, below absolute zero, or a difference (of relative
   *     scale)
   */
  public static TemperaturePoint of(Quantity<Temperature> quantity) {
    if (quantity.getScale() == Quantity.Scale.RELATIVE) {
      throw TemperatureBridge.pointOrDifference(quantity);
    }
    return TemperatureBridge.point(quantity.getValue().doubleValue(), quantity.getUnit());
  }

  private TemperaturePoint(double celsius) {
    this.celsius = celsius;
  }

  /** {@return the degrees Celsius} */
  public double celsius() {
    return celsius;
  }

  /** {@return the degrees Fahrenheit} */
  public double fahrenheit() {
    return celsius / FAHRENHEIT_DEGREE + 32;
  }

  /** {@return the kelvins above absolute zero} */
  public double kelvin() {
    return celsius + ICE_POINT;
  }

  /**
   * Returns the point that lies a difference higher.
   *
   * @param difference how much higher; negative for lower
   * @return the new point
   * @throws ProblemException if it would lie below absolute zero
   */
  public TemperaturePoint plus(TemperatureDifference difference) {
    return ofCelsius(celsius + difference.kelvin());
  }

  /**
   * Returns the point that lies a difference lower.
   *
   * @param difference how much lower
   * @return the new point
   * @throws ProblemException if it would lie below absolute zero
   */
  public TemperaturePoint minus(TemperatureDifference difference) {
    return ofCelsius(celsius - difference.kelvin());
  }

  /**
   * Returns how much higher this point lies than another.
   *
   * @param other the other point
   * @return the difference, negative if this point is the lower
   */
  public TemperatureDifference minus(TemperaturePoint other) {
    return TemperatureDifference.ofKelvin(celsius - other.celsius);
  }

  /**
   * Tells whether this point lies above another, to the last digit. For rules use {@link Limit}.
   *
   * @param other the other point
   * @return whether this point is the higher
   */
  public boolean isAbove(TemperaturePoint other) {
    return celsius > other.celsius;
  }

  /**
   * Tells whether this point lies below another, to the last digit. For rules use {@link Limit}.
   *
   * @param other the other point
   * @return whether this point is the lower
   */
  public boolean isBelow(TemperaturePoint other) {
    return celsius < other.celsius;
  }

  /**
   * Returns the point as a quantity in kelvins, the only unit in which its sums come out right.
   *
   * @return the quantity
   */
  public Quantity<Temperature> toQuantity() {
    return Quantities.of(kelvin(), SiUnits.KELVIN);
  }

  @Override
  public int compareTo(TemperaturePoint other) {
    return Double.compare(celsius, other.celsius);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TemperaturePoint that && celsius == that.celsius;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(celsius);
  }

  /**
   * Returns the point in degrees Celsius, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "90.0 °C"
   */
  @Override
  public String toString() {
    return Shown.number(celsius) + " °C";
  }
}
