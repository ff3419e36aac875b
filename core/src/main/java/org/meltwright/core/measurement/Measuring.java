// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;

import java.util.List;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/** What all measurements with balance, rule and water share. */
final class Measuring {

  private static final double[] A = {-3.983035, 301.797, 522528.9, 69.34881, 999.974950};

  private Measuring() {}

  /**
   * Density of water in kg/m³ from 0 to 40 °C: Tanaka et al., Metrologia 38:301–309, 2001
   * (coefficients from memory; they agree with IAPWS-95 to 0.01 kg/m³).
   */
  static double waterDensity(double celsius) {
    double d = celsius + A[0];
    return A[4] * (1 - d * d * (celsius + A[1]) / (A[2] * (celsius + A[3])));
  }

  static Reading waterAt(Reading celsius) {
    CHECK.between(celsius.value(), 0, 40, "temperature of the water in °C");
    return celsius;
  }

  static Measurement.Input input(String name, String unit, Reading reading) {
    return new Measurement.Input(name, unit, reading);
  }

  /**
   * The density of a melt, by what water and melt change in the weight of one body.
   *
   * @param x mass of the body alone, mass with water, temperature of the water, mass with melt,
   *     temperature of the melt, and how the body grows in volume, per K
   */
  static Measurement density(String name, List<Measurement.Input> x, Reading meltCelsius) {
    return Measurement.of(name, "kg/m³", x, Measuring::density)
        .at(TemperaturePoint.ofCelsius(meltCelsius.value()));
  }

  private static double density(double[] x) {
    return waterDensity(x[2]) * (x[3] - x[0]) / ((x[1] - x[0]) * (1 + x[5] * (x[4] - x[2])));
  }

  /** Guards that one reading lies above another. */
  static void more(Reading larger, Reading smaller, String name) {
    if (!(larger.value() > smaller.value())) {
      throw new ProblemException(
          Problem.of(MeasurementProblem.NOT_MORE, Bilingual.of(larger.value()))
              .with("what", CHECK.name(name))
              .with("than", Bilingual.of(smaller.value())));
    }
  }
}
