// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

/**
 * How values are held against limits: in {@code double}s, with a relative slack of 1e-9.
 *
 * <p>A limit is reached at its value: 25 g in 1000 g reaches 2.5 %, although the division may come
 * out a hair below. A limit that begins beyond its value, such as "above 90.0 °C", is passed only
 * by more than the slack: 194 °F is 90.0 °C, however it was typed.
 *
 * <p>For example:
 *
 * <pre>{@code
 * TemperaturePoint most = ofCelsius(90);
 * // 194 °F is 90 °C: it reaches the limit and does not exceed it
 * Limit.reaches(ofFahrenheit(194), most); // true
 * Limit.exceeds(ofFahrenheit(194), most); // false
 * Limit.exceeds(ofCelsius(90.1), most); // true
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class Limit {

  /** The relative slack of every comparison with a limit. */
  public static final double RELATIVE_SLACK = 1e-9;

  private Limit() {}

  /**
   * Tells whether a value reaches a limit from below.
   *
   * @param value the value
   * @param limit the limit, in the same unit
   * @return whether the value is at least the limit, less the slack
   */
  public static boolean reaches(double value, double limit) {
    return value >= limit - slack(limit);
  }

  /**
   * Tells whether a value lies beyond a limit.
   *
   * @param value the value
   * @param limit the limit, in the same unit
   * @return whether the value is more than the limit and the slack
   */
  public static boolean exceeds(double value, double limit) {
    return value > limit + slack(limit);
  }

  /**
   * Tells whether a temperature reaches a limit from below; the slack is that of its kelvins.
   *
   * @param value the temperature
   * @param limit the limit
   * @return whether the temperature is at least the limit, less the slack
   */
  public static boolean reaches(TemperaturePoint value, TemperaturePoint limit) {
    return reaches(value.kelvin(), limit.kelvin());
  }

  /**
   * Tells whether a temperature lies beyond a limit; the slack is that of its kelvins.
   *
   * @param value the temperature
   * @param limit the limit
   * @return whether the temperature is more than the limit and the slack
   */
  public static boolean exceeds(TemperaturePoint value, TemperaturePoint limit) {
    return exceeds(value.kelvin(), limit.kelvin());
  }

  private static double slack(double limit) {
    return Math.abs(limit) * RELATIVE_SLACK;
  }
}
