// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

/** Boiling point of water, and the pressure of the air at a height. */
final class BoilingWater {

  /** IAPWS-IF97, region 4, equation 31 (coefficients from memory, held to its table 36). */
  private static final double[] N = {
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3
  };

  private BoilingWater() {}

  /** Saturation temperature in K for a pressure in MPa. */
  static double kelvin(double megapascal) {
    double b = Math.pow(megapascal, 0.25);
    double e = b * b + N[2] * b + N[5];
    double f = N[0] * b * b + N[3] * b + N[6];
    double g = N[1] * b * b + N[4] * b + N[7];
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double root = (N[9] + d) * (N[9] + d) - 4 * (N[8] + N[9] * d);
    return (N[9] + d - Math.sqrt(root)) / 2;
  }

  static double celsius(double hectopascal) {
    return kelvin(hectopascal * 1e-4) - 273.15;
  }

  /** Standard atmosphere, ISO 2533: pressure in hPa at a height above the sea in m. */
  static double hectopascal(double metres) {
    return 1013.25 * Math.pow(1 - 0.0065 * metres / 288.15, 9.80665 / (287.05287 * 0.0065));
  }
}
