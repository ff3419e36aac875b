// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.VolumeFraction;

class CastingTest {

  private static final Mould TIN = Mould.of("tin", VesselMaterial.STEEL, 12, millilitres(103.5));

  private static final VolumeFraction EIGHTY = VolumeFraction.ofPercent(80);

  private static final VolumeFraction TWO_THIRDS = VolumeFraction.of(2.0 / 3);

  @Test
  void of_801GramsInStandardCups_elevenCakesAndEighteenGrams() {
    // arithmetic on a cup of 3.5 US fl oz, fill and density by common practice
    Casting casting = Casting.of(grams(801.175), TIN, EIGHTY, gramsPerMillilitre(0.86));
    assertThat(casting.wholeCakes()).isEqualTo(11);
    assertThat(casting.cakeKilograms()).isCloseTo(0.071208, within(1e-12));
    assertThat(casting.partCakeKilograms()).isCloseTo(0.017887, within(1e-9));
    assertThat(casting.cups()).isEqualTo(12);
    assertThat(casting.pours()).isEqualTo(1);
    assertThat(casting.shrinkage()).isEmpty();
    assertThat(casting.explanation().shortText(Locale.ENGLISH))
        .contains("whole cakes: 11", "mass of the part cake: 17.887 g");
  }

  @Test
  void wholeCakes_exactMultiple_leavesNoPartCake() {
    Casting three = Casting.of(grams(3 * 71.208), TIN, EIGHTY, gramsPerMillilitre(0.86));
    assertThat(three.wholeCakes()).isEqualTo(3);
    assertThat(three.partCakeKilograms()).isZero();
  }

  @Test
  void pours_moreCakesThanCups_fillsTheMouldAgain() {
    assertThat(Casting.of(grams(13 * 71.208), TIN, EIGHTY, gramsPerMillilitre(0.86)).pours())
        .isEqualTo(2);
  }

  @Test
  void coldCake_medium_isSmallerThanHot() {
    Composition medium = Composition.ofParts(List.of(RESIN, WAX), 1, 8);
    Casting casting = Casting.of(Mixture.of(medium, grams(800)), TIN, EIGHTY, DensityBasis.MELT);
    double hot = casting.cakeCubicMetres();
    double cold = casting.coldCake().orElseThrow().centralSi();
    double shrink = casting.shrinkage().orElseThrow().central().value();
    assertThat(cold).isCloseTo(hot * (1 - shrink), within(1e-15));
    assertThat(shrink).isBetween(0.08, 0.12);
  }

  @Test
  void linear_tenPerCentByVolume_isThreeAndAHalfPerCent() {
    // own evaluation of 1 - (1 - e)^(1/3) with 30 digits
    assertThat(ShrinkRange.linear(VolumeFraction.ofPercent(10)))
        .isCloseTo(0.03451061539437, within(1e-13));
    assertThat(ShrinkRange.byVolume(0.031).value()).isCloseTo(0.090146791, within(1e-12));
  }

  @Test
  void linear_castRods_matchesTheMeasuredShrinkage() {
    // PMC11876593, table 2: a wax rod of 33.85 cm hot is 32.7 cm cold, published as 3.4 %
    double linear = 1 - 32.7 / 33.85;
    assertThat(linear * 100).isCloseTo(3.4, within(0.05));
    assertThat(ShrinkRange.linear(ShrinkRange.byVolume(linear))).isCloseTo(linear, within(1e-12));
  }

  @Test
  void shrinkage_ranges_takesTheWorseEnds() {
    ShrinkRange shrink = ShrinkRange.of(density(820, 840, 860), density(950, 960, 970));
    assertThat(shrink.low().value()).isCloseTo(1 - 860.0 / 950, within(1e-12));
    assertThat(shrink.high().value()).isCloseTo(1 - 820.0 / 970, within(1e-12));
    assertThat(ShrinkRange.of(density(980, 980, 980), density(960, 960, 960)).high())
        .isEqualTo(VolumeFraction.ZERO);
  }

  @Test
  void of_noFill_isRefused() {
    assertThatThrownBy(
            () -> Casting.of(grams(1), TIN, VolumeFraction.ZERO, gramsPerMillilitre(0.86)))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void exceeds_twoThirds_onlyAboveTheLimit() {
    Vessel pot =
        Vessel.of(
            "pot",
            VesselMaterial.STAINLESS_STEEL,
            Lining.NONE,
            Vessel.Bottom.FLAT,
            millilitres(1500),
            grams(400));
    Mixture full = Mixture.of(Composition.of(WAX), grams(860));
    VesselRoom room = VesselRoom.of(pot, full, DensityBasis.MELT);
    assertThat(room.fillLevel()).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(room.exceeds(TWO_THIRDS)).isFalse();
    assertThat(room.expansionSpaceCubicMetres()).isCloseTo(0.5e-3, within(1e-12));
    VesselRoom fuller = VesselRoom.of(pot, full.times(1.1), DensityBasis.MELT);
    assertThat(fuller.exceeds(TWO_THIRDS)).isTrue();
    assertThat(fuller.shareThatFits(TWO_THIRDS)).isCloseTo(1 / 1.1, within(1e-12));
    assertThat(fuller.explanation().text(Locale.GERMAN)).contains("73,333 %");
  }

  private static Estimate<Density> density(double low, double central, double high) {
    return new Estimate<>(QuantityKind.DENSITY, low, central, high);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.86, Double.MIN_VALUE, 1e300})
  void of_densityNotAboveZeroOrBeyondMeasure_isAProblem(double density) {
    assertThatThrownBy(
            () -> Casting.of(grams(800), TIN, EIGHTY, gramsPerMillilitre(density)).wholeCakes())
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void of_coldDensityFromZero_isAProblem() {
    Estimate<Density> hot = new Estimate<>(QuantityKind.DENSITY, 850, 860, 870);
    Estimate<Density> cold = new Estimate<>(QuantityKind.DENSITY, 0, 950, 960);
    assertThatThrownBy(() -> Casting.of(grams(800), TIN, EIGHTY, hot, cold))
        .isInstanceOf(ProblemException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 1e300})
  void of_netMassNegativeOrBeyondMeasure_isAProblem(double net) {
    assertThatThrownBy(() -> Casting.of(grams(net), TIN, EIGHTY, gramsPerMillilitre(0.86)))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void wholeCakes_nothingPoured_areNone() {
    Casting none = Casting.of(grams(0), TIN, EIGHTY, gramsPerMillilitre(0.86));
    assertThat(none.wholeCakes()).isZero();
    assertThat(none.pours()).isZero();
  }
}
