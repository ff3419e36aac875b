// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.MeasurementProblem.CHECK;
import static org.meltwright.core.measurement.Measuring.input;
import static org.meltwright.core.measurement.Measuring.more;

import java.util.List;

/**
 * Density of a powder by a bottle and four weighings: empty, with powder, filled up with a liquid,
 * and with the liquid alone.
 *
 * <p>ρ = ρ(liquid) (m₂ − m₁) / ((m₄ − m₁) − (m₃ − m₂)). The liquid must wet the powder: water with
 * a drop of washing-up liquid for most minerals, paint oil for what water does not wet. Shake until
 * no bubble rises: air left in makes the powder seem light.
 *
 * <p>Red iron oxide in a bottle of 50 ml:
 *
 * <pre>{@code
 * Bottle bottle =
 *     new Bottle(
 *         Reading.shown(31.42, 0.01),
 *         Reading.shown(52.60, 0.01),
 *         Reading.shown(98.45, 0.01),
 *         Reading.shown(81.32, 0.01),
 *         Reading.within(998, 1));
 * bottle.density().text(); // 5219 ± 15 kg/m³
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param emptyGrams the empty, dry bottle, in g
 * @param powderGrams the bottle with powder, in g
 * @param filledGrams the bottle with powder, filled up with liquid, in g
 * @param liquidGrams the bottle with the liquid alone, in g
 * @param liquidDensity the density of the liquid, in kg/m³
 */
public record Bottle(
    Reading emptyGrams,
    Reading powderGrams,
    Reading filledGrams,
    Reading liquidGrams,
    Reading liquidDensity) {

  /** Draws a problem if more in the bottle is not heavier, or the powder takes up no room. */
  public Bottle {
    more(powderGrams, emptyGrams, "mass of the bottle with powder in g");
    more(filledGrams, powderGrams, "mass of the filled bottle in g");
    more(liquidGrams, emptyGrams, "mass of the bottle with liquid in g");
    CHECK.between(liquidDensity.value(), 1, 1e5, "density of the liquid in kg/m³");
    double displaced =
        liquidGrams.value() - emptyGrams.value() - filledGrams.value() + powderGrams.value();
    CHECK.between(displaced, 1e-9, 1e9, "mass of liquid that the powder displaces in g");
  }

  /**
   * Returns the density of the powder's grains, for {@code solid-density}.
   *
   * @return the density, in kg/m³
   */
  public Measurement density() {
    return Measurement.of(
        "density of a powder by a bottle",
        "kg/m³",
        List.of(
            input("empty bottle", "g", emptyGrams),
            input("bottle with powder", "g", powderGrams),
            input("filled bottle", "g", filledGrams),
            input("bottle with liquid", "g", liquidGrams),
            input("density of the liquid", "kg/m³", liquidDensity)),
        x -> x[4] * (x[1] - x[0]) / ((x[3] - x[0]) - (x[2] - x[1])));
  }
}
