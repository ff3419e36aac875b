// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Optional;

/**
 * A range of temperatures with both ends in it, such as 62–65 °C; a single point is a range too.
 *
 * <p>For example:
 *
 * <pre>{@code
 * TemperatureRange melting = TemperatureRange.ofCelsius(62, 65);
 * melting.contains(ofCelsius(64)); // true
 * melting.middle(); // 63.5 °C
 * melting.overlap(TemperatureRange.ofCelsius(64, 90)); // 64.0–65.0 °C
 * // how far the whole range stays below a limit
 * melting.marginBelow(ofCelsius(90)); // 25.0 K
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param low the low end
 * @param high the high end, not below the low end
 */
public record TemperatureRange(TemperaturePoint low, TemperaturePoint high) {

  /** Draws a problem if the low end lies above the high end. */
  public TemperatureRange {
    if (low.isAbove(high)) {
      throw UnitsProblem.CHECK.reversed(
          Bilingual.range(
              TemperatureScale.CELSIUS.inWords(low.celsius()),
              TemperatureScale.CELSIUS.inWords(high.celsius())),
          "temperature range");
    }
  }

  /**
   * Returns a range in degrees Celsius.
   *
   * @param low the low end in °C
   * @param high the high end in °C
   * @return the range
   * @throws ProblemException if an end is no temperature or the ends are reversed
   */
  public static TemperatureRange ofCelsius(double low, double high) {
    return new TemperatureRange(TemperaturePoint.ofCelsius(low), TemperaturePoint.ofCelsius(high));
  }

  /**
   * Returns a range between two points.
   *
   * @param low the low end
   * @param high the high end
   * @return the range
   * @throws ProblemException if the ends are reversed
   */
  public static TemperatureRange of(TemperaturePoint low, TemperaturePoint high) {
    return new TemperatureRange(low, high);
  }

  /**
   * Returns the range that holds one point only.
   *
   * @param point the point
   * @return the range
   */
  public static TemperatureRange of(TemperaturePoint point) {
    return new TemperatureRange(point, point);
  }

  /** {@return the point half way between the ends} */
  public TemperaturePoint middle() {
    return TemperaturePoint.ofCelsius((low.celsius() + high.celsius()) / 2);
  }

  /**
   * Returns how far the ends lie apart.
   *
   * @return the width, not negative
   */
  public TemperatureDifference width() {
    return high.minus(low);
  }

  /**
   * Tells whether a point lies in the range, ends included.
   *
   * @param point the point
   * @return whether it lies in the range
   */
  public boolean contains(TemperaturePoint point) {
    return !point.isBelow(low) && !point.isAbove(high);
  }

  /**
   * Returns what two ranges share.
   *
   * @param other the other range
   * @return the points in both; empty if there are none
   */
  public Optional<TemperatureRange> overlap(TemperatureRange other) {
    if (low.isAbove(other.high) || other.low.isAbove(high)) {
      return Optional.empty();
    }
    TemperaturePoint from = low.isAbove(other.low) ? low : other.low;
    TemperaturePoint to = high.isBelow(other.high) ? high : other.high;
    return Optional.of(new TemperatureRange(from, to));
  }

  /**
   * Returns the margin between the range and a limit above it.
   *
   * @param limit the limit
   * @return the limit less the high end; negative if the range reaches beyond the limit
   */
  public TemperatureDifference marginBelow(TemperaturePoint limit) {
    return limit.minus(high);
  }

  /**
   * Returns the range in degrees Celsius, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "62.0–65.0 °C"
   */
  @Override
  public String toString() {
    return low.equals(high) ? low.toString() : Shown.number(low.celsius()) + "–" + high;
  }
}
