// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;
import static org.meltwright.core.measurement.Measuring.input;

import java.util.List;

/**
 * Shrinkage of a casting from two lengths: the mould, and the casting once it is cold.
 *
 * <p>s = 1 − L(casting) / L(mould). The mould for a casting of a wanted length is longer by the
 * factor L(mould) / L(casting). Measure along one line of mould and casting, as long a one as there
 * is; a day later, for wax goes on shrinking.
 *
 * <p>A bar of 200 mm:
 *
 * <pre>{@code
 * CastLength bar = new CastLength(Reading.within(200.0, 0.5), Reading.within(195.6, 0.5));
 * bar.shrinkage().text(); // 2.20 ± 0.41 %
 * bar.mouldFactor().value(); // 1.0225
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param mouldMillimetres the length in the mould, in mm
 * @param castingMillimetres the same length of the cold casting, in mm
 */
public record CastLength(Reading mouldMillimetres, Reading castingMillimetres) {

  /** Draws a problem if a length is not above zero. */
  public CastLength {
    CHECK.between(mouldMillimetres.value(), 1e-3, 1e6, "length of the mould in mm");
    CHECK.between(castingMillimetres.value(), 1e-3, 1e6, "length of the casting in mm");
  }

  private List<Measurement.Input> inputs() {
    return List.of(
        input("length of the mould", "mm", mouldMillimetres),
        input("length of the casting", "mm", castingMillimetres));
  }

  /**
   * Returns the linear shrinkage, for {@code linear-shrinkage}.
   *
   * @return the share of the length that is lost, in %
   */
  public Measurement shrinkage() {
    return Measurement.of(
        "linear shrinkage of a casting", "%", inputs(), x -> 100 * (1 - x[1] / x[0]));
  }

  /**
   * Returns by how much longer a mould must be than its casting.
   *
   * @return the factor, a pure number
   */
  public Measurement mouldFactor() {
    return Measurement.of("mould factor", "", inputs(), x -> x[0] / x[1]);
  }
}
