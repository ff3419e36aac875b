// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.util.Locale;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.MassFraction;
import org.meltwright.units.VolumeFraction;

/**
 * How much of an ingredient a line of a recipe states: parts, a share of the whole, or the rest.
 *
 * <p>A line is kept as it was stated; what it weighs is worked out by the recipe. For example, a
 * paint with a tenth of pigment by volume, 2 % of resin by mass, and medium as the rest:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
 * StatedAmount tenth = StatedAmount.of(VolumeFraction.ofPercent(10), DensityBasis.SOLID);
 * Recipe paint =
 *     Recipe.of(
 *         "white",
 *         List.of(
 *             new RecipePart(Ingredient.of(white), tenth),
 *             new RecipePart(Ingredient.of(resin), StatedAmount.of(MassFraction.ofPercent(2))),
 *             new RecipePart(Ingredient.of(wax), StatedAmount.rest())));
 * paint.composition().massFraction(resin).percent(); // 2.0 %
 * paint.composition().volumeView(DensityBasis.SOLID).volumeFraction(white).percent(); // 10.0 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface StatedAmount {

  /**
   * Returns parts by mass.
   *
   * @param parts how many, in the recipe's own unit, from 0 to 1e12
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the parts are negative, not finite or beyond
   *     1e12
   */
  static StatedAmount parts(double parts) {
    return new Parts(parts);
  }

  /**
   * Returns parts by volume.
   *
   * @param parts how many, in the recipe's own unit, from 0 to 1e12
   * @param basis the state that the volume was measured in: solid, melt or loose bulk
   * @return the amount
   * @throws org.meltwright.units.ProblemException if the parts are negative, not finite or beyond
   *     1e12
   */
  static StatedAmount volumeParts(double parts, DensityBasis basis) {
    return new VolumeParts(parts, basis);
  }

  /**
   * Returns a share by mass of the whole.
   *
   * @param share the share
   * @return the amount
   */
  static StatedAmount of(MassFraction share) {
    return new MassShare(share);
  }

  /**
   * Returns a share by volume of the whole.
   *
   * @param share the share
   * @param basis the state that the volumes of all lines are measured in
   * @return the amount
   */
  static StatedAmount of(VolumeFraction share, DensityBasis basis) {
    return new VolumeShare(share, basis);
  }

  /**
   * Returns what the other lines of a recipe leave of the whole.
   *
   * @return the amount
   */
  static StatedAmount rest() {
    return new Rest();
  }

  /**
   * Parts by mass.
   *
   * @param parts how many
   */
  record Parts(double parts) implements StatedAmount {

    static final double MOST = 1e12;

    /** Draws a problem if they are negative, not finite or beyond 1e12. */
    public Parts {
      CHECK.between(parts, 0, MOST, "number of parts");
    }

    @Override
    public String toString() {
      return Double.toString(parts);
    }
  }

  /**
   * Parts by volume.
   *
   * @param parts how many
   * @param basis the state that the volume was measured in
   */
  record VolumeParts(double parts, DensityBasis basis) implements StatedAmount {

    /** Draws a problem if they are negative, not finite or beyond 1e12. */
    public VolumeParts {
      CHECK.between(parts, 0, Parts.MOST, "number of parts");
    }

    @Override
    public String toString() {
      return parts + " by volume, " + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A share by mass.
   *
   * @param share the share of the whole
   */
  record MassShare(MassFraction share) implements StatedAmount {

    @Override
    public String toString() {
      return share.toString();
    }
  }

  /**
   * A share by volume.
   *
   * @param share the share of the whole
   * @param basis the state that all volumes are measured in
   */
  record VolumeShare(VolumeFraction share, DensityBasis basis) implements StatedAmount {

    @Override
    public String toString() {
      return share + ", " + basis.state().name().toLowerCase(Locale.ROOT);
    }
  }

  /** What the other lines leave. */
  record Rest() implements StatedAmount {

    @Override
    public String toString() {
      return "rest";
    }
  }
}
