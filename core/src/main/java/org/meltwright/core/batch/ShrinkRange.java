// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.VolumeFraction;

/**
 * How much of its hot volume a casting loses in cooling, as a range.
 *
 * <p>ε = 1 − ρ(hot)/ρ(cold). If it shrank evenly, each length would lose 1 − (1 − ε)^⅓: 10 % of the
 * volume are 3.45 % of the length. A cake in an open mould sinks in the middle instead, so the
 * length is an upper bound.
 *
 * <p>For example, beeswax of 820 to 850 kg/m³ when it is poured, 950 to 960 kg/m³ when it is cold:
 *
 * <pre>{@code
 * Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
 * Estimate<Density> hot = wax.density(MaterialState.LIQUID);
 * Estimate<Density> cold = wax.density(MaterialState.SOLID);
 * ShrinkRange shrink = ShrinkRange.of(hot, cold);
 * shrink.low().percent(); // 10.5 %
 * shrink.high().percent(); // 14.6 %
 * shrink.linearHigh(); // 0.051
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param low the least, not below zero
 * @param central with both densities at the middle of their ranges
 * @param high the most
 */
public record ShrinkRange(VolumeFraction low, VolumeFraction central, VolumeFraction high) {

  /** Draws a problem if they are not in order. */
  public ShrinkRange {
    if (low.value() > central.value() || central.value() > high.value()) {
      throw CHECK.reversed(
          Bilingual.list(Bilingual.of(low), Bilingual.of(central), Bilingual.of(high)),
          "shrinkage");
    }
  }

  /**
   * Returns the shrinkage between two densities.
   *
   * @param hot the density of the melt
   * @param cold the density of the cold cake
   * @return the shrinkage; none where the melt would be the denser
   */
  public static ShrinkRange of(Estimate<Density> hot, Estimate<Density> cold) {
    return new ShrinkRange(
        share(hot.highSi(), cold.lowSi()),
        share(hot.centralSi(), cold.centralSi()),
        share(hot.lowSi(), cold.highSi()));
  }

  /**
   * Returns the shrinkage of each length if a volume shrank evenly.
   *
   * @param byVolume the shrinkage of the volume
   * @return the share of the length, from 0 to 1; 10 % of the volume are 0.0345
   */
  public static double linear(VolumeFraction byVolume) {
    return 1 - Math.cbrt(1 - byVolume.value());
  }

  /**
   * Returns the shrinkage of a volume of which each length shrank.
   *
   * @param linear the share of the length, from 0 to 1
   * @return the share of the volume; 0.031 of the length is 9.01 %
   * @throws org.meltwright.units.ProblemException if the share is not from 0 to 1
   */
  public static VolumeFraction byVolume(double linear) {
    double left = 1 - linear;
    return VolumeFraction.of(1 - left * left * left);
  }

  /**
   * Returns the largest shrinkage of a length.
   *
   * @return the share of the length, an upper bound
   */
  public double linearHigh() {
    return linear(high);
  }

  static VolumeFraction share(double hot, double cold) {
    return VolumeFraction.of(Math.max(0, 1 - hot / cold));
  }
}
