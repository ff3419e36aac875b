// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;
import static org.meltwright.core.measurement.Measuring.input;
import static org.meltwright.core.measurement.Measuring.more;

import java.util.List;

/**
 * Oil drained out of a paint, from how much heavier the paper grew.
 *
 * <p>w = (m(after) − m(before)) / m(paint). Scrape the paint off before the paper is weighed again.
 * Oily paper heats itself: lay it out flat outdoors to harden, or keep it under water in a closed
 * tin.
 *
 * <p>Forty grams from a tube, overnight on kitchen paper:
 *
 * <pre>{@code
 * DrainedOil overnight =
 *     new DrainedOil(
 *         Reading.shown(40.0, 0.1), Reading.shown(6.2, 0.1), Reading.shown(9.9, 0.1));
 * overnight.share().text(); // 9.25 ± 0.21 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param paintGrams the paint before it was drained, in g
 * @param beforeGrams the dry paper, in g
 * @param afterGrams the paper with the oil, in g
 */
public record DrainedOil(Reading paintGrams, Reading beforeGrams, Reading afterGrams) {

  /** Draws a problem if the paper grew no heavier, or by more than the paint. */
  public DrainedOil {
    more(afterGrams, beforeGrams, "mass of the oily paper in g");
    double oil = afterGrams.value() - beforeGrams.value();
    CHECK.between(paintGrams.value(), oil, 1e9, "mass of the paint in g");
  }

  /**
   * Returns how much of the paint drained out as oil.
   *
   * @return the share of the paint by mass, in %
   */
  public Measurement share() {
    return Measurement.of(
        "oil drained out of a paint",
        "%",
        List.of(
            input("paint", "g", paintGrams),
            input("dry paper", "g", beforeGrams),
            input("oily paper", "g", afterGrams)),
        x -> 100 * (x[2] - x[1]) / x[0]);
  }
}
