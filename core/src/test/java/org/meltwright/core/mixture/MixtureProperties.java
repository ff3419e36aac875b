// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.laws.MixtureArbitraries;
import org.meltwright.core.laws.MixtureLaws;
import org.meltwright.core.laws.SampleMaterials;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;

class MixtureProperties {

  @Provide
  Arbitrary<Composition> compositions() {
    return MixtureArbitraries.compositions();
  }

  @Provide
  Arbitrary<Mixture> mixtures() {
    return MixtureArbitraries.mixtures();
  }

  @Provide
  Arbitrary<Material> materials() {
    return MixtureArbitraries.materials();
  }

  @Provide
  Arbitrary<MassFraction> shares() {
    return MixtureArbitraries.massFractions();
  }

  @Provide
  Arbitrary<Recipe> recipes() {
    return MixtureArbitraries.recipes();
  }

  @Provide
  Arbitrary<Losses> losses() {
    return MixtureArbitraries.losses();
  }

  @Provide
  Arbitrary<Composition> lots() {
    return MixtureArbitraries.compositionsOfLots();
  }

  @Provide
  Arbitrary<Mixture> mixturesOfLots() {
    return Combinators.combine(lots(), MixtureArbitraries.kilograms()).as(Mixture::new);
  }

  @Provide
  Arbitrary<Material> lotsAndVersions() {
    return Arbitraries.of(SampleMaterials.withLotsAndVersions());
  }

  @Property
  void theOrderOfPartsDoesNotMatter(@ForAll("lots") Composition composition) {
    MixtureLaws.orderOfPartsDoesNotMatter(composition, DensityBasis.SOLID);
    MixtureLaws.orderOfPartsDoesNotMatter(composition, DensityBasis.MELT);
  }

  @Property
  void anyOrderOfPartsMakesTheEqualComposition(
      @ForAll("lots") Composition composition, @ForAll Random random) {
    List<Integer> places = new ArrayList<>();
    IntStream.range(0, composition.size()).forEach(places::add);
    Collections.shuffle(places, random);
    Composition shuffled =
        Composition.ofParts(
            places.stream().map(composition.materials()::get).toList(),
            places.stream().mapToDouble(composition::massFractionValue).toArray());
    double[] again =
        IntStream.range(0, composition.size())
            .mapToDouble(composition::massFractionValue)
            .toArray();
    assertThat(shuffled).isEqualTo(composition.withParts(again));
    assertThat(shuffled).hasSameHashCodeAs(composition.withParts(again));
  }

  @Property
  void splittingAPartMakesNoDifference(
      @ForAll("lots") Composition composition, @ForAll @IntRange(max = 1000) int place) {
    double[] parts = new double[composition.size()];
    Arrays.setAll(parts, composition::massFractionValue);
    MixtureLaws.splittingAPartMakesNoDifference(
        composition.materials(), parts, place % parts.length);
  }

  @Property
  void blendingDropsNoFigure(
      @ForAll @Size(min = 1, max = 6) List<@From("lots") Composition> compositions) {
    MixtureLaws.blendingDropsNoFigure(compositions);
  }

  @Property
  void blendingLotsConservesMassWhateverTheOrder(
      @ForAll @Size(min = 1, max = 6) List<@From("mixturesOfLots") Mixture> mixtures) {
    MixtureLaws.blendingConservesMass(mixtures);
    MixtureLaws.orderOfBlendingDoesNotMatter(mixtures);
  }

  @Property
  void lawsHoldForLotsAndVersionsToo(
      @ForAll("mixturesOfLots") Mixture mixture,
      @ForAll("lotsAndVersions") Material material,
      @ForAll("shares") MassFraction share) {
    MixtureLaws.sharesSumToOne(mixture.composition().expanded());
    MixtureLaws.massToVolumeToMassReturns(mixture.composition(), DensityBasis.SOLID);
    MixtureLaws.splittingConservesMass(mixture, share);
    MixtureLaws.addingNeverLowersAShare(mixture, material, mixture.massKilograms());
    Assume.that(mixture.composition().massFractionValue(material) < 0.999);
    Composition with = mixture.composition().with(material, share);
    assertThat(with.massFractionValue(material)).isCloseTo(share.value(), within(1e-12));
  }

  /** What leaves a mix leaves every line of it in proportion, or the lot that is named. */
  @Property
  void whatLeavesLeavesTheRestAsItIs(
      @ForAll("mixturesOfLots") Mixture mixture,
      @ForAll("lotsAndVersions") Material material,
      @ForAll @Scale(9) @DoubleRange(max = 0.999) double part) {
    double there = mixture.massKilograms(material);
    Assume.that(there > 0 && there < mixture.massKilograms() * 0.999);
    Mixture rest = mixture.minus(material, kilograms(there * part));
    double tolerance = mixture.massKilograms() * 1e-12;
    assertThat(rest.massKilograms(material)).isCloseTo(there * (1 - part), within(tolerance));
    for (Material other : mixture.composition().materials()) {
      if (!other.isSameMaterial(material)) {
        assertThat(rest.massKilograms(other))
            .isCloseTo(mixture.massKilograms(other), within(tolerance));
      }
    }
  }

