// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.Measuring.input;
import static org.meltwright.core.measurement.Measuring.more;

import java.util.List;

/**
 * Density of a melt by a sinker: a piece of metal on a thread, weighed in air, in water and in the
 * melt.
 *
 * <p>ρ = ρ(water) (m(air) − m(melt)) / ((m(air) − m(water)) (1 + γ Δt)): what it loses in a liquid
 * is the liquid it pushes aside. Hang it so that it touches neither floor nor wall, and dry it
 * wholly before it goes into the melt.
 *
 * <p>A bolt of 100 g:
 *
 * <pre>{@code
 * Sinker bolt =
 *     new Sinker(
 *         Reading.shown(101.32, 0.01),
 *         Reading.shown(88.45, 0.01),
 *         Reading.within(20, 1),
 *         Reading.shown(90.58, 0.01),
 *         Reading.within(82, 2));
 * bolt.density().text(); // 830.68 ± 0.94 kg/m³ at 82 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param airGrams the sinker in air, in g
 * @param waterGrams what it weighs in water, in g
 * @param waterCelsius the water, from 0 to 40 °C
 * @param meltGrams what it weighs in the melt, in g
 * @param meltCelsius the melt, in °C
 */
public record Sinker(
    Reading airGrams,
    Reading waterGrams,
    Reading waterCelsius,
    Reading meltGrams,
    Reading meltCelsius) {

  /** Growth in volume of steel or brass, per K (remembered: 33 to 57). */
  private static final Reading GROWTH = Reading.within(45e-6, 12e-6);

  /** Draws a problem if it is not lighter in a liquid than in air. */
  public Sinker {
    more(airGrams, waterGrams, "mass of the sinker in air in g");
    more(airGrams, meltGrams, "mass of the sinker in air in g");
    Measuring.waterAt(waterCelsius);
  }

  /**
   * Returns the density of the melt, for {@code liquid-density}.
   *
   * @return the density, in kg/m³, at the temperature of the melt
   */
  public Measurement density() {
    return Measuring.density(
        "density of the melt by a sinker",
        List.of(
            input("sinker in air", "g", airGrams),
            input("sinker in water", "g", waterGrams),
            input("temperature of the water", "°C", waterCelsius),
            input("sinker in the melt", "g", meltGrams),
            input("temperature of the melt", "°C", meltCelsius),
            input("growth of the sinker", "1/K", GROWTH)),
        meltCelsius);
  }
}
