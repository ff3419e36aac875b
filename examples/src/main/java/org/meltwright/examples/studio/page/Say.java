// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.Locale;
import javax.measure.quantity.Time;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.units.Estimate;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/** How pages and their pictures write numbers: locale-free, with unit. */
public final class Say {

  private static final double GRAMS = 1000;
  private static final double OUNCE = 0.028349523125;
  private static final int MOST_DECIMALS = 6;
  private static final double MINUTE = 60;
  private static final double HOUR = 3600;

  private Say() {}

  /**
   * Writes a mass as the balance shows it: to as many decimals as its scale interval has, in grams,
   * or in ounces where the interval is one of ounces.
   *
   * @param kilograms the mass in kg
   * @param intervalKilograms the scale interval in kg
   * @return such as "91.3 g"
   */
  public static String grams(double kilograms, double intervalKilograms) {
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

  /**
   * Writes a mass in grams to a tenth.
   *
   * @param kilograms the mass in kg
   * @return such as "91.3 g"
   */
  public static String grams(double kilograms) {
    return decimals(kilograms * GRAMS, 1) + " g";
  }

  /**
   * Writes a scale interval.
   *
   * @param kilograms the interval in kg
   * @return such as "0.1 g"
   */
  public static String interval(double kilograms) {
    return grams(kilograms, kilograms);
  }

  /**
   * Writes an estimate to three significant figures, to two where its high value is twice the low
   * one or more.
   *
   * @param estimate the estimate
   * @param factor what turns its SI value into the unit
   * @param unit the unit
   * @return the central value, and its bounds where they differ
   */
  public static String estimate(Estimate<?> estimate, double factor, String unit) {
    int digits = digits(estimate);
    String central = significant(estimate.centralSi() * factor, digits) + " " + unit;
    return estimate.lowSi() == estimate.highSi()
        ? central
        : central
            + " ("
            + significant(estimate.lowSi() * factor, digits)
            + " to "
            + significant(estimate.highSi() * factor, digits)
            + ")";
  }

  /**
   * Writes a share.
   *
   * @param share the share, from 0 to 1
   * @return per cent, such as "4.00 %" or "12.5 %"
   */
  public static String percent(double share) {
    return decimals(share * 100, share < 0.1 ? 2 : 1) + " %";
  }

  /**
   * Writes a temperature to a tenth.
   *
   * @param point the temperature
   * @return such as "90.0 °C"
   */
  public static String celsius(TemperaturePoint point) {
    return decimals(point.celsius(), 1) + " °C";
  }

  /**
   * Writes a range as its source states it.
   *
   * @param range the range
   * @return such as "62 to 65 °C" or "62.5 to 65.0 °C"; one temperature where both ends are one
   */
  public static String celsius(TemperatureRange range) {
    if (celsius(range.low()).equals(celsius(range.high()))) {
      return celsius(range.low());
    }
    int count = isWhole(range.low()) && isWhole(range.high()) ? 0 : 1;
    return decimals(range.low().celsius(), count)
        + " to "
        + decimals(range.high().celsius(), count)
        + " °C";
  }

  /**
   * Writes a temperature for an axis.
   *
   * @param point the temperature
   * @return its number, such as "20" or "22.5"
   */
  public static String degrees(TemperaturePoint point) {
    return decimals(point.celsius(), isWhole(point) ? 0 : 1);
  }

  private static boolean isWhole(TemperaturePoint point) {
    return decimals(point.celsius(), 1).endsWith(".0");
  }

  /**
   * Writes a temperature on both scales.
   *
   * @param point the temperature
   * @return such as "90.0 °C / 194.0 °F"
   */
  public static String temperature(TemperaturePoint point) {
    int count = places(point.celsius());
    return decimals(point.celsius(), count)
        + " °C / "
        + decimals(point.fahrenheit(), count)
        + " °F";
  }

  /** One decimal for what is a whole tenth, else two: 93.25 must not read as a limit of 93.3. */
  private static int places(double number) {
    return Math.abs(number * 10 - Math.rint(number * 10)) < 1e-6 ? 1 : 2;
  }

  /**
   * Writes a temperature of which only a lower bound is known.
   *
   * @param point the lower bound
   * @return such as "at least 95.0 °C; how far it rises above is not known"
   */
  public static String atLeast(TemperaturePoint point) {
    return "at least " + celsius(point) + "; how far it rises above is not known";
  }

  /**
   * Writes a range that is an estimate, to whole degrees.
   *
   * @param range the range
   * @return such as "71 to 75 °C"
   */
  public static String temperature(TemperatureRange range) {
    String low = decimals(range.low().celsius(), 0);
    String high = decimals(range.high().celsius(), 0);
    return (low.equals(high) ? low : low + " to " + high) + " °C";
  }

  /**
   * Writes a time to three figures.
   *
   * @param seconds the time in s; may be infinite
   * @return such as "12.5 s", "1.50 min" or "no end"
   */
  public static String time(double seconds) {
    return time(seconds, 3);
  }

  private static String time(double seconds, int digits) {
    if (Double.isInfinite(seconds)) {
      return "no end";
    }
    if (seconds < MINUTE) {
      return significant(seconds, digits) + " s";
    }
    return seconds < HOUR
        ? significant(seconds / MINUTE, digits) + " min"
        : significant(seconds / HOUR, digits) + " h";
  }

  /**
   * Writes an estimate of a time to three figures, to two where it spans a factor of two or more.
   *
   * @param time the estimate
   * @return the central value, and its bounds where they differ
   */
  public static String time(Estimate<Time> time) {
    int digits = digits(time);
    String central = time(time.centralSi(), digits);
    return time.lowSi() == time.highSi()
        ? central
        : central + " (" + time(time.lowSi(), digits) + " to " + time(time.highSi(), digits) + ")";
  }

  /**
   * Writes a difference with its sign turned into words.
   *
   * @param margin how far something lies below a limit; negative above it
   * @return such as "3.7 K above it"
   */
  public static String margin(TemperatureDifference margin) {
    double kelvin = Math.abs(margin.kelvin());
    String size = decimals(kelvin, places(kelvin)) + " K";
    return margin.isNegative() ? size + " above it" : size + " below it";
  }

  /**
   * Writes a price per kilogram.
   *
   * @param price the price
   * @return money, such as "EUR 19.80"
   */
  public static String perKilogram(UnitPrice price) {
    return price.currency().getCode() + " " + price.perKilogramRounded().getAmount();
  }

  /**
   * Writes three significant figures, for what is an estimate.
   *
   * @param value the value
   * @return its digits, such as "71.2" or "1230"
   */
  public static String significant(double value) {
    return significant(value, 3);
  }

  private static int digits(Estimate<?> estimate) {
    return estimate.highSi() >= 2 * estimate.lowSi() && estimate.highSi() > 0 ? 2 : 3;
  }

  private static String significant(double value, int count) {
    if (value == 0) {
      return "0";
    }
    int digits = count - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
    double step = Math.pow(10, -digits);
    return decimals(Math.rint(value / step) * step, Math.max(0, digits));
  }

  /**
   * Writes a number.
   *
   * @param value the number
   * @param count how many decimals, from 0
   * @return its digits; never "-0"
   */
  public static String decimals(double value, int count) {
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
