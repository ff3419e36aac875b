// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.meltwright.core.planning.blend.Bounded.CHECK;

import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

/**
 * What a maker wants of a blend: a bound that it is to keep, or a number of parts.
 *
 * <p>A wish is hard, unless it has a rank by which it may give way: those of the highest number
 * give way first, and no more than they must. A limit of safety is no wish: it stands in the review
 * that looks at the answer, and gives way to nothing.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Wish resin = Wish.share(ShareOf.RESIN, Wish.percent(11, 14));
 * Wish old = Wish.useUp("old cakes").ranked(1);
 * resin.inWords(); // resin between 11 % by mass and 14 % by mass
 * resin.rank(); // OptionalInt.empty
 * old.inWords(); // old cakes used up
 * old.rank(); // OptionalInt[1]
 * }</pre>
 *
 * <p>All are immutable and thread-safe.
 */
public sealed interface Wish permits Bounded, PartCount {

  /** The most parts of a question that a number of parts may be asked of. */
  int MOST_CANDIDATES = 12;

  /**
   * Returns a range of shares by mass.
   *
   * @param low the low end, where 11 is 11 %
   * @param high the high end
   * @return the range
   * @throws ProblemException if an end is not from 0 to 100, or they are reversed
   */
  static MassFractionRange percent(double low, double high) {
    return new MassFractionRange(MassFraction.ofPercent(low), MassFraction.ofPercent(high));
  }

  /**
   * Wishes for a share by mass of a material, a family, a constituent, free oil or pigment.
   *
   * @param what what is counted; in a question about the middle, at the end of its range chosen
   * @param range the bounds of its share of the blend; equal ends for one share
   * @return the wish
   */
  static Wish share(ShareOf what, MassFractionRange range) {
    return Bounded.share(new Figures.MassShare(what), range);
  }

  /**
   * Wishes for the share by mass of one part of the question.
   *
   * @param part the name of the part
   * @param range the bounds of its share of the blend
   * @return the wish
   */
  static Wish shareOfPart(String part, MassFractionRange range) {
    return Bounded.share(new Figures.PartShare(part), range);
  }

  /**
   * Wishes for a share by volume.
   *
   * @param what what is counted
   * @param low the least share of the volume of the blend
   * @param high the largest share
   * @param basis the state that volumes are counted in, and where densities come from; what is
   *     counted inside a material by the densities of its constituents
   * @return the wish
   * @throws ProblemException if the ends are reversed
   */
  static Wish volumeShare(
      ShareOf what, VolumeFraction low, VolumeFraction high, DensityBasis basis) {
    CHECK.ordered(low.value(), high.value(), "share of the volume");
    return new Bounded(
        new Figures.VolumeShare(what, basis),
        low.value() == 0 ? Double.NEGATIVE_INFINITY : low.value(),
        high.value() == 1 ? Double.POSITIVE_INFINITY : high.value(),
        Bounded.HARD);
  }

  /**
   * Wishes for the ratio of two shares.
   *
   * @param first what is counted first
   * @param second what it is measured with
   * @param leastFactor the least quotient, zero or more
   * @param mostFactor the largest quotient; infinity for none
   * @return the wish
   * @throws ProblemException if the ends are reversed or below zero
   */
  static Wish ratio(ShareOf first, ShareOf second, double leastFactor, double mostFactor) {
    CHECK.between(leastFactor, 0, 1e9, "quotient of two shares");
    CHECK.between(Math.min(mostFactor, 1e9), 0, 1e9, "quotient of two shares");
    CHECK.ordered(leastFactor, mostFactor, "quotient of two shares");
    return new Bounded(
        new Figures.RatioOf(first, second),
        leastFactor == 0 ? Double.NEGATIVE_INFINITY : leastFactor,
        mostFactor,
        Bounded.HARD);
  }

