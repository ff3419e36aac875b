// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
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

  /** The usual spellings, found without further ado. */
  private static final Map<String, TemperatureScale> BY_SYMBOL =
      Map.of(
          "°C",
          CELSIUS,
          "C",
          CELSIUS,
          "\u2103",
          CELSIUS,
          "°F",
          FAHRENHEIT,
          "F",
          FAHRENHEIT,
          "\u2109",
          FAHRENHEIT,
          "K",
          KELVIN,
          "\u212a",
          KELVIN);

  /** What follows "degrees", or stands alone; in lower case. German degrees are Celsius. */
  static final Map<String, TemperatureScale> BY_WORD =
      Map.of(
          "c", CELSIUS,
          "celsius", CELSIUS,
          "centigrade", CELSIUS,
          "f", FAHRENHEIT,
          "fahrenheit", FAHRENHEIT,
          "kelvin", KELVIN,
          "kelvins", KELVIN);

  static final String[] DEGREES = {"degrees", "degree", "deg", "grad", "°"};

  private final String symbol;

  TemperatureScale(String symbol) {
    this.symbol = symbol;
  }

  /** The scale that a spelling in the form of the units' tables names; null if none. */
  static @Nullable TemperatureScale find(String key) {
    TemperatureScale scale = BY_SYMBOL.get(key);
    if (scale == null) {
      String plain = plain(key);
      scale = plain.equals("grad") ? CELSIUS : BY_WORD.get(withoutDegrees(plain));
    }
    return scale;
  }

  /** Whether a spelling says that a number counts degrees, but not which. */
  static boolean isBareDegree(String key) {
    String plain = plain(key);
    return !plain.isEmpty() && withoutDegrees(plain).isEmpty();
  }

  private static String plain(String key) {
    return key.toLowerCase(Locale.ROOT)
        .replace('\u00ba', '°')
        .replace('\u02da', '°')
        .replace('-', ' ')
        .replace(".", "")
        .strip();
  }

  /** "degrees c", "deg c", "° c" and "c°" are "c"; a kelvin is called a degree in old texts. */
  private static String withoutDegrees(String plain) {
    if (plain.endsWith("°") && plain.length() == 2) {
      return plain.substring(0, 1);
    }
    for (String word : DEGREES) {
      if (plain.startsWith(word)) {
        String scale = plain.substring(word.length()).strip();
        return scale.equals("k") ? "kelvin" : scale;
      }
    }
    return plain;
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
    double celsius = celsius(UnitsProblem.CHECK.finite(degrees, "temperature"));
    if (celsius < -TemperaturePoint.ICE_POINT) {
      throw new ProblemException(
          Problem.of(UnitsProblem.TEMPERATURE_BELOW_ABSOLUTE_ZERO, inWords(degrees)));
    }
    return TemperaturePoint.ofCelsius(celsius);
  }

  /** A number of degrees that may be no point, as each reader reads it. */
  Bilingual inWords(double degrees) {
    return Bilingual.of(degrees).plus(" " + symbol);
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
