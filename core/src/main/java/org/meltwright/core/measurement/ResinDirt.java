// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;
import static org.meltwright.core.measurement.Measuring.input;
import static org.meltwright.core.measurement.Measuring.more;

import java.util.List;

/**
 * Dirt in a resin from what stays in the strainer.
 *
 * <p>w = (m(after) − m(before)) (1 − c) / m(resin), where c is the share of wax and resin that
 * still clings to the dirt. Drain it warm, press it, and weigh; half of the residue is usually
 * medium (common practice: 30 to 70 %), and that doubt leads unless it is rinsed out.
 *
 * <p>Two hundred grams of damar:
 *
 * <pre>{@code
 * ResinDirt strainer =
 *     new ResinDirt(
 *         Reading.shown(200.0, 0.1),
 *         Reading.shown(12.3, 0.1),
 *         Reading.shown(27.1, 0.1),
 *         ResinDirt.PRESSED);
 * strainer.share().text(); // 3.7 ± 1.8 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param resinGrams the resin that was dissolved, in g
 * @param beforeGrams the clean strainer, in g
 * @param afterGrams the strainer with what stayed in it, in g
 * @param clinging the share of medium in what stayed, from 0 to below 1
 */
public record ResinDirt(
    Reading resinGrams, Reading beforeGrams, Reading afterGrams, Reading clinging) {

  /** The share of medium in dirt that was drained warm and pressed; common practice. */
  public static final Reading PRESSED = Reading.within(0.5, 0.2);

  /**
   * Draws a problem if the strainer grew no heavier, or by more than the resin, or the share cannot
   * be.
   */
  public ResinDirt {
    more(afterGrams, beforeGrams, "mass of the full strainer in g");
    CHECK.between(clinging.value(), 0, Math.nextDown(1.0), "share of medium in the dirt");
    double dirt = (afterGrams.value() - beforeGrams.value()) * (1 - clinging.value());
    CHECK.between(resinGrams.value(), dirt, 1e9, "mass of the resin in g");
  }

  /**
   * Returns the share of the resin that did not dissolve, for {@code insolubles}.
   *
   * @return the share by mass, in %
   */
  public Measurement share() {
    return Measurement.of(
        "dirt in a resin by a strainer",
        "%",
        List.of(
            input("resin", "g", resinGrams),
            input("clean strainer", "g", beforeGrams),
            input("full strainer", "g", afterGrams),
            input("share of medium in the dirt", "", clinging)),
        x -> 100 * (x[2] - x[1]) * (1 - x[3]) / x[0]);
  }
}
