// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The scales a temperature is given on: the symbol, and how degrees turn into points.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // a thermometer that shows °F
 * TemperaturePoint reading = TemperatureScale.FAHRENHEIT.point(185); // 85.0 °C
 * TemperatureScale.KELVIN.degrees(reading); // 358.15 K
 * // nine of its degrees
 * TemperatureScale.FAHRENHEIT.difference(9); // 5.0 K
 * }</pre>
 */
public enum TemperatureScale {
  /** Degrees Celsius. */
  CELSIUS("°C"),
  /** Degrees Fahrenheit. */
  FAHRENHEIT("°F"),
  /** Kelvins. */
  KELVIN("K");

  private static final BigDecimal ICE_POINT = BigDecimal.valueOf(TemperaturePoint.ICE_POINT);
  private static final BigDecimal FREEZING_FAHRENHEIT = BigDecimal.valueOf(32);
  private static final BigDecimal FAHRENHEIT_DEGREES = BigDecimal.valueOf(1.8);

  private static final Map<String, TemperatureScale> BY_WORD =
      Map.ofEntries(
          Map.entry("°C", CELSIUS),
          Map.entry("C", CELSIUS),
          Map.entry("degC", CELSIUS),
          Map.entry("deg C", CELSIUS),
          Map.entry("\u2103", CELSIUS),
          Map.entry("Celsius", CELSIUS),
          Map.entry("°Celsius", CELSIUS),
          Map.entry("degrees Celsius", CELSIUS),
          Map.entry("Grad Celsius", CELSIUS),
          Map.entry("°F", FAHRENHEIT),
          Map.entry("F", FAHRENHEIT),
          Map.entry("degF", FAHRENHEIT),
          Map.entry("deg F", FAHRENHEIT),
          Map.entry("\u2109", FAHRENHEIT),
          Map.entry("Fahrenheit", FAHRENHEIT),
          Map.entry("°Fahrenheit", FAHRENHEIT),
          Map.entry("degrees Fahrenheit", FAHRENHEIT),
          Map.entry("Grad Fahrenheit", FAHRENHEIT),
          Map.entry("K", KELVIN),
          Map.entry("\u212a", KELVIN),
          Map.entry("kelvin", KELVIN),
          Map.entry("kelvins", KELVIN),
          Map.entry("Kelvin", KELVIN));

  private final String symbol;

  TemperatureScale(String symbol) {
    this.symbol = symbol;
  }

  /** The scale that a word in the table's form names; null if none. */
  static @Nullable TemperatureScale find(String key) {
    String word = key.replace('\u00ba', '°').replace('\u02da', '°').replace("° ", "°");
    return BY_WORD.get(word);
  }

  /**
   * Returns the symbol.
   *
   * @return "°C", "°F" or "K"
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Returns the point at a number of degrees on this scale.
   *
   * @param degrees the degrees, not below absolute zero
   * @return the point
   * @throws ProblemException if the number is not finite or below absolute zero
   */
  public TemperaturePoint point(double degrees) {
    return TemperaturePoint.ofCelsius(celsius(degrees));
  }

  /** Degrees Celsius at a number of this scale's degrees, whether or not there is such a point. */
  double celsius(double degrees) {
    boolean asItIs = this == CELSIUS || !Double.isFinite(degrees);
    return asItIs ? degrees : celsius(BigDecimal.valueOf(degrees));
  }

  /**
   * The same in decimals, rounded once: the points of 33.8 °F and 1 °C are equal, which doubles
   * alone would miss by a digit.
   */
  double celsius(BigDecimal degrees) {
    return switch (this) {
      case CELSIUS -> degrees.doubleValue();
      case FAHRENHEIT -> fiveNinths(degrees.subtract(FREEZING_FAHRENHEIT));
      case KELVIN -> degrees.subtract(ICE_POINT).doubleValue();
    };
  }

  /** The kelvins in a difference of a number of this scale's degrees. */
  double kelvins(double degrees) {
    boolean asItIs = this != FAHRENHEIT || !Double.isFinite(degrees);
    return asItIs ? degrees : kelvins(BigDecimal.valueOf(degrees));
  }

  /** The same in decimals, rounded once. */
  double kelvins(BigDecimal degrees) {
    return this == FAHRENHEIT ? fiveNinths(degrees) : degrees.doubleValue();
  }

  private static double fiveNinths(BigDecimal degrees) {
    return degrees
        .multiply(BigDecimal.valueOf(5))
        .divide(BigDecimal.valueOf(9), MathContext.DECIMAL128)
        .doubleValue();
  }

  /** The degrees in a difference, in decimals. */
  BigDecimal exactDifference(double kelvins) {
    BigDecimal exact = BigDecimal.valueOf(kelvins);
    return this == FAHRENHEIT ? exact.multiply(FAHRENHEIT_DEGREES) : exact;
  }

  /** The degrees of a point, in decimals. */
  BigDecimal exactDegrees(double celsius) {
    BigDecimal exact = BigDecimal.valueOf(celsius);
    return switch (this) {
      case CELSIUS -> exact;
      case FAHRENHEIT -> exact.multiply(FAHRENHEIT_DEGREES).add(FREEZING_FAHRENHEIT);
      case KELVIN -> exact.add(ICE_POINT);
    };
  }

  /**
   * Returns a difference of a number of this scale's degrees.
   *
   * @param degrees the degrees, finite
   * @return the difference
   * @throws ProblemException if the number is not finite
   */
  public TemperatureDifference difference(double degrees) {
    return TemperatureDifference.ofKelvin(kelvins(degrees));
  }

  /**
   * Returns a point's degrees on this scale.
   *
   * @param point the point
   * @return its degrees
   */
  public double degrees(TemperaturePoint point) {
    return switch (this) {
      case CELSIUS -> point.celsius();
      case FAHRENHEIT -> point.fahrenheit();
      case KELVIN -> point.kelvin();
    };
  }

  /**
   * Returns a difference in this scale's degrees.
   *
   * @param difference the difference
   * @return its degrees
   */
  public double degrees(TemperatureDifference difference) {
    return this == FAHRENHEIT ? difference.fahrenheitDegrees() : difference.kelvin();
  }
}
