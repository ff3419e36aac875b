// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import org.meltwright.units.MassFraction;

/**
 * A share to be reached.
 *
 * <p>For example, how much wax keeps 100 g of a tube white with 18 to 30 % of oil at no more than
 * 10 % of oil, whatever the tube really holds:
 *
 * <pre>{@code
 * Material white = MaterialCatalogue.standard().require("oil-paint-titanium-white");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Mixture tube = Mixture.of(white, grams(100));
 * ShareTarget oil = ShareTarget.ofPercent(ShareOf.FREE_OIL.atHigh(), 10);
 * Correction thinned = Correction.toShares(tube, List.of(oil), List.of(Composition.of(wax)));
 * thinned.addedKilograms(); // 0.2 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param what what the share is a share of; at the low, middle or high end of its range
 * @param share the share by mass of the whole mix
 */
public record ShareTarget(ShareOf what, MassFraction share) {

  /**
   * Returns a share to be reached, in per cent by mass of the whole mix.
   *
   * @param what what the share is a share of
   * @param percent the share, where 10 is 10 %
   * @return the target
   * @throws org.meltwright.units.ProblemException if the number is not from 0 to 100
   */
  public static ShareTarget ofPercent(ShareOf what, double percent) {
    return new ShareTarget(what, MassFraction.ofPercent(percent));
  }
}
