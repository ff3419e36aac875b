// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** How pictures write numbers: locale-free, with unit. */
final class Wording {

  private static final double MINUTE = 60;
  private static final double HOUR = 3600;
  private static final MathContext THREE_FIGURES = new MathContext(3, RoundingMode.HALF_UP);

  private Wording() {}

  /** A temperature to a tenth, such as "93.3 °C" or "90 °C". */
  static String celsius(TemperaturePoint point) {
    return tenth(point) + " °C";
  }

  /** A range, such as "62 to 65 °C"; one number where both ends are the same to a tenth. */
  static String celsius(TemperatureRange range) {
    return tenth(range.low()).equals(tenth(range.high()))
        ? celsius(range.low())
        : tenth(range.low()) + " to " + celsius(range.high());
  }

  /** A range that is an estimate, to whole degrees, such as "71 to 75 °C". */
  static String wholeCelsius(TemperatureRange range) {
    long low = Math.round(range.low().celsius());
    long high = Math.round(range.high().celsius());
    return low == high ? low + " °C" : low + " to " + high + " °C";
  }

  static String tenth(TemperaturePoint point) {
    return plain(BigDecimal.valueOf(point.celsius()).setScale(1, RoundingMode.HALF_UP));
  }

  /** A time to three figures in s, min or h, such as "12.5 s" or "1.5 min"; "no end" if endless. */
  static String seconds(double seconds) {
    if (Double.isInfinite(seconds)) {
      return "no end";
    }
    if (seconds < MINUTE) {
      return figures(seconds) + " s";
    }
    return seconds < HOUR ? figures(seconds / MINUTE) + " min" : figures(seconds / HOUR) + " h";
  }

  /** A mass in g below 1 kg and in kg above, to three figures or to the gram. */
  static String mass(double kilograms) {
    return kilograms < 1
        ? figures(kilograms * 1000) + " g"
        : plain(BigDecimal.valueOf(kilograms).setScale(3, RoundingMode.HALF_UP)) + " kg";
  }

  private static String figures(double value) {
    return plain(BigDecimal.valueOf(value).round(THREE_FIGURES));
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
