// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.BLUE;
import static org.meltwright.core.laws.SampleMaterials.HARD_WAX;
import static org.meltwright.core.laws.SampleMaterials.OIL;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.core.laws.SampleMaterials.WHITE_PAINT;
import static org.meltwright.core.laws.SampleMaterials.withDensity;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MaterialState;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.VolumeFraction;

class CompositionTest {

  @Test
  void ofRatio_oneToEight_isOneInNine() {
    Composition medium =
        Composition.ofRatio(
            new MixingRatio(1, 8, "resin", "wax"), Map.of("wax", WAX, "resin", RESIN));
    assertThat(medium.massFractionValue(RESIN)).isEqualTo(1.0 / 9);
    assertThat(medium).hasToString("resin 11.111 % + wax 88.889 % by mass");
  }

  @Test
  void ofRatio_sidesOfOtherNames_isRefusedWithTheNamesAllowed() {
    MixingRatio ratio = new MixingRatio(1, 7, "resin", "wax");
    List<Map<String, Material>> wrong =
        List.of(
            Map.of(),
            Map.of("resin", RESIN),
            Map.of("resin", RESIN, "Wax", WAX),
            Map.of("resin", RESIN, "wax", WAX, "oil", WHITE));
    for (Map<String, Material> sides : wrong) {
      ProblemException refused =
          catchThrowableOfType(ProblemException.class, () -> Composition.ofRatio(ratio, sides));
      Problem problem = refused.problems().get(0);
      assertThat(problem.code()).isEqualTo(MixtureProblem.RATIO_SIDES);
      assertThat(problem.allowed(Locale.ENGLISH)).isEqualTo("exactly: resin, wax");
      assertThat(problem.allowed(Locale.GERMAN)).isEqualTo("genau: resin, wax");
    }
  }

  @Test
  void ofVolumeParts_oneToSixByTrueVolume_isFifteenPointSevenByMass() {
    // arithmetic with 0.96 and 1.07 g/ml
    DensityBasis basis =
        DensityBasis.SOLID
            .with(WAX, gramsPerMillilitre(0.96))
            .with(RESIN, gramsPerMillilitre(1.07));
    Composition medium = Composition.ofVolumeParts(basis, List.of(RESIN, WAX), 1, 6);
    assertThat(medium.massFraction(RESIN).percent()).isCloseTo(15.7, within(0.05));
  }

  @Test
  void ofVolumeParts_scoopedAgainstSolid_needsTheirOwnDensities() {
    // arithmetic: 1 part of 0.60 g/ml scooped against 6 parts of a solid block of 0.96 g/ml
    DensityBasis basis =
        DensityBasis.BULK.with(WAX, gramsPerMillilitre(0.96)).with(RESIN, gramsPerMillilitre(0.60));
    assertThat(
            Composition.ofVolumeParts(basis, List.of(RESIN, WAX), 1, 6)
                .massFraction(RESIN)
                .percent())
        .isCloseTo(9.43, within(0.01));
  }

  @Test
  void with_pigmentToEightPerCentByVolume_is27Grams() {
    // arithmetic: titanium white (rutile, 4.17) in 1:8 medium (0.971), both cold
    Material medium = withDensity("medium", 971);
    Composition paint =
        Composition.of(medium).with(WHITE, VolumeFraction.ofPercent(8), DensityBasis.SOLID);
    assertThat(paint.massFraction(WHITE).percent()).isCloseTo(27.2, within(0.1));
    assertThat(paint.volumeView(DensityBasis.SOLID).volumeFraction(WHITE).percent())
        .isCloseTo(8, within(1e-12));
  }

  @Test
  void density_oneToSeven_is971() {
    // own evaluation of 1/ρ = Σ w/ρ with 30 digits
    Composition medium =
        Composition.ofParts(List.of(withDensity("a", 1060), withDensity("b", 960)), 1, 7);
    VolumeView view = medium.volumeView(DensityBasis.SOLID);
    assertThat(view.densityKilogramsPerCubicMetre()).isCloseTo(971.4558472554, within(1e-9));
    assertThat(view.volumeFractionValue(0)).isCloseTo(0.114558, within(5e-7));
  }

  @Test
  void density_ranges_goesFromAllLowToAllHigh() {
    QuantityRange<org.meltwright.units.Density> range =
        new QuantityRange<>(QuantityKind.DENSITY, 1040, 1120);
    var density =
        Composition.ofParts(List.of(RESIN, WAX), 1, 8)
            .density(DensityBasis.SOLID.with(RESIN, range));
    assertThat(density.lowSi()).isCloseTo(9 / (1 / 1040.0 + 8 / 960.0), within(1e-9));
    assertThat(density.centralSi()).isCloseTo(9 / (1 / 1080.0 + 8 / 960.0), within(1e-9));
    assertThat(density.highSi()).isCloseTo(9 / (1 / 1120.0 + 8 / 960.0), within(1e-9));
  }

