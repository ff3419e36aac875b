// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * A difference of two temperatures, such as a margin of 5 K: not a point on a scale.
 *
 * <p>A difference of 9 Fahrenheit degrees is one of 5 K, and may be negative.
 *
 * <p>For example:
 *
 * <pre>{@code
 * TemperatureDifference margin = TemperatureDifference.ofKelvin(5);
 * ofCelsius(85).plus(margin); // 90.0 °C
 * TemperatureDifference.ofFahrenheitDegrees(9).equals(margin); // true
 * margin.negated().isNegative(); // true
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class TemperatureDifference implements Comparable<TemperatureDifference> {

  /** No difference. */
  public static final TemperatureDifference ZERO = new TemperatureDifference(0);

  private final double kelvin;

  /**
   * Returns a difference in kelvins, which are Celsius degrees too.
   *
   * @param kelvin the kelvins, finite
   * @return the difference
   * @throws ProblemException if the number is not finite
   */
  public static TemperatureDifference ofKelvin(double kelvin) {
    return new TemperatureDifference(UnitsProblem.CHECK.finite(kelvin, "temperature difference"));
  }

  /**
   * Returns a difference in Fahrenheit degrees.
   *
   * @param degrees the Fahrenheit degrees, finite
   * @return the difference
   * @throws ProblemException if the number is not finite
   */
  public static TemperatureDifference ofFahrenheitDegrees(double degrees) {
    return TemperatureScale.FAHRENHEIT.difference(degrees);
  }

  /**
   * Returns the difference that a quantity stands for: one of relative scale in any unit, or one in
   * kelvins.
   *
   * <p>5 °C of absolute scale, which is what quantities are unless they say otherwise, is a point,
   * 278.15 K; it is refused.
   *
   * @param quantity the difference
   * @return the difference
   * @throws ProblemException if it is not finite, or may be a point
   */
  public static TemperatureDifference of(Quantity<Temperature> quantity) {
    boolean relative = quantity.getScale() == Quantity.Scale.RELATIVE;
    if (!relative && !quantity.getUnit().equals(SiUnits.KELVIN)) {
      throw TemperatureBridge.pointOrDifference(quantity);
    }
    return ofKelvin(
        TemperatureBridge.kelvins(quantity.getValue().doubleValue(), quantity.getUnit()));
  }

  private TemperatureDifference(double kelvin) {
    this.kelvin = kelvin + 0.0;
  }

  /** {@return the difference in kelvins} */
  public double kelvin() {
    return kelvin;
  }

  /**
   * Returns the difference in Fahrenheit degrees.
   *
   * @return 1.8 for each kelvin
   */
  public double fahrenheitDegrees() {
    return kelvin * 9 / 5;
  }

  /**
   * Returns the sum of two differences.
   *
   * @param other the other difference
   * @return the sum
   */
  public TemperatureDifference plus(TemperatureDifference other) {
    return ofKelvin(kelvin + other.kelvin);
  }

  /** {@return the difference with the other sign} */
  public TemperatureDifference negated() {
    return new TemperatureDifference(-kelvin);
  }

  /**
   * Tells whether the difference is below zero.
   *
   * @return whether it is negative
   */
  public boolean isNegative() {
    return kelvin < 0;
  }

  /**
   * Returns the difference as a quantity in kelvins of relative scale.
   *
   * @return the quantity; a point in kelvins plus this is the point that lies so much higher
   */
  public Quantity<Temperature> toQuantity() {
    return tech.units.indriya.quantity.Quantities.getQuantity(
        kelvin, SiUnits.KELVIN, Quantity.Scale.RELATIVE);
  }

  @Override
  public int compareTo(TemperatureDifference other) {
    return Double.compare(kelvin, other.kelvin);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TemperatureDifference that && kelvin == that.kelvin;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(kelvin);
  }

  /**
   * Returns the difference in kelvins, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "5.0 K"
   */
  @Override
  public String toString() {
    return Shown.number(kelvin) + " K";
  }
}
