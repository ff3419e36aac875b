// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.Locale;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.units.Estimate;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** How the sheet writes numbers: locale-free, with unit. */
final class Say {

  private static final double GRAMS = 1000;
  private static final double OUNCE = 0.028349523125;
  private static final int MOST_DECIMALS = 6;

  private Say() {}

  /**
   * A mass as the balance shows it: to as many decimals as its scale interval has, in grams, or in
   * ounces where the interval is one of ounces.
   */
  static String grams(double kilograms, double intervalKilograms) {
    int grams = decimalsOf(intervalKilograms * GRAMS);
    int ounces = decimalsOf(intervalKilograms / OUNCE);
    if (grams < MOST_DECIMALS) {
      return decimals(kilograms * GRAMS, grams) + " g";
    }
    if (ounces == MOST_DECIMALS) {
      return decimals(kilograms * GRAMS, 2) + " g"; // an interval of neither grams nor ounces
    }
    return decimals(kilograms / OUNCE, ounces) + " oz";
  }

  /** A mass in grams to a tenth. */
  static String grams(double kilograms) {
    return decimals(kilograms * GRAMS, 1) + " g";
  }

  /** The interval itself. */
  static String interval(double kilograms) {
    return grams(kilograms, kilograms);
  }

  /** An estimate: the central value, and its bounds where they differ. */
  static String estimate(Estimate<?> estimate, double factor, String unit) {
    String central = significant(estimate.centralSi() * factor) + " " + unit;
    return estimate.lowSi() == estimate.highSi()
        ? central
        : central
            + " ("
            + significant(estimate.lowSi() * factor)
            + " to "
            + significant(estimate.highSi() * factor)
            + ")";
  }

  /** A share from 0 to 1 in per cent. */
  static String percent(double share) {
    return decimals(share * 100, share < 0.1 ? 2 : 1) + " %";
  }

  /** A temperature on both scales. */
  static String temperature(TemperaturePoint point) {
    return decimals(point.celsius(), 1) + " °C / " + decimals(point.fahrenheit(), 1) + " °F";
  }

  static String temperature(TemperatureRange range) {
    return decimals(range.low().celsius(), 0)
        + " to "
        + decimals(range.high().celsius(), 0)
        + " °C";
  }

  /** A difference with its sign turned into words. */
  static String margin(TemperatureDifference margin) {
    String size = decimals(Math.abs(margin.kelvin()), 1) + " K";
    return margin.isNegative() ? size + " above it" : size + " below it";
  }

  static String perKilogram(UnitPrice price) {
    return price.currency().getCode() + " " + price.perKilogramRounded().getAmount();
  }

  /** Three significant figures, for what is an estimate. */
  static String significant(double value) {
    if (value == 0) {
      return "0";
    }
    int digits = 2 - (int) Math.floor(Math.log10(Math.abs(value)));
    double step = Math.pow(10, -digits);
    return decimals(Math.rint(value / step) * step, Math.max(0, digits));
  }

  static String decimals(double value, int count) {
    String text = String.format(Locale.ROOT, "%." + count + "f", value);
    return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
  }

  private static int decimalsOf(double interval) {
    int count = 0;
    while (count < MOST_DECIMALS && Math.abs(interval - Math.rint(interval)) > 1e-9 * interval) {
      interval *= 10;
      count++;
    }
    return count;
  }
}
