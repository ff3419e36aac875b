// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;

import java.util.List;
import org.meltwright.core.thermal.heat.ReadingLog;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/**
 * What power reaches a pot, and what it loses, from a log of its warming up.
 *
 * <p>C (t − t₁) = P τ − k ∫ (t − t(room)) dτ, fitted by least squares with an offset; C is the heat
 * capacity of what is in the pot and of the pot. Log water, or wax that is all molten: while wax
 * melts it takes up heat and stays as warm. Divide the power by that of the plug for the share that
 * reaches the pot.
 *
 * <p>The scatter of the readings tells the uncertainty, and that of C comes on top. Log to within
 * some kelvins of where it would stay by itself, or else power and loss cannot be told apart.
 *
 * <p>Two litres of water, read every five minutes:
 *
 * <pre>{@code
 * double[] celsius = {20.0, 33.1, 44.6, 54.3, 63.0, 70.5, 77.0};
 * List<ReadingLog.Reading> readings = new ArrayList<>();
 * for (int i = 0; i < celsius.length; i++) {
 *   readings.add(new ReadingLog.Reading(300 * i, ofCelsius(celsius[i])));
 * }
 * HeatUpLog log =
 *     new HeatUpLog(new ReadingLog(readings), ofCelsius(20), Reading.within(8800, 150));
 * log.power().text(); // 411.1 ± 8.8 W
 * log.loss().text(); // 4.10 ± 0.15 W/K
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param log the readings, at least five
 * @param room the temperature of the room
 * @param heatCapacity C of what is warmed and its vessel, in J/K
 */
public record HeatUpLog(ReadingLog log, TemperaturePoint room, Reading heatCapacity) {

  private static final int LEAST = 5;

  /** Power and loss by least squares, with their variances. */
  private record Fit(
      double power, double loss, double powerVariance, double lossVariance, double freedom) {}

  /** Draws a problem if there are fewer than five or the heat capacity is not above zero. */
  public HeatUpLog {
    CHECK.between(heatCapacity.value(), 1e-6, 1e12, "heat capacity in J/K");
    if (log.readings().size() < LEAST) {
      throw Reading.tooFew(log.readings().size(), LEAST);
    }
  }

  /**
   * Returns the power that reaches the pot.
   *
   * @return the power, in W
   */
  public Measurement power() {
    Fit fit = fit();
    return scaled("power that reaches the pot", "W", fit.power, fit.powerVariance, fit.freedom);
  }

  /**
   * Returns what the pot loses for each kelvin that it is warmer than the room.
   *
   * @return the loss, in W/K
   */
  public Measurement loss() {
    Fit fit = fit();
    return scaled("loss of the pot", "W/K", fit.loss, fit.lossVariance, fit.freedom);
  }

  /** Power and loss are in proportion to the heat capacity. */
  private Measurement scaled(String name, String unit, double value, double variance, double free) {
    double capacity = heatCapacity.value();
    return Measurement.of(
        name,
        unit,
        List.of(
            Measuring.input(name, unit, new Reading(value, Math.sqrt(variance), free)),
            Measuring.input("heat capacity", "J/K", heatCapacity)),
        x -> x[0] * x[1] / capacity);
  }

  /** Heat taken up against time and against the integral of the excess over the room. */
  private Fit fit() {
    int n = log.readings().size();
    double[] heat = new double[n];
    double[] time = new double[n];
    double[] excess = new double[n];
    for (int i = 0; i < n; i++) {
      ReadingLog.Reading now = log.readings().get(i);
      heat[i] = heatCapacity.value() * above(now);
      time[i] = now.seconds() - log.readings().get(0).seconds();
      excess[i] = i == 0 ? 0 : excess[i - 1] + area(log.readings().get(i - 1), now);
    }
    return leastSquares(centred(time), centred(excess), centred(heat));
  }

  private double above(ReadingLog.Reading reading) {
    return reading.temperature().minus(room).kelvin();
  }

  private double area(ReadingLog.Reading before, ReadingLog.Reading after) {
    return (above(before) + above(after)) / 2 * (after.seconds() - before.seconds());
  }

  private static double[] centred(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    double[] centred = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      centred[i] = values[i] - sum / values.length;
    }
    return centred;
  }

  private static Fit leastSquares(double[] time, double[] excess, double[] heat) {
    double tt = dot(time, time);
    double te = dot(time, excess);
    double ee = dot(excess, excess);
    double determinant = tt * ee - te * te;
    if (!(determinant > 1e-9 * tt * ee)) {
      throw new ProblemException(
          Problem.of(MeasurementProblem.NOT_APART, Bilingual.of(time.length)));
    }
    double power = (dot(time, heat) * ee - dot(excess, heat) * te) / determinant;
    double loss = (dot(time, heat) * te - dot(excess, heat) * tt) / determinant;
    double free = heat.length - 3.0;
    double residuals = 0;
    for (int i = 0; i < heat.length; i++) {
      double off = heat[i] - power * time[i] + loss * excess[i];
      residuals += off * off;
    }
    double s2 = residuals / free;
    return new Fit(power, loss, s2 * ee / determinant, s2 * tt / determinant, free);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
