// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.gramsPerMillilitre;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.units.ProblemException;

class CompositionDataTest {

  private static final Material RESIN = MaterialCatalogue.standard().require("damar");
  private static final Material WAX = MaterialCatalogue.standard().require("beeswax-yellow");
  private static final Composition MEDIUM = Composition.ofParts(List.of(RESIN, WAX), 1, 7);

  @Test
  void of_oneToSeven_hasBothSharesAndTheDensity() {
    // arithmetic: 1/1060 and 7/960, as parts of their sum
    DensityBasis basis =
        DensityBasis.SOLID
            .with(RESIN, gramsPerMillilitre(1.06))
            .with(WAX, gramsPerMillilitre(0.96));
    CompositionData data = CompositionData.of(MEDIUM, basis);
    double resin = 1 / 1060.0;
    double wax = 7 / 960.0;

    assertThat(data.basis()).isEqualTo("solid");
    assertThat(data.shares())
        .extracting(CompositionData.Share::material)
        .containsExactly("damar", "beeswax-yellow");
    assertThat(data.shares().get(0).massFraction()).isEqualTo(0.125);
    assertThat(data.shares().get(0).volumeFraction())
        .isCloseTo(resin / (resin + wax), within(1e-12));
    assertThat(data.shares().get(0).volumeFraction()).isCloseTo(0.114558, within(5e-7));
    assertThat(data.densityKilogramsPerCubicMetre()).isCloseTo(8 / (resin + wax), within(1e-9));
    assertThat(data.lowDensityKilogramsPerCubicMetre())
        .isEqualTo(data.highDensityKilogramsPerCubicMetre());
  }

  @Test
  void of_melt_saysSoAndHasTheRangeOfItsMaterials() {
    CompositionData data = CompositionData.of(MEDIUM, DensityBasis.MELT);

    assertThat(data.basis()).isEqualTo("liquid");
    assertThat(data.lowDensityKilogramsPerCubicMetre())
        .isLessThan(data.densityKilogramsPerCubicMetre());
    assertThat(data.highDensityKilogramsPerCubicMetre())
        .isGreaterThan(data.densityKilogramsPerCubicMetre());
    assertThat(CompositionData.of(MEDIUM, DensityBasis.SOLID).shares().get(0).volumeFraction())
        .isNotEqualTo(data.shares().get(0).volumeFraction());
  }

  @Test
  void of_materialWithoutDensity_isAProblemNotAGuess() {
    Composition unknown = Composition.of(Material.builder("our-wax").build());

    assertThatThrownBy(() -> CompositionData.of(unknown, DensityBasis.SOLID))
        .isInstanceOf(ProblemException.class);
  }
}
