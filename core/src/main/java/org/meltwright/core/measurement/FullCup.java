// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import static org.meltwright.core.measurement.Measuring.input;
import static org.meltwright.core.measurement.Measuring.more;

import java.util.List;

/**
 * Density of a melt by a full cup: weighed empty, brim-full of water, brim-full of melt.
 *
 * <p>ρ = ρ(water) (m(melt) − m(empty)) / ((m(water) − m(empty)) (1 + γ Δt)), where the cup has
 * grown by γ Δt in the heat. Fill the cup with water cold, dry it wholly, warm it, and fill it with
 * melt on the bench, never over the heat: a wet cup spits. The melt is at its temperature when it
 * is level; what contracts afterwards is weighed all the same.
 *
 * <p>A steel cup on a balance that shows tenths of a gram:
 *
 * <pre>{@code
 * FullCup cup =
 *     new FullCup(
 *         Reading.shown(48.2, 0.1),
 *         Reading.shown(248.0, 0.1),
 *         Reading.within(21, 1),
 *         Reading.shown(214.9, 0.1),
 *         Reading.within(80, 2));
 * Measurement melt = cup.density();
 * melt.value(); // 831.0
 * melt.text(); // 831.0 ± 1.4 kg/m³ at 80 °C
 * melt.contributions().get(0).input().name(); // growth of the cup
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param emptyGrams the empty, dry cup, in g
 * @param waterGrams the cup full of water, in g
 * @param waterCelsius the water, from 0 to 40 °C
 * @param meltGrams the cup full of melt, in g
 * @param meltCelsius the melt, in °C
 */
public record FullCup(
    Reading emptyGrams,
    Reading waterGrams,
    Reading waterCelsius,
    Reading meltGrams,
    Reading meltCelsius) {

  /** Growth in volume of a cup of steel or glass, per K: steel 48, glass 10–27 (remembered). */
  private static final Reading GROWTH = Reading.within(33e-6, 23e-6);

  /**
   * Draws a problem if a full cup is not heavier than the empty one or the water is no colder than
   * 40 °C.
   */
  public FullCup {
    more(waterGrams, emptyGrams, "mass of the cup with water in g");
    more(meltGrams, emptyGrams, "mass of the cup with melt in g");
    Measuring.waterAt(waterCelsius);
  }

  /**
   * Returns the density of the melt, for {@code liquid-density}.
   *
   * @return the density, in kg/m³, at the temperature of the melt
   */
  public Measurement density() {
    return Measuring.density(
        "density of the melt by a full cup",
        List.of(
            input("empty cup", "g", emptyGrams),
            input("cup with water", "g", waterGrams),
            input("temperature of the water", "°C", waterCelsius),
            input("cup with melt", "g", meltGrams),
            input("temperature of the melt", "°C", meltCelsius),
            input("growth of the cup", "1/K", GROWTH)),
        meltCelsius);
  }
}
