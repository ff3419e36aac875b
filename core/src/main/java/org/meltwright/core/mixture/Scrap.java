// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.units.MassFraction;

/**
 * An amount of which a share is known only within bounds, such as scrapings of mixed colours.
 *
 * <p>For example:
 *
 * <pre>{@code
 * MassFractionRange upTo30 =
 *     new MassFractionRange(MassFraction.ZERO, MassFraction.ofPercent(30));
 * Scrap scrapings = Scrap.of(grams(200), upTo30);
 * Scrap cake = Scrap.of(grams(300), MassFractionRange.of(MassFraction.ofPercent(10)));
 * Scrap whole = Scrap.blend(List.of(scrapings, cake));
 * whole.massKilograms(); // 0.5 kg
 * whole.share(); // 6 to 18 % by mass
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param massKilograms how much there is, in kg, not negative
 * @param share the bounds of the share; 0 to 1 where nothing is known
 */
public record Scrap(double massKilograms, MassFractionRange share) {

  /** The bounds of a share that nobody knows. */
  public static final MassFractionRange UNKNOWN =
      new MassFractionRange(MassFraction.ZERO, MassFraction.ONE);

  /** Draws a problem if the mass is negative or not finite. */
  public Scrap {
    massKilograms = Amounts.require(massKilograms, "kg");
  }

  /**
   * Returns an amount with bounds.
   *
   * @param mass how much there is
   * @param share the bounds of the share
   * @return the scrap
   * @throws org.meltwright.units.ProblemException if the mass is negative or not finite
   */
  public static Scrap of(Quantity<Mass> mass, MassFractionRange share) {
    return new Scrap(Amounts.require(mass), share);
  }

  /**
   * Returns an amount of known composition.
   *
   * @param mixture what it is
   * @param what what the share is a share of
   * @return the scrap, with the bounds that the composition gives
   * @throws org.meltwright.units.ProblemException if a material is itself a mix of which the parts
   *     are not stated
   */
  public static Scrap of(Mixture mixture, ShareOf what) {
    return new Scrap(mixture.massKilograms(), mixture.composition().share(what));
  }

  /**
   * Returns what comes of melting scraps together.
   *
   * @param scraps the scraps, at least one above zero
   * @return the whole, with the bounds of its share
   * @throws org.meltwright.units.ProblemException if there is nothing
   */
  public static Scrap blend(List<Scrap> scraps) {
    double[] weights =
        Amounts.normalised(scraps.stream().mapToDouble(Scrap::massKilograms).toArray());
    double low = 0;
    double high = 0;
    double total = 0;
    for (int i = 0; i < weights.length; i++) {
      low += weights[i] * scraps.get(i).share.low().value();
      high += weights[i] * scraps.get(i).share.high().value();
      total += scraps.get(i).massKilograms;
    }
    return new Scrap(
        total,
        new MassFractionRange(
            MassFraction.of(Amounts.clamp(Math.min(low, high))),
            MassFraction.of(Amounts.clamp(high))));
  }
}
