// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.OIL;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.core.laws.SampleMaterials.WHITE_PAINT;
import static org.meltwright.core.laws.SampleMaterials.withDensity;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.litres;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.Material;
import org.meltwright.units.Estimate;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

/** Amounts and targets by volume; mass stays the basis, and a state says whose density counts. */
class VolumesTest {

  private static final DensityBasis SOLID = DensityBasis.SOLID;

  private static Composition whiteInWax(double percent) {
    return Composition.of(WAX).with(WHITE, VolumeFraction.ofPercent(percent), SOLID);
  }

  /** A volume that was weighed is the volume again; the ends of the mass are its densities'. */
  @Property(tries = 500)
  void ofVolume_thereAndBack_isTheVolume(
      @ForAll @DoubleRange(min = 1, max = 99) double percent,
      @ForAll @DoubleRange(min = 0, max = 5000) double millilitres) {
    Composition mix = whiteInWax(percent);
    Mixture pot = Mixture.ofVolume(mix, millilitres(millilitres), SOLID);
    assertThat(pot.volume(SOLID).centralSi()).isCloseTo(millilitres * 1e-6, within(1e-15));
    Estimate<Mass> mass = SOLID.mass(mix, millilitres(millilitres));
    assertThat(mass.centralSi()).isEqualTo(pot.massKilograms());
    assertThat(mass.lowSi()).isLessThanOrEqualTo(mass.centralSi());
    assertThat(mass.highSi()).isGreaterThanOrEqualTo(mass.centralSi());
  }

  @Test
  void mass_ofAMaterialWithARange_spansIt() {
    DensityBasis measured =
        DensityBasis.MELT.with(WAX, new QuantityRange<>(QuantityKind.DENSITY, 820, 860));
    Estimate<Mass> litre = measured.mass(Composition.of(WAX), litres(1));
    assertThat(litre.lowSi()).isCloseTo(0.82, within(1e-15));
    assertThat(litre.centralSi()).isCloseTo(0.84, within(1e-15));
    assertThat(litre.highSi()).isCloseTo(0.86, within(1e-15));
  }

  @Test
  void ofVolume_withoutADensity_namesTheMaterial() {
    Material unknown = Material.builder("our-wax").build();
    assertThatThrownBy(() -> Mixture.ofVolume(Composition.of(unknown), litres(1), SOLID))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("our-wax");
  }

  @ParameterizedTest
  @CsvSource({"-1", "1e19"})
  void ofVolume_thatIsNone_isRefused(double litres) {
    assertThatThrownBy(() -> Mixture.ofVolume(Composition.of(WAX), litres(litres), SOLID))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("volume");
  }

  /**
   * Published numbers that count volumes, asked by volume.
   *
   * <p>150 ml of 30 % from 25 % and 50 %: Elementary Algebra 2e (OpenStax), after Example 5.48. 20
   * ml of 70 % from 50 % and 100 %: tutor answer 929842 on a public question site.
   */
  @ParameterizedTest
  @CsvSource({"120, 25, 50, 30, 30", "12, 50, 100, 70, 8"})
  void toVolumeShare_published_is(
      double there, double present, double added, double target, double volume) {
    Material spirit = withDensity("spirit", 789);
    Material water = withDensity("water", 998);
    Composition pot = byVolume(spirit, water, present);
    Correction stronger =
        Correction.toVolumeShare(
            Mixture.ofVolume(pot, millilitres(there), SOLID),
            ShareOf.material(spirit),
            VolumeFraction.ofPercent(target),
            SOLID,
            byVolume(spirit, water, added));
    assertThat(stronger.additions().get(0).volume(SOLID).centralSi() * 1e6)
        .isCloseTo(volume, within(1e-9));
  }

  private static Composition byVolume(Material first, Material second, double percent) {
    return Composition.ofVolumeParts(SOLID, List.of(first, second), percent, 100 - percent);
  }

  /** Whatever is in the pot, what was added brings it there. */
  @Property(tries = 500)
  void toVolumeShare_ofConstituents_isReached(
      @ForAll @DoubleRange(min = 20, max = 90) double paint,
      @ForAll @DoubleRange(min = 0.5, max = 4) double target) {
    Composition pot = Composition.ofParts(List.of(WHITE_PAINT, WAX), paint, 100 - paint);
    Correction thinned =
        Correction.toVolumeShare(
            Mixture.of(pot, grams(200)),
            ShareOf.FREE_OIL,
            VolumeFraction.ofPercent(target),
            SOLID,
            Composition.of(WAX));
    Composition whole = thinned.result().composition().expanded();
    assertThat(whole.volumeView(SOLID).volumeFraction(OIL).percent())
        .isCloseTo(target, within(1e-9));
  }

  @Test
  void toVolumeShare_atTheHighEnd_addsMore() {
    Mixture tube = Mixture.of(WHITE_PAINT, grams(100));
    VolumeFraction tenth = VolumeFraction.ofPercent(10);
    Composition wax = Composition.of(WAX);
    double middle =
        Correction.toVolumeShare(tube, ShareOf.FREE_OIL, tenth, SOLID, wax).addedKilograms();
    double safe =
        Correction.toVolumeShare(tube, ShareOf.FREE_OIL.atHigh(), tenth, SOLID, wax)
            .addedKilograms();
    assertThat(safe).isGreaterThan(middle);
  }

  @Test
  void toVolumeShare_thatNothingReaches_tellsTheNearest() {
    assertThatThrownBy(
            () ->
                Correction.toVolumeShare(
                    Mixture.of(whiteInWax(8), grams(100)),
                    ShareOf.PIGMENT,
                    VolumeFraction.ofPercent(12),
                    SOLID,
                    Composition.of(RESIN)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(MixtureProblem.OUT_OF_REACH);
              assertThat(e.problems().get(0).inWords(Locale.ENGLISH)).contains("8 % by volume");
            });
  }

  @Test
  void toVolumeShare_thatIsMet_addsNothing() {
    Correction none =
        Correction.toVolumeShare(
            Mixture.of(whiteInWax(8), grams(100)),
            ShareOf.PIGMENT,
            VolumeFraction.ofPercent(8),
            SOLID,
            Composition.of(WAX));
    assertThat(none.addedKilograms()).isCloseTo(0, within(1e-12));
  }
}