  @Property
  void sharesOfEveryCompositionSumToOne(@ForAll("compositions") Composition composition) {
    MixtureLaws.sharesSumToOne(composition);
    MixtureLaws.sharesSumToOne(composition.expanded());
  }

  @Property
  void massToVolumeToMassReturnsWhatItWas(@ForAll("compositions") Composition composition) {
    MixtureLaws.massToVolumeToMassReturns(composition, DensityBasis.SOLID);
    MixtureLaws.massToVolumeToMassReturns(composition, DensityBasis.MELT);
  }

  @Property
  void densityOfAMixLiesBetweenThoseOfItsParts(@ForAll("compositions") Composition composition) {
    MixtureLaws.densityLiesBetweenThoseOfTheParts(composition, DensityBasis.SOLID);
    MixtureLaws.densityLiesBetweenThoseOfTheParts(composition, DensityBasis.MELT);
  }

  @Property
  void blendingConservesTheMassOfEveryMaterial(
      @ForAll @Size(min = 1, max = 6) List<@From("mixtures") Mixture> mixtures) {
    MixtureLaws.blendingConservesMass(mixtures);
  }

  @Property
  void orderOfBlendingDoesNotMatter(
      @ForAll @Size(min = 1, max = 6) List<@From("mixtures") Mixture> mixtures) {
    MixtureLaws.orderOfBlendingDoesNotMatter(mixtures);
  }

  @Property
  void splittingConservesMass(
      @ForAll("mixtures") Mixture mixture, @ForAll("shares") MassFraction first) {
    MixtureLaws.splittingConservesMass(mixture, first);
  }

  @Property
  void scalingAndBlendingCommute(
      @ForAll("mixtures") Mixture one,
      @ForAll("mixtures") Mixture other,
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e6) double factor) {
    MixtureLaws.scalingCommutes(one, other, factor);
  }

  @Property
  void addingAMaterialNeverLowersItsShare(
      @ForAll("mixtures") Mixture mixture,
      @ForAll("materials") Material material,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e5) double kilograms) {
    MixtureLaws.addingNeverLowersAShare(mixture, material, kilograms);
  }

  @Property
  void aCorrectionReachesItsTarget(
      @ForAll("mixtures") Mixture pot,
      @ForAll("materials") Material material,
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.999) double way) {
    double present = pot.composition().massFractionValue(material);
    Assume.that(present < 0.999);
    MixtureLaws.correctionReachesItsTarget(
        pot, material, MassFraction.of(present + way * (1 - present)));
  }

  @Property
  void severalTargetsAreReachedOrNamed(
      @ForAll("compositions") Composition pot,
      @ForAll("compositions") Composition one,
      @ForAll("compositions") Composition other,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.5) double resin,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.5) double wax) {
    List<ShareTarget> targets =
        List.of(
            new ShareTarget(ShareOf.material(RESIN), MassFraction.of(resin)),
            new ShareTarget(ShareOf.material(WAX), MassFraction.of(wax)));
    List<Composition> components = List.of(pot, one, other);
    List<MassFraction> nearest = new ShareSystem(components, targets).nearest();
    if (nearest.get(0).value() == resin && nearest.get(1).value() == wax) {
      double[] shares = new ShareSystem(components, targets).largestFirst();
      Composition reached = Composition.blend(components, shares);
      assertThat(reached.massFractionValue(RESIN)).isCloseTo(resin, within(1e-8));
      assertThat(reached.massFractionValue(WAX)).isCloseTo(wax, within(1e-8));
    }
    double miss = Math.abs(nearest.get(0).value() - resin) + Math.abs(nearest.get(1).value() - wax);
    for (Composition each : components) {
      double own =
          Math.abs(each.massFractionValue(RESIN) - resin)
              + Math.abs(each.massFractionValue(WAX) - wax);
      assertThat(miss).isLessThanOrEqualTo(own + 1e-9);
    }
  }

  @Property
  void linesOfABatchAddUpToThePot(
      @ForAll("recipes") Recipe recipe,
      @ForAll("losses") Losses losses,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1e5) double total) {
    Batch batch = Batch.ofTotal(recipe, kilograms(total), losses);
    MixtureLaws.batchAddsUp(batch);
    MixtureLaws.netLeadsBackToTheCharge(batch);
    MixtureLaws.sharesSumToOne(batch.net().composition());
  }
}
