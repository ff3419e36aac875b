// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.laws;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Correction;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.mixture.VolumeView;
import org.meltwright.units.MassFraction;
import org.meltwright.units.QuantityKind;

/**
 * What holds for every mix and batch, as checks to call from a property test.
 *
 * <p>A law that does not hold throws an {@link AssertionError} that names the numbers that broke
 * it. Shares are compared within 1e-9, masses relative to the larger one, unless a law says
 * otherwise.
 */
public final class MixtureLaws {

  private static final double TOLERANCE = 1e-9;

  private MixtureLaws() {}

  /**
   * The shares of a composition lie from zero to one and sum to one.
   *
   * @param composition the composition
   */
  public static void sharesSumToOne(Composition composition) {
    double sum = 0;
    for (int i = 0; i < composition.size(); i++) {
      double share = composition.massFractionValue(i);
      check(share >= 0 && share <= 1 + TOLERANCE, "a share of %s in %s", share, composition);
      sum += share;
    }
    check(Math.abs(sum - 1) <= TOLERANCE, "shares sum to %s in %s", sum, composition);
  }

  /**
   * Shares by volume sum to one, and turned back into shares by mass they are what they were.
   *
   * @param composition the composition
   * @param basis the state that volumes are counted in
   */
  public static void massToVolumeToMassReturns(Composition composition, DensityBasis basis) {
    VolumeView view = composition.volumeView(basis);
    double[] volumes = new double[composition.size()];
    double sum = 0;
    for (int i = 0; i < volumes.length; i++) {
      volumes[i] = view.volumeFractionValue(i);
      sum += volumes[i];
    }
    check(Math.abs(sum - 1) <= TOLERANCE, "volumes sum to %s in %s", sum, composition);
    Composition back = Composition.ofVolumeParts(basis, composition.materials(), volumes);
    check(back.isCloseTo(composition, TOLERANCE), "%s came back as %s", composition, back);
  }

