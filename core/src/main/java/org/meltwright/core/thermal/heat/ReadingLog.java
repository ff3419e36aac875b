// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.meltwright.core.thermal.heat.HeatSupply.CHECK;

import java.util.List;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/**
 * A log of temperature readings, and how long they lay above a threshold.
 *
 * <p>Between two readings the temperature is taken to run straight. Where two readings lie further
 * apart than the longest gap, nobody knows what happened: that time is reported apart and never
 * counted as below.
 *
 * <p>Readings of 80, 90 and 80 °C an hour apart lay above 85 °C for an hour; if two readings may
 * lie apart by half an hour only, nobody knows, and it may have been two:
 *
 * <pre>{@code
 * ReadingLog log =
 *     new ReadingLog(
 *         List.of(
 *             new ReadingLog.Reading(0, ofCelsius(80)),
 *             new ReadingLog.Reading(3600, ofCelsius(90)),
 *             new ReadingLog.Reading(7200, ofCelsius(80))));
 * log.above(ofCelsius(85), 3600).aboveHours(); // 1 h
 * log.above(ofCelsius(85), 1800).aboveHours(); // 0 h
 * log.above(ofCelsius(85), 1800).atMostHours(); // 2 h
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param readings the readings, each later than the one before
 */
public record ReadingLog(List<Reading> readings) {

  /**
   * A reading. Immutable and thread-safe.
   *
   * @param seconds when, in s since the start of the log
   * @param temperature what was read
   */
  public record Reading(double seconds, TemperaturePoint temperature) {

    /** Draws a problem if the time is not finite. */
    public Reading {
      CHECK.finite(seconds, "time of the reading in s");
    }
  }

  /**
   * Time above a threshold. Immutable and thread-safe.
   *
   * @param aboveSeconds how long the readings lay above it, in s
   * @param unknownSeconds how long nobody knows, in s
   */
  public record TimeAbove(double aboveSeconds, double unknownSeconds) {

    /**
     * Returns how long the readings lay above the threshold.
     *
     * @return the time, in h
     */
    public double aboveHours() {
      return QuantityKind.TIME.fromSi(aboveSeconds, MetricUnits.HOUR);
    }

    /**
     * Returns the longest time that it may have been: what nobody knows counts as above.
     *
     * @return the time, in h
     */
    public double atMostHours() {
      return QuantityKind.TIME.fromSi(aboveSeconds + unknownSeconds, MetricUnits.HOUR);
    }
  }

  /** Draws a problem if a reading is not later than the one before. */
  public ReadingLog {
    readings = List.copyOf(readings);
    for (int i = 1; i < readings.size(); i++) {
      if (readings.get(i).seconds() <= readings.get(i - 1).seconds()) {
        throw new ProblemException(
            Problem.of(
                    ThermalProblem.READINGS_OUT_OF_ORDER,
                    Bilingual.of(readings.get(i).seconds()).plus(" s"))
                .under("/readings/" + i));
      }
    }
  }

  /**
   * Returns how long the readings lay above a threshold.
   *
   * <p>For example, readings of 80, 90 and 80 °C an hour apart lay above 85 °C for one hour.
   *
   * @param threshold the threshold
   * @param longestGapSeconds how far two readings may lie apart, in s, above zero
   * @return the time above it, and the time that nobody knows
   * @throws ProblemException if the gap cannot be
   */
  public TimeAbove above(TemperaturePoint threshold, double longestGapSeconds) {
    CHECK.between(longestGapSeconds, 1e-9, 1e12, "longest gap in s");
    double above = 0;
    double unknown = 0;
    for (int i = 1; i < readings.size(); i++) {
      Reading first = readings.get(i - 1);
      Reading last = readings.get(i);
      double length = last.seconds() - first.seconds();
      if (length > longestGapSeconds) {
        unknown += length;
      } else {
        above += length * shareAbove(first.temperature(), last.temperature(), threshold);
      }
    }
    return new TimeAbove(above, unknown);
  }

  private static double shareAbove(
      TemperaturePoint first, TemperaturePoint last, TemperaturePoint threshold) {
    double start = first.minus(threshold).kelvin();
    double end = last.minus(threshold).kelvin();
    if (start <= 0 && end <= 0) {
      return 0;
    }
    return start >= 0 && end >= 0 ? 1 : Math.max(start, end) / Math.abs(end - start);
  }
}
