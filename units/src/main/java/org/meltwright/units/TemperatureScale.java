// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The scales a temperature is given on: the symbol, and how degrees turn into points. */
public enum TemperatureScale {
  /** Degrees Celsius. */
  CELSIUS("°C"),
  /** Degrees Fahrenheit. */
  FAHRENHEIT("°F"),
  /** Kelvins. */
  KELVIN("K");

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
    return switch (this) {
      case CELSIUS -> TemperaturePoint.ofCelsius(degrees);
      case FAHRENHEIT -> TemperaturePoint.ofFahrenheit(degrees);
      case KELVIN -> TemperaturePoint.ofKelvin(degrees);
    };
  }

  /** The point at a number of more digits than a double holds, rounded once. */
  TemperaturePoint point(BigDecimal degrees) {
    return switch (this) {
      case CELSIUS -> TemperaturePoint.ofCelsius(degrees.doubleValue());
      case FAHRENHEIT ->
          TemperaturePoint.ofCelsius(
              degrees
                  .subtract(BigDecimal.valueOf(32))
                  .multiply(BigDecimal.valueOf(5))
                  .divide(BigDecimal.valueOf(9), MathContext.DECIMAL128)
                  .doubleValue());
      case KELVIN ->
          TemperaturePoint.ofCelsius(degrees.subtract(new BigDecimal("273.15")).doubleValue());
    };
  }

  /** The degrees of a point, without rounding, as far as a decimal can. */
  BigDecimal exactDegrees(double celsius) {
    BigDecimal exact = new BigDecimal(celsius);
    return switch (this) {
      case CELSIUS -> exact;
      case FAHRENHEIT -> exact.multiply(new BigDecimal("1.8")).add(BigDecimal.valueOf(32));
      case KELVIN -> exact.add(new BigDecimal("273.15"));
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
    return this == FAHRENHEIT
        ? TemperatureDifference.ofFahrenheitDegrees(degrees)
        : TemperatureDifference.ofKelvin(degrees);
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