  /**
   * Wishes for the mean of a figure that adds up by mass: acid, ester, saponification or iodine
   * value.
   *
   * @param key the property
   * @param range the bounds of its mean; infinite above for none
   * @return the wish
   * @throws ProblemException if figures of that property do not add up by mass
   */
  static Wish figure(PropertyKey<NumberRange> key, NumberRange range) {
    return Bounded.figure(key, range);
  }

  /**
   * Wishes for the density of the blend, by additive volumes.
   *
   * @param range the bounds
   * @param basis the state that volumes are counted in, and where densities come from
   * @return the wish
   */
  static Wish density(QuantityRange<Density> range, DensityBasis basis) {
    CHECK.between(range.low(), 1e-3, 1e5, "density");
    return new Bounded(
        new Figures.SpecificVolume(basis), 1 / range.highSi(), 1 / range.lowSi(), Bounded.HARD);
  }

  /**
   * Wishes for a cost.
   *
   * @param most the most that a kilogram may cost
   * @return the wish
   */
  static Wish costAtMost(UnitPrice most) {
    return Bounded.cost(most);
  }

  /**
   * Wishes for an amount.
   *
   * @param mass how much is to be made
   * @return the wish
   * @throws ProblemException if the mass is not above zero
   */
  static Wish amount(Quantity<Mass> mass) {
    double kilograms = CHECK.between(mass, 1e-9, 1e9, "amount");
    return new Bounded(new Figures.Amount(Figures.Amount.ALL), kilograms, kilograms, Bounded.HARD);
  }

  /**
   * Wishes for at most so much.
   *
   * @param mass the most that is to be made, such as what the pot holds
   * @return the wish
   * @throws ProblemException if the mass is not above zero
   */
  static Wish amountAtMost(Quantity<Mass> mass) {
    double kilograms = CHECK.between(mass, 1e-9, 1e9, "amount");
    return new Bounded(
        new Figures.Amount(Figures.Amount.ALL), Double.NEGATIVE_INFINITY, kilograms, Bounded.HARD);
  }

  /**
   * Wishes that at least so much of a part goes in.
   *
   * @param part the name of the part
   * @param mass how much
   * @return the wish
   * @throws ProblemException if the mass is not above zero
   */
  static Wish useAtLeast(String part, Quantity<Mass> mass) {
    double kilograms = CHECK.between(mass, 1e-9, 1e9, "amount", part);
    return new Bounded(new Figures.Amount(part), kilograms, Double.POSITIVE_INFINITY, Bounded.HARD);
  }

  /**
   * Wishes that all that there is of a part goes in.
   *
   * @param part the name of a part whose stock is stated
   * @return the wish
   */
  static Wish useUp(String part) {
    return new Bounded(
        new Figures.Amount(part), Bounded.ALL_OF_IT, Double.POSITIVE_INFINITY, Bounded.HARD);
  }

  /**
   * Wishes for a blend near a recipe.
   *
   * @param recipe the recipe, in materials
   * @param most how much of the blend may differ: half the sum of the differences of all shares
   * @return the wish
   */
  static Wish near(Composition recipe, MassFraction most) {
    return new Bounded(
        new Figures.Change(recipe), Double.NEGATIVE_INFINITY, most.value(), Bounded.HARD);
  }

  /**
   * Wishes for few parts. All choices of so many are tried, so the question may have {@value
   * #MOST_CANDIDATES} parts at most.
   *
   * @param most the most parts that may go in, at least one; always hard
   * @return the wish
   * @throws ProblemException if the number is not from 1 to 12
   */
  static Wish partsAtMost(int most) {
    return new PartCount((int) CHECK.between(most, 1, MOST_CANDIDATES, "number of parts"));
  }

  /**
   * Returns the same wish, which may give way.
   *
   * @param rank its rank: 1 gives way last
   * @return the new wish
   * @throws ProblemException if the rank is not from 1 to 99, or a number of parts was to give way
   */
  Wish ranked(int rank);

  /** {@return the rank; empty for a wish that does not give way} */
  OptionalInt rank();

  /**
   * Says the wish.
   *
   * @return for example "resin between 11 % by mass and 14 % by mass"
   */
  Bilingual inWords();
}