  @Test
  void density_missing_namesMaterialAndProperty() {
    Material unknown = Material.builder("mystery").build();
    assertThatThrownBy(() -> Composition.of(unknown).density(MaterialState.SOLID))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("mystery")
        .hasMessageContaining("solid-density");
    assertThatThrownBy(() -> Composition.of(WAX).density(MaterialState.BULK))
        .hasMessageContaining("bulk-density");
    Material base = Material.builder("base").family(MaterialFamily.WAX, MaterialRole.BASE).build();
    assertThatThrownBy(() -> Composition.of(base).density(MaterialState.LIQUID))
        .hasMessageContaining("liquid-density");
  }

  @Test
  void density_melt_countsWhatDissolvesAsSolidAndSaysSo() {
    assertThat(DensityBasis.MELT.countsAsSolid(RESIN)).isTrue();
    assertThat(DensityBasis.MELT.countsAsSolid(WAX)).isFalse();
    assertThat(DensityBasis.SOLID.countsAsSolid(RESIN)).isFalse();
    assertThat(Composition.of(RESIN).density(MaterialState.LIQUID).centralSi()).isEqualTo(1060);
    assertThat(Composition.of(OIL).density(MaterialState.SOLID).centralSi()).isEqualTo(930);
  }

  @Test
  void density_paintWithoutAFigure_comesFromItsConstituents() {
    var density = Composition.of(WHITE_PAINT).density(DensityBasis.SOLID);
    assertThat(density.lowSi()).isCloseTo(1 / (0.25 / 930 + 0.75 / 4170), within(1e-6));
    assertThat(density.highSi()).isCloseTo(1 / (0.20 / 930 + 0.80 / 4170), within(1e-6));
  }

  @Test
  void meltAt_warmer_isLighter() {
    // own evaluation of ρ₀/(1+βΔT) with 30 digits
    var figure =
        PropertyRange.of(new QuantityRange<>(QuantityKind.DENSITY, 850, 850), MaterialState.LIQUID)
            .at(TemperatureRange.of(TemperaturePoint.ofCelsius(65)));
    Material melt =
        Material.builder("melt")
            .figure(PropertyKey.LIQUID_DENSITY, Sourced.of(figure, Source.USER, Knowledge.READ))
            .build();
    DensityBasis at85 =
        DensityBasis.meltAt(TemperaturePoint.ofCelsius(85), new NumberRange(8.5e-4, 8.5e-4, "1/K"));
    assertThat(Composition.of(melt).density(at85).centralSi())
        .isCloseTo(835.7915437561, within(1e-9));
    DensityBasis range =
        DensityBasis.meltAt(TemperaturePoint.ofCelsius(85), new NumberRange(8e-4, 1e-3, "1/K"));
    assertThat(Composition.of(melt).density(range).lowSi()).isCloseTo(850 / 1.02, within(1e-9));
    assertThat(Composition.of(melt).density(range).highSi()).isCloseTo(850 / 1.016, within(1e-9));
  }

  @Test
  void share_oilPaint_differsFromFreeOil() {
    Composition pot = Composition.ofParts(List.of(WHITE_PAINT, WAX), 30, 70);
    assertThat(pot.share(ShareOf.OIL_PAINT).high().percent()).isCloseTo(30, within(1e-12));
    assertThat(pot.share(ShareOf.FREE_OIL).low().percent()).isCloseTo(6, within(1e-12));
    assertThat(pot.share(ShareOf.FREE_OIL).high().percent()).isCloseTo(7.5, within(1e-12));
    assertThat(pot.share(ShareOf.PIGMENT).low().percent()).isCloseTo(22.5, within(1e-12));
    assertThat(pot.share(ShareOf.RESIN).high()).isEqualTo(MassFraction.ZERO);
  }

  @Test
  void share_oilAddedAsSuch_isFreeOilToo() {
    Composition pot = Composition.ofParts(List.of(OIL, WAX), 5, 95);
    assertThat(pot.share(ShareOf.FREE_OIL).low().percent()).isCloseTo(5, within(1e-12));
    assertThat(pot.share(ShareOf.OIL_PAINT).low()).isEqualTo(MassFraction.ZERO);
  }

  @Test
  void share_paintOfUnknownMakeUp_isAProblemNotZero() {
    Material tube =
        Material.builder("tube").family(MaterialFamily.OIL_PAINT, MaterialRole.COLOURANT).build();
    Composition pot = Composition.ofParts(List.of(tube, WAX), 1, 9);
    assertThat(pot.share(ShareOf.OIL_PAINT).low().percent()).isCloseTo(10, within(1e-12));
    assertThatThrownBy(() -> pot.share(ShareOf.FREE_OIL))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("tube")
        .hasMessageContaining("free oil");
  }

  @Test
  void share_nestedConstituents_areSharedWithoutBlowUp() {
    Material level = WHITE;
    for (int i = 0; i < 50; i++) {
      Material below = level;
      level =
          Material.builder("level-" + i)
              .constituent(below, half())
              .constituent(below, half())
              .build();
    }
    assertThat(Composition.of(level).share(ShareOf.PIGMENT).low().value()).isEqualTo(1);
    assertThat(Composition.of(level).expanded().massFractionValue(WHITE)).isEqualTo(1);
    assertThat(Composition.of(level).density(DensityBasis.SOLID).centralSi())
        .isCloseTo(4170, within(1e-6));
  }