  /**
   * The density of a mix lies between the least and the greatest density of its materials.
   *
   * @param composition the composition
   * @param basis the state that volumes are counted in
   */
  public static void densityLiesBetweenThoseOfTheParts(
      Composition composition, DensityBasis basis) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Material material : composition.materials()) {
      least = Math.min(least, basis.density(material).lowSi());
      most = Math.max(most, basis.density(material).highSi());
    }
    var density = composition.density(basis);
    check(
        density.lowSi() >= least * (1 - TOLERANCE) && density.highSi() <= most * (1 + TOLERANCE),
        "density %s of parts from %s to %s kg/m³",
        density,
        least,
        most);
  }

  /**
   * No mass of any material is gained or lost when mixtures are poured together.
   *
   * @param mixtures the mixtures, at least one above zero
   */
  public static void blendingConservesMass(List<Mixture> mixtures) {
    Mixture whole = Mixture.blend(mixtures);
    double total = mixtures.stream().mapToDouble(Mixture::massKilograms).sum();
    checkMass(whole.massKilograms(), total, "mass of the whole");
    for (Material material : whole.composition().materials()) {
      double parts = mixtures.stream().mapToDouble(m -> m.massKilograms(material)).sum();
      double difference = whole.massKilograms(material) - parts;
      check(
          Math.abs(difference) <= TOLERANCE * total,
          "%s: %s kg in the parts, %s kg in the whole",
          material,
          parts,
          whole.massKilograms(material));
    }
  }

  /**
   * The order in which mixtures are poured together does not matter, to the last bit; nor does it
   * matter, within the tolerance, whether that is done at once or step by step.
   *
   * @param mixtures the mixtures, at least one above zero
   */
  public static void orderOfBlendingDoesNotMatter(List<Mixture> mixtures) {
    List<Mixture> reversed = new ArrayList<>(mixtures);
    Collections.reverse(reversed);
    Mixture one = Mixture.blend(mixtures);
    Mixture other = Mixture.blend(reversed);
    check(one.equals(other), "%s in one order, %s in the other", one, other);
    check(one.hashCode() == other.hashCode(), "%s has two hashes", one);
    Mixture stepwise = mixtures.get(0);
    for (Mixture next : mixtures.subList(1, mixtures.size())) {
      stepwise = stepwise.plus(next);
    }
    check(one.isCloseTo(stepwise, TOLERANCE), "%s at once, %s step by step", one, stepwise);
  }

  /**
   * The order of the parts does not matter, to the last bit: the composition is equal, and so are
   * its shares and its density.
   *
   * @param composition the composition, which is made again of its shares in the reverse order
   * @param basis the state that volumes are counted in
   */
  public static void orderOfPartsDoesNotMatter(Composition composition, DensityBasis basis) {
    List<Material> materials = new ArrayList<>(composition.materials());
    Collections.reverse(materials);
    double[] parts = new double[materials.size()];
    double[] again = new double[parts.length];
    for (int i = 0; i < parts.length; i++) {
      again[i] = composition.massFractionValue(i);
      parts[parts.length - 1 - i] = again[i];
    }
    Composition one = composition.withParts(again);
    Composition other = Composition.ofParts(materials, parts);
    check(one.equals(other) && other.equals(one), "%s and turned round %s", one, other);
    check(one.hashCode() == other.hashCode(), "%s has two hashes", one);
    for (Material material : materials) {
      checkSame(one.massFractionValue(material), other.massFractionValue(material), material);
    }
    checkSame(
        one.volumeView(basis).densityKilogramsPerCubicMetre(),
        other.volumeView(basis).densityKilogramsPerCubicMetre(),
        "density");
    checkSame(one.density(basis).lowSi(), other.density(basis).lowSi(), "low density");
    check(
        one.share(ShareOf.FREE_OIL).equals(other.share(ShareOf.FREE_OIL)),
        "free oil of %s",
        composition);
  }

  /**
   * A part may be given in two lines, in any places: halves and quarters, which doubles hold
   * without rounding, make the equal composition.
   *
   * @param materials the materials
   * @param parts their parts, at least one above zero
   * @param place which of them is given in two lines
   */
  public static void splittingAPartMakesNoDifference(
      List<Material> materials, double[] parts, int place) {
    List<Material> more = new ArrayList<>(materials);
    more.add(0, materials.get(place));
    double[] split = new double[parts.length + 1];
    System.arraycopy(parts, 0, split, 1, parts.length);
    split[0] = parts[place] / 4;
    split[place + 1] = parts[place] * 3 / 4;
    boolean isExact = split[0] + split[place + 1] == parts[place];
    Composition whole = Composition.ofParts(materials, parts);
    Composition apart = Composition.ofParts(more, split);
    check(
        isExact ? apart.equals(whole) : apart.isCloseTo(whole, TOLERANCE),
        "%s, and with a part in two lines %s",
        whole,
        apart);
  }

  /**
   * Blending loses no material and none of its figures: all that went in with more than nothing
   * stands in the whole, whatever its id, and what is asked by material adds up.
   *
   * @param compositions what is blended, at least one, in equal parts
   */
  public static void blendingDropsNoFigure(List<Composition> compositions) {
    double[] masses = new double[compositions.size()];
    Arrays.fill(masses, 1);
    Composition whole = Composition.blend(compositions, masses);
    for (Composition each : compositions) {
      for (Material material : each.materials()) {
        check(whole.materials().contains(material), "%s is lost in %s", material, whole);
      }
    }
    for (Material asked : whole.materials()) {
      double lines = 0;
      for (int i = 0; i < whole.size(); i++) {
        lines += whole.materials().get(i).isMeantBy(asked) ? whole.massFractionValue(i) : 0;
      }
      double share = whole.massFractionValue(asked);
      check(Math.abs(share - lines) <= TOLERANCE, "%s: %s, by line %s", asked, share, lines);
    }
  }

  /**
   * The parts of a split are of the same composition and weigh as much as the whole.
   *
   * @param mixture the whole
   * @param first the share of the first part
   */
  public static void splittingConservesMass(Mixture mixture, MassFraction first) {
    List<Mixture> parts = mixture.split(first);
    double sum = parts.stream().mapToDouble(Mixture::massKilograms).sum();
    checkMass(sum, mixture.massKilograms(), "mass of the parts");
    for (Mixture part : parts) {
      check(
          part.composition().equals(mixture.composition()),
          "%s split into %s",
          mixture,
          part.composition());
    }
  }

  /**
   * It makes no difference whether mixtures are scaled and then blended or the other way round.
   *
   * @param one a mixture above zero
   * @param other another mixture
   * @param factor the factor, above zero
   */
  public static void scalingCommutes(Mixture one, Mixture other, double factor) {
    Mixture before = one.times(factor).plus(other.times(factor));
    Mixture after = one.plus(other).times(factor);
    check(before.isCloseTo(after, TOLERANCE), "%s before, %s after", before, after);
  }

  /**
   * Adding a material never lowers its share.
   *
   * @param mixture what is there, above zero
   * @param material the material
   * @param kilograms how much of it is added
   */
  public static void addingNeverLowersAShare(Mixture mixture, Material material, double kilograms) {
    Mixture after = mixture.plus(new Mixture(Composition.of(material), kilograms));
    double was = mixture.composition().massFractionValue(material);
    double is = after.composition().massFractionValue(material);
    check(is >= was - TOLERANCE, "%s of %s: share was %s, is %s", kilograms, material, was, is);
  }

  /**
   * A correction reaches its target, and conserves mass.
   *
   * @param pot what is there, above zero
   * @param material the material whose share is to be reached by adding more of it
   * @param target the target, above the present share and below one
   */
  public static void correctionReachesItsTarget(
      Mixture pot, Material material, MassFraction target) {
    Correction correction =
        Correction.toShare(pot, ShareOf.material(material), target, Composition.of(material));
    double reached = correction.result().composition().massFractionValue(material);
    check(
        Math.abs(reached - target.value()) <= TOLERANCE,
        "aimed at %s, reached %s",
        target,
        reached);
    checkMass(
        correction.result().massKilograms(),
        pot.massKilograms() + correction.addedKilograms(),
        "mass after the correction");
  }

  /**
   * The lines of a batch add up to the pot, and net and losses to the same.
   *
   * @param batch the batch
   */
  public static void batchAddsUp(Batch batch) {
    double pot = batch.charge().massKilograms();
    checkMass(batch.lines().stream().mapToDouble(BatchLine::massKilograms).sum(), pot, "lines");
    checkMass(
        batch.net().massKilograms()
            + batch.insolublesKilograms()
            + batch.filmKilograms()
            + batch.strainingKilograms(),
        pot,
        "net and losses");
  }

  /**
   * The batch worked out from what another leaves is that other batch.
   *
   * @param batch the other batch
   */
  public static void netLeadsBackToTheCharge(Batch batch) {
    Batch back =
        Batch.ofNet(
            batch.recipe(), QuantityKind.MASS.ofSi(batch.net().massKilograms()), batch.losses());
    checkMass(back.charge().massKilograms(), batch.charge().massKilograms(), "charge");
  }

  private static void checkSame(double found, double expected, Object what) {
    check(
        Double.compare(found, expected) == 0,
        "%s: %s in one order, %s in the other",
        what,
        found,
        expected);
  }

  private static void checkMass(double found, double expected, String what) {
    check(
        Math.abs(found - expected) <= TOLERANCE * Math.max(Math.abs(found), Math.abs(expected)),
        "%s: %s kg instead of %s kg",
        what,
        found,
        expected);
  }

  private static void check(boolean holds, String message, Object... numbers) {
    if (!holds) {
      throw new AssertionError(String.format(java.util.Locale.ROOT, message, numbers));
    }
  }
}
