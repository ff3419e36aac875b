// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

/**
 * A vapour held against its lower flammable limit, which is stated in per cent by volume.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // turpentine: 0.8 % by volume
 * Flammability vapour = new Flammability(0.8);
 * vapour.partsPerMillionAt(10); // 800.0 ppm
 * vapour.percentOfLowerLimit(100); // 1.25 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param lowerLimitPercent the lower flammable limit, in per cent by volume, above 0, at most 100
 */
public record Flammability(double lowerLimitPercent) {

  /** Draws a problem if it is not above 0 and at most 100. */
  public Flammability {
    CHECK.between(lowerLimitPercent, 1e-6, 100, "lower flammable limit in per cent");
  }

  /**
   * Returns how many parts per million a percentage of the lower limit is.
   *
   * <p>For example, 10 % of the limit of turpentine, 0.8 %, is 800 ppm. An alarm is set at 10 %;
   * nothing is planned above 25 %.
   *
   * @param percent the percentage of the lower flammable limit, not negative
   * @return parts per million by volume
   * @throws org.meltwright.units.ProblemException if it is negative or no number
   */
  public double partsPerMillionAt(double percent) {
    CHECK.between(percent, 0, 1e4, "per cent of the lower flammable limit");
    return percent / 100 * lowerLimitPercent * 10_000;
  }

  /**
   * Returns a concentration as a percentage of the lower limit.
   *
   * @param ppm parts per million by volume, from 0 to 1e6
   * @return the percentage, where 100 burns
   * @throws org.meltwright.units.ProblemException if it is negative or no number
   */
  public double percentOfLowerLimit(double ppm) {
    CHECK.between(ppm, 0, 1e6, "concentration in ppm");
    return 100 * ppm / (lowerLimitPercent * 10_000);
  }
}