  @Test
  void replacing_withinTheCap_keepsTheRest() {
    Composition medium = Composition.ofParts(List.of(RESIN, WAX), 10, 90);
    Composition harder =
        medium.replacing(RESIN, HARD_WAX, MassFraction.ofPercent(4), MassFraction.ofPercent(5));
    assertThat(harder.massFraction(RESIN).percent()).isCloseTo(6, within(1e-12));
    assertThat(harder.massFraction(HARD_WAX).percent()).isCloseTo(4, within(1e-12));
    assertThat(harder.massFraction(WAX).percent()).isCloseTo(90, within(1e-12));
    MassFraction six = MassFraction.ofPercent(6);
    assertThatThrownBy(() -> medium.replacing(RESIN, HARD_WAX, six, MassFraction.ofPercent(5)))
        .hasMessageContaining("hard-wax");
    MassFraction twelve = MassFraction.ofPercent(12);
    assertThatThrownBy(() -> medium.replacing(RESIN, HARD_WAX, twelve, MassFraction.ONE))
        .hasMessageContaining("More is to be taken");
    assertThat(Composition.of(WAX).replacing(WAX, RESIN, MassFraction.ONE, MassFraction.ONE))
        .isEqualTo(Composition.of(RESIN));
  }

  @Test
  void with_share_keepsTheProportionsOfTheRest() {
    Composition medium = Composition.ofParts(List.of(RESIN, WAX), 1, 8);
    Composition colour = medium.with(BLUE, MassFraction.ofPercent(10));
    assertThat(colour.massFraction(RESIN).percent()).isCloseTo(10, within(1e-12));
    assertThat(colour.with(BLUE, MassFraction.ofPercent(20)).massFraction(BLUE).percent())
        .isCloseTo(20, within(1e-12));
    assertThat(colour.with(BLUE, MassFraction.ONE)).isEqualTo(Composition.of(BLUE));
    assertThat(colour.without(BLUE).isCloseTo(medium, 1e-15)).isTrue();
  }

  @Test
  void ofPercents_notAHundred_isRefused() {
    assertThat(
            Composition.ofPercents(List.of(RESIN, WAX), 14.3, 85.7).massFraction(RESIN).percent())
        .isCloseTo(14.3, within(1e-12));
    assertThatThrownBy(() -> Composition.ofPercents(List.of(RESIN, WAX), 14.3, 80))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("whole");
  }

  @Test
  void ofParts_sameMaterialTwice_getsBothParts() {
    Composition medium = Composition.ofParts(List.of(WAX, RESIN, WAX), 4, 1, 4);
    assertThat(medium.size()).isEqualTo(2);
    assertThat(medium.massFractionValue(WAX)).isCloseTo(8.0 / 9, within(1e-15));
  }

  @Test
  void isCloseTo_otherOrder_isTheSame() {
    Composition one = Composition.ofParts(List.of(WAX, RESIN), 8, 1);
    Composition other = Composition.ofParts(List.of(RESIN, WAX, BLUE), 1, 8, 0);
    assertThat(one.isCloseTo(other, 1e-15)).isTrue();
    assertThat(one).isNotEqualTo(other);
    assertThat(one.isCloseTo(Composition.ofParts(List.of(WAX, RESIN), 8, 1.1), 1e-3)).isFalse();
    assertThat(one.isCloseTo(Composition.of(WAX), 0.5)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, -1e-300, Double.NaN, Double.POSITIVE_INFINITY, 1e300})
  void ofParts_partThatCannotBe_isRefused(double bad) {
    assertThatThrownBy(() -> Composition.ofParts(List.of(WAX, RESIN), 1, bad))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void ofParts_nothing_isRefused() {
    assertThatThrownBy(() -> Composition.ofParts(List.of(WAX, RESIN), 0, 0))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Composition.ofParts(List.of())).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Composition.ofParts(List.of(WAX), 1, 2))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> Composition.ofParts(List.of(WAX), 1e-320))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void ofParts_tenThousandMaterials_sumToOne() {
    List<Material> many = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      many.add(withDensity("m" + i, 900 + i % 200));
    }
    double[] parts = DoubleStream.iterate(1, p -> p % 97 + 1).limit(10_000).toArray();
    Composition mix = Composition.ofParts(many, parts);
    double sum = 0;
    for (Material each : many) {
      sum += mix.massFractionValue(each);
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(mix.density(MaterialState.SOLID).centralSi()).isBetween(900.0, 1100.0);
  }

  @Test
  void problems_everyCode_hasTextsInBothLanguages() {
    for (MixtureProblem code : MixtureProblem.values()) {
      for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
        Problem problem = Problem.of(code, "x");
        assertThat(problem.what(locale)).isNotBlank();
        assertThat(problem.allowed(locale)).isNotBlank();
        assertThat(problem.remedy(locale)).isNotBlank();
      }
    }
  }

  private static org.meltwright.core.material.MassFractionRange half() {
    return org.meltwright.core.material.MassFractionRange.of(MassFraction.of(0.5));
  }
}
