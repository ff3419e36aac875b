// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.core.laws.SampleMaterials.WHITE_PAINT;
import static org.meltwright.core.laws.SampleMaterials.withDensity;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.PropertyRange;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.units.MaterialState;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

class PigmentVolumeTest {

  @ParameterizedTest
  @CsvSource({
    "20, 4200, 0.5267605634", // inputs Lewarchik 2014, digits evaluated with 30 digits
    "25, 5100, 0.4230769230769", // own evaluation with 30 digits
    "13, 6700, 0.5177187153931", // own evaluation with 30 digits
    "50, 1500, 0.5548961424",
    "35, 2350, 0.5320056899",
    "0, 4200, 1",
  })
  void critical_onePigment_is(double oilAbsorption, double density, double expected) {
    assertThat(PigmentVolume.critical(oilAbsorption, density).value())
        .isCloseTo(expected, within(1e-8));
  }

  @Test
  void oilAbsorption_backFromTheCriticalShare_is() {
    // own evaluation with 30 digits
    assertThat(PigmentVolume.oilAbsorption(VolumeFraction.of(0.5), 4000))
        .isCloseTo(23.375, within(1e-9));
  }

  @Test
  void critical_equalVolumesOfTwo_addsTheirOilDemand() {
    // own evaluation with 30 digits
    Material heavy = pigment("heavy", 4200, 20);
    Material light = pigment("light", 1500, 50);
    Composition mix = Composition.ofParts(List.of(heavy, light, WAX), 4.2, 1.5, 10);
    assertThat(PigmentVolume.of(mix, DensityBasis.SOLID).critical().value())
        .isCloseTo(0.5404624277457, within(1e-8));
  }

  @Test
  void concentration_tenPerCentByMass_isTwoByVolume() {
    // own evaluation with 30 digits: 10 % of (25, 5.1) in 0.97 g/cm³
    Composition mix =
        Composition.ofParts(List.of(pigment("p", 5100, 25), withDensity("m", 970)), 10, 90);
    PigmentVolume volume = PigmentVolume.of(mix, DensityBasis.SOLID);
    assertThat(volume.concentration().value()).isCloseTo(0.02069554, within(1e-8));
    assertThat(volume.ofWhole()).isEqualTo(volume.concentration());
    assertThat(volume.reducedConcentration()).isCloseTo(0.04891673, within(1e-8));
    assertThat(volume.explanation().text(Locale.ENGLISH))
        .contains("= 2.0696 %")
        .contains("Lewarchik");
  }

  @Test
  void concentration_carrier_isLeftOutOfTheDrySolids() {
    Material carrier =
        Material.builder("carrier")
            .family(MaterialFamily.WATER, MaterialRole.CARRIER)
            .figure(PropertyKey.LIQUID_DENSITY, density(1000, MaterialState.LIQUID))
            .build();
    Composition mix =
        Composition.ofParts(List.of(WHITE, withDensity("m", 1000), carrier), 4.17, 1, 2);
    PigmentVolume volume = PigmentVolume.of(mix, DensityBasis.SOLID);
    assertThat(volume.concentration().value()).isCloseTo(0.5, within(1e-12));
    assertThat(volume.ofWhole().value()).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void concentration_oilPaint_hasTheRangeOfItsPigment() {
    PigmentVolume volume = PigmentVolume.of(Composition.of(WHITE_PAINT), DensityBasis.SOLID);
    assertThat(volume.concentrationLow().value()).isCloseTo(byVolume(0.75), within(1e-12));
    assertThat(volume.concentrationHigh().value()).isCloseTo(byVolume(0.80), within(1e-12));
    assertThat(volume.concentration().value()).isCloseTo(byVolume(0.775), within(1e-12));
  }

  @Test
  void critical_oilAbsorptionMissing_namesIt() {
    PigmentVolume volume =
        PigmentVolume.of(Composition.ofParts(List.of(WHITE, WAX), 1, 9), DensityBasis.SOLID);
    assertThatThrownBy(volume::critical)
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("white")
        .hasMessageContaining("oil-absorption");
    assertThat(volume.explanation().text(Locale.ENGLISH)).doesNotContain("critical");
  }

  private static double byVolume(double pigment) {
    return pigment / 4170 / (pigment / 4170 + (1 - pigment) / 930);
  }

  private static Material pigment(String id, double density, double oilAbsorption) {
    NumberRange absorption = new NumberRange(oilAbsorption, oilAbsorption, "g/100 g");
    return Material.builder(id)
        .family(MaterialFamily.PIGMENT, MaterialRole.COLOURANT)
        .figure(PropertyKey.SOLID_DENSITY, density(density, MaterialState.SOLID))
        .figure(PropertyKey.OIL_ABSORPTION, Sourced.of(absorption, Source.USER, Knowledge.READ))
        .build();
  }

  private static Sourced<PropertyRange<org.meltwright.units.Density>> density(
      double value, MaterialState state) {
    return Sourced.of(
        PropertyRange.of(new QuantityRange<>(QuantityKind.DENSITY, value, value), state),
        Source.USER,
        Knowledge.READ);
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 4200",
    "NaN, 4200",
    "Infinity, 4200",
    "20, 0",
    "20, -4200",
    "20, NaN",
    "20, Infinity",
    "0, Infinity",
  })
  void critical_figureOutOfRange_isAProblem(double oilAbsorption, double density) {
    assertThatThrownBy(() -> PigmentVolume.critical(oilAbsorption, density))
        .isInstanceOf(ProblemException.class);
  }
}
