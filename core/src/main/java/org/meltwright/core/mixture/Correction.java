// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

/**
 * What to add to a pot, or to take out of it, so that it reaches a share.
 *
 * <pre>
 * added = pot · (present − target) / (target − share in the addition)
 * </pre>
 *
 * <p>For example, a pot at 35 % that is to come down to 10 % needs 2.5 g per gram of an addition
 * that holds none; 600 g at 1 : 10 that are to be 1 : 7 need 23.4 g of the pure first side.
 *
 * <p>The second of these, in code:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition resin = Composition.of(shelf.require("damar"));
 * Composition wax = Composition.of(shelf.require("beeswax-yellow"));
 * Mixture pot = Mixture.of(Composition.blend(List.of(resin, wax), 1, 10), grams(600));
 * Correction stronger =
 *     Correction.toShare(pot, ShareOf.RESIN, MassFraction.of(1.0 / 8), resin);
 * stronger.addedKilograms(); // 0.0234 kg
 * stronger.result().massKilograms(); // 0.6234 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Correction {

  private static final double NOTHING = 1e-12;

  /** Beside these water may dry off; wax, resin, oil, solvent and what is not stated are not. */
  private static final Set<MaterialFamily> MAY_BE_DRIED =
      EnumSet.of(
          MaterialFamily.WATER,
          MaterialFamily.PIGMENT,
          MaterialFamily.FILLER,
          MaterialFamily.DISPERSION);

  private final Mixture pot;
  private final List<Mixture> additions;
  private final Optional<Mixture> takenOut;
  private final Mixture result;

  /** What was asked, to tell how it came about. */
  private final Aim aim;

  /**
   * Returns what to add to reach one share.
   *
   * @param pot what is there
   * @param what what the share is a share of; where it is a range, at the end that was chosen
   * @param target the share to reach, by mass of the whole
   * @param addition what may be added
   * @return the correction; nothing is added where the share is there already, within 1e-12 of it
   * @throws ProblemException if no amount of the addition reaches it, or the pot is empty
   */
  public static Correction toShare(
      Mixture pot, ShareOf what, MassFraction target, Composition addition) {
    double present = what.valueIn(pot.composition());
    double added = what.valueIn(addition);
    double wanted = target.value();
    double missing = present - wanted;
    boolean isMet = Math.abs(missing) <= NOTHING * Math.max(present, wanted);
    double perKilogram = isMet ? 0 : missing / (wanted - added);
    if (!isReached(perKilogram)) {
      double nearest = Math.abs(added - wanted) < Math.abs(missing) ? added : present;
      throw new ProblemException(ShareSystem.outOfReach(new ShareTarget(what, target), nearest));
    }
    return new Correction(
        pot,
        List.of(new Mixture(addition, pot.massKilograms() * perKilogram)),
        Aim.byMass(what, wanted, present, added));
  }

  private static boolean isReached(double perKilogram) {
    return perKilogram >= 0 && perKilogram < 1 / NOTHING;
  }

  /**
   * Returns what to add to reach one share by volume, by additive volumes.
   *
   * <p>For example, how much wax brings a paint of 30 % of white by volume down to 8 %:
   *
   * <pre>{@code
   * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
   * Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
   * Composition strong = wax.with(white, VolumeFraction.ofPercent(30), DensityBasis.SOLID);
   * Correction thinned =
   *     Correction.toVolumeShare(
   *         Mixture.of(strong, grams(100)),
   *         ShareOf.PIGMENT,
   *         VolumeFraction.ofPercent(8),
   *         DensityBasis.SOLID,
   *         wax);
   * thinned.addedKilograms(); // 0.137 kg
   * thinned.result().composition().volumeView(DensityBasis.SOLID).volumeFraction(white).percent(); // 8.0 %
   * }</pre>
   *
   * @param pot what is there
   * @param what what the share is a share of; where it is a range, at the end that was chosen
   * @param target the share to reach, by volume of the whole
   * @param basis the state that volumes are counted in, every density at the middle of its range
   * @param addition what may be added
   * @return the correction; nothing is added where the share is there already, within 1e-12 of it
   * @throws ProblemException if no amount of the addition reaches it, the pot is empty, or a
   *     density is missing
   */
  public static Correction toVolumeShare(
      Mixture pot, ShareOf what, VolumeFraction target, DensityBasis basis, Composition addition) {
    VolumeSplit present = VolumeSplit.of(what, pot.composition(), basis);
    VolumeSplit added = VolumeSplit.of(what, addition, basis);
    double missing = present.beyond(target);
    boolean isMet = Math.abs(missing) <= NOTHING * present.counted();
    double perKilogram = isMet ? 0 : missing / -added.beyond(target);
    if (!isReached(perKilogram)) {
      throw new ProblemException(
          ShareSystem.outOfReach(what, target, present.share(), added.share()));
    }
    return new Correction(
        pot,
        List.of(new Mixture(addition, pot.massKilograms() * perKilogram)),
        Aim.byVolume(what, target, present, added));
  }

  /**
   * Returns what to add to reach several shares at once, with as little as possible added in all.
   *
   * @param pot what is there
   * @param targets the shares to reach
   * @param additions what may be added
   * @return the correction
   * @throws ProblemException if rounding would decide; if targets are out of reach: a problem for
   *     each, with the nearest share that can be had while the others are kept
   */
  public static Correction toShares(
      Mixture pot, List<ShareTarget> targets, List<Composition> additions) {
    if (targets.isEmpty()) {
      return new Correction(pot, List.of(), Aim.of(targets));
    }
    List<Composition> all = new ArrayList<>(List.of(pot.composition()));
    all.addAll(additions);
    ShareSystem system = new ShareSystem(all, targets);
    double[] shares = system.largestFirst();
    if (!(shares[0] > NOTHING)) {
      List<Problem> approached = onlyApproached(targets, system);
      if (approached.isEmpty()) {
        return new Correction(
            pot, additions.stream().map(a -> new Mixture(a, 0)).toList(), Aim.of(targets));
      }
      throw new ProblemException(approached);
    }
    List<Mixture> added = new ArrayList<>();
    for (int i = 0; i < additions.size(); i++) {
      double perKilogram = shares[i + 1] / shares[0];
      added.add(new Mixture(additions.get(i), pot.massKilograms() * perKilogram));
    }
    return new Correction(pot, added, Aim.of(targets));
  }

  /**
   * Returns what to take out to reach one share: what runs off, is lifted out, settles or stays in
   * the strainer. Nothing is heated to drive it off.
   *
   * <pre>
   * taken out = pot · (present − target) / (share in what is taken out − target)
   * </pre>
   *
   * <p>For example, 100 g of a paint with 30 % of oil that is to keep 20 % have to lose 12.5 g on
   * paper. Stages follow each other: correct the {@link #result}.
   *
   * <pre>{@code
   * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
   * Material oil = MaterialCatalogue.standard().require("linseed-oil");
   * Mixture paint = Mixture.of(Composition.ofPercents(List.of(white, oil), 70, 30), grams(100));
   * Correction drained =
   *     Correction.byDraining(paint, ShareOf.FREE_OIL, MassFraction.ofPercent(20), oil);
   * drained.takenOutKilograms(); // 0.0125 kg
   * drained.result().massKilograms(); // 0.0875 kg
   * }</pre>
   *
   * @param pot what is there
   * @param what what the share is a share of; where it is a range, at the end that was chosen
   * @param target the share to reach, by mass of the whole
   * @param leaves what is taken out: every line of it, or of its lot if it names one
   * @return the correction; nothing is taken out where the share is there already, within 1e-12
   * @throws ProblemException if taking it out does not reach the share, or the pot is empty or
   *     holds none of it
   */
  public static Correction byDraining(
      Mixture pot, ShareOf what, MassFraction target, Material leaves) {
    double held = pot.massKilograms(leaves);
    pot.composition().lines().requireHeld(leaves);
    double present = what.valueIn(pot.composition());
    double leaving = what.valueIn(Composition.of(leaves));
    double wanted = target.value();
    boolean isMet = Math.abs(present - wanted) <= NOTHING * Math.max(present, wanted);
    double taken = isMet ? 0 : pot.massKilograms() * (present - wanted) / (leaving - wanted);
    if (!(taken >= 0 && taken < held * (1 + NOTHING))) {
      throw new ProblemException(
          ShareSystem.outOfReach(
              new ShareTarget(what, target), nearest(pot, what, leaves, wanted)));
    }
    return new Correction(
        pot,
        QuantityKind.MASS.ofSi(Math.min(taken, held)),
        leaves,
        Aim.byMass(what, wanted, present, leaving));
  }

  /** What is there, or what is there without all that may leave. */
  private static double nearest(Mixture pot, ShareOf what, Material leaves, double wanted) {
    double present = what.valueIn(pot.composition());
    if (pot.massKilograms(leaves) >= pot.massKilograms()) {
      return present;
    }
    double without = what.valueIn(pot.composition().without(leaves));
    return Math.abs(without - wanted) < Math.abs(present - wanted) ? without : present;
  }

  /**
   * Returns how much water has to dry off, or boil away, to reach one share.
   *
   * <p>Water leaves pigment, filler and dispersions so, and nothing else: out of a mix that holds
   * wax, resin, oil, solvent or what has no stated family nothing is driven, since what burns is
   * hot by then and water under it spits. There the water is poured off a block that has set
   * ({@link #byDraining}). For example, a paste of which 80 % is water:
   *
   * <pre>{@code
   * Material chalk = MaterialCatalogue.standard().require("chalk");
   * Material water = MaterialCatalogue.standard().require("water");
   * Mixture paste = Mixture.of(Composition.ofParts(List.of(chalk, water), 1, 4), kilograms(1));
   * MassFraction dry = MassFraction.ofPercent(2);
   * Correction.byDrying(paste, ShareOf.material(water), dry, water)
   *     .takenOutKilograms(); // 0.796 kg
   * Mixture pot = paste.plus(MaterialCatalogue.standard().require("beeswax-yellow"), grams(50));
   * Correction.byDrying(pot, ShareOf.material(water), dry, water); // throws ProblemException
   * }</pre>
   *
   * @param pot what is there
   * @param what what the share is a share of; where it is a range, at the end that was chosen
   * @param target the share to reach, by mass of the whole
   * @param water what dries off: every line of it, or of its lot if it names one
   * @return the correction, as in {@link #byDraining}
   * @throws ProblemException if the pot holds anything else, what dries off is not water, it does
   *     not reach the share, or the pot is empty or holds none of it
   */
  public static Correction byDrying(
      Mixture pot, ShareOf what, MassFraction target, Material water) {
    List<Material> all = new ArrayList<>(pot.composition().expanded().materials());
    all.removeIf(m -> MAY_BE_DRIED.contains(m.family()));
    if (water.family() != MaterialFamily.WATER) {
      all.add(water);
    }
    if (!all.isEmpty()) {
      throw new ProblemException(
          Problem.of(MixtureProblem.NOT_TO_BE_DRIED, Bilingual.of(all.get(0)::name)));
    }
    return byDraining(pot, what, target, water);
  }

  /** Targets that the pot does not meet are met by the additions alone, not with the pot in it. */
  private static List<Problem> onlyApproached(List<ShareTarget> targets, ShareSystem system) {
    List<Problem> problems = new ArrayList<>();
    for (int t = 0; t < targets.size(); t++) {
      double wanted = targets.get(t).share().value();
      if (Math.abs(system.content(t, 0) - wanted) > NOTHING) {
        problems.add(
            ShareSystem.outOfReach(targets.get(t), wanted).with("remark", "approached only"));
      }
    }
    return problems;
  }

  private Correction(Mixture pot, List<Mixture> additions, Aim aim) {
    this.aim = aim;
    this.pot = pot;
    this.additions = List.copyOf(additions);
    this.takenOut = Optional.empty();
    List<Mixture> all = new ArrayList<>(List.of(pot));
    all.addAll(additions);
    this.result = Mixture.blend(all);
  }

  private Correction(Mixture pot, Quantity<Mass> taken, Material leaves, Aim aim) {
    this.aim = aim;
    this.pot = pot;
    this.additions = List.of();
    this.takenOut = Optional.of(Mixture.of(leaves, taken));
    this.result = pot.minus(leaves, taken);
  }

  /**
   * Returns what was there before.
   *
   * @return the pot
   */
  public Mixture pot() {
    return pot;
  }

  /**
   * Returns what to add.
   *
   * @return the additions, in the order given; some may be nothing
   */
  public List<Mixture> additions() {
    return additions;
  }

  /**
   * Returns how much to add in all.
   *
   * @return the mass in kg
   */
  public double addedKilograms() {
    return additions.stream().mapToDouble(Mixture::massKilograms).sum();
  }

  /**
   * Returns what to take out.
   *
   * @return what is drained, strained or dried off; empty for a correction that adds
   */
  public Optional<Mixture> takenOut() {
    return takenOut;
  }

  /**
   * Returns how much to take out.
   *
   * @return the mass in kg; zero for a correction that adds
   */
  public double takenOutKilograms() {
    return takenOut.map(Mixture::massKilograms).orElse(0.0);
  }

  /**
   * Returns what is in the pot afterwards.
   *
   * @return the whole
   */
  public Mixture result() {
    return result;
  }

  /**
   * Returns how the correction comes about.
   *
   * @return the explanation
   */
  public Explanation explanation() {
    return MixtureWorking.of(this, aim);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Correction that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(pot, additions, takenOut);
  }

  @Override
  public String toString() {
    return "correction of " + pot + takenOut.map(t -> " without " + t).orElse(" by " + additions);
  }
}
