// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.units.TemperaturePoint;

/** A level scale of temperatures, linear, from one multiple of 10 °C to another. */
final class Degrees {

  static final double LEFT = 0;
  static final double RIGHT = Paper.WIDTH;

  private static final double STEP = 10;

  /** No pot of this trade is hotter or colder on purpose; beyond it an arrow points. */
  private static final double LEAST = 0;

  private static final double MOST = 200;

  private final double low;
  private final double high;

  /** Returns a scale that shows all points from 0 to 200 °C with room at both ends. */
  static Degrees showing(List<TemperaturePoint> points) {
    double low = MOST;
    double high = LEAST;
    for (TemperaturePoint point : points) {
      double celsius = Math.min(MOST, Math.max(LEAST, point.celsius()));
      low = Math.min(low, celsius);
      high = Math.max(high, celsius);
    }
    return new Degrees(Math.floor((low - 2) / STEP) * STEP, Math.ceil((high + 2) / STEP) * STEP);
  }

  private Degrees(double low, double high) {
    this.low = low;
    this.high = high;
  }

  double lowCelsius() {
    return low;
  }

  double highCelsius() {
    return high;
  }

  boolean isOffBelow(TemperaturePoint point) {
    return point.celsius() < low;
  }

  boolean isOffAbove(TemperaturePoint point) {
    return point.celsius() > high;
  }

  /** Returns where a temperature stands; one off the scale stands at its end. */
  double x(TemperaturePoint point) {
    double celsius = Math.min(high, Math.max(low, point.celsius()));
    return LEFT + (celsius - low) / (high - low) * (RIGHT - LEFT);
  }

  /** Returns the temperatures to number, every 10, 20 or 50 °C. */
  List<TemperaturePoint> numbers() {
    double span = high - low;
    double step = span <= 100 ? STEP : span <= 160 ? 2 * STEP : 5 * STEP;
    List<TemperaturePoint> numbers = new ArrayList<>();
    for (double celsius = Math.ceil(low / step) * step; celsius <= high; celsius += step) {
      numbers.add(TemperaturePoint.ofCelsius(celsius));
    }
    return numbers;
  }
}
