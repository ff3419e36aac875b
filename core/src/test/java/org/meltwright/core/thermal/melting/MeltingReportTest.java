// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.DAMAR;
import static org.meltwright.core.thermal.TestMaterials.UNKNOWN_WAX;
import static org.meltwright.core.thermal.TestMaterials.mix;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.material.TemperatureDefinition;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

class MeltingReportTest {

  private static final TemperaturePoint CEILING = TemperaturePoint.ofCelsius(90);

  @Test
  void report_keeps_every_figure_with_its_definition() {
    MeltingReport report = MeltingReport.of(mix(BEESWAX, 8, DAMAR, 1), CEILING);

    assertThat(report.melting()).hasSize(1);
    assertThat(report.melting().get(0).figures())
        .extracting(f -> f.value().definition())
        .containsExactly(
            TemperatureDefinition.CAPILLARY_RANGE,
            TemperatureDefinition.ONSET,
            TemperatureDefinition.DSC_PEAK);
    assertThat(report.melting().get(0).endOfMelting().orElseThrow().value().range())
        .isEqualTo(TemperatureRange.ofCelsius(62, 65));
    assertThat(report.melting().get(0).startOfMelting().orElseThrow().value().range().low())
        .isEqualTo(TemperaturePoint.ofCelsius(45.5));
  }

  @Test
  void resin_dissolves_from_a_lower_bound_that_never_lies_above_the_ceiling() {
    DissolvingBound below =
        MeltingReport.of(mix(BEESWAX, 8, DAMAR, 1), CEILING).dissolving().get(0);
    assertThat(below.shown()).contains(TemperatureRange.ofCelsius(75, 90));
    assertThat(below.isCut()).isFalse();

    DissolvingBound cut =
        MeltingReport.of(mix(BEESWAX, 8, DAMAR, 1), TemperaturePoint.ofCelsius(85))
            .dissolving()
            .get(0);
    assertThat(cut.shown()).contains(TemperatureRange.ofCelsius(75, 85));
    assertThat(cut.isCut()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60 | true | true | damar dissolves only above the ceiling of 60.0 °C",
        "74.9 | true | true | damar dissolves only above the ceiling of 74.9 °C",
        "75 | true | false | damar dissolves from 75.0 °C",
        "85 | true | false | damar dissolves from 75.0–85.0 °C",
        "90 | false | false | damar dissolves from 75.0–90.0 °C"
      })
  void bound_says_whether_the_ceiling_cuts_it_in_part_or_wholly(
      double ceiling, boolean cut, boolean above, String words) {
    MeltingReport report =
        MeltingReport.of(mix(BEESWAX, 8, DAMAR, 1), TemperaturePoint.ofCelsius(ceiling));
    DissolvingBound bound = report.dissolving().get(0);

    assertThat(bound.isCut()).isEqualTo(cut);
    assertThat(bound.isAboveCeiling()).isEqualTo(above);
    assertThat(bound.shown().isEmpty()).isEqualTo(above);
    assertThat(bound).hasToString(words);
    assertThat(report.explanation().text(Locale.ENGLISH))
        .contains(
            words
                .replaceAll("damar (.*?) 75.*", "$1")
                .replace("damar ", "")
                .replace(".0 °C", " °C"));
    assertThat(report.unknown()).isEmpty();
  }

  @Test
  void explanation_never_names_the_melting_figure_of_a_resin() {
    String text =
        MeltingReport.of(mix(BEESWAX, 8, DAMAR, 1), CEILING).explanation().text(Locale.ENGLISH);

    assertThat(text)
        .contains("a lower bound")
        .contains("do not average")
        .doesNotContain("120")
        .doesNotContain("150");
  }

  @Test
  void unknown_lists_what_has_no_figure() {
    assertThat(MeltingReport.of(mix(BEESWAX, 1, UNKNOWN_WAX, 1), CEILING).unknown())
        .containsExactly(UNKNOWN_WAX);
  }

  private static final Material MEDIUM = medium().build();

  private static Material.Builder medium() {
    return Material.builder("ready-made medium")
        .family(MaterialFamily.WAX, MaterialRole.BASE)
        .constituent(BEESWAX, share(8.0 / 9))
        .constituent(DAMAR, share(1.0 / 9));
  }

  private static MassFractionRange share(double share) {
    return MassFractionRange.of(MassFraction.of(share));
  }

  /** Half medium at 1 : 8 and half beeswax is beeswax 17 to damar 1. */
  @Test
  void material_that_is_a_mix_is_looked_into() {
    MeltingReport report = MeltingReport.of(mix(MEDIUM, 1, BEESWAX, 1), CEILING);

    assertThat(report.melting()).extracting(ComponentMelting::material).containsExactly(BEESWAX);
    assertThat(report.melting().get(0).share().value()).isCloseTo(17.0 / 18, within(1e-12));
    assertThat(report.dissolving()).extracting(DissolvingBound::material).containsExactly(DAMAR);
    assertThat(report.unknown()).isEmpty();
  }

  @Test
  void material_that_states_how_it_melts_stands_for_itself() {
    Material measured =
        medium()
            .figure(PropertyKey.MELTING_RANGE, BEESWAX.figures(PropertyKey.MELTING_RANGE).get(0))
            .build();

    assertThat(MeltingReport.of(Composition.of(measured), CEILING).melting())
        .extracting(ComponentMelting::material)
        .containsExactly(measured);
  }

  @Test
  void window_and_setting_are_those_of_what_is_inside() {
    Composition parts = mix(BEESWAX, 8, DAMAR, 1);
    Composition whole = Composition.of(MEDIUM);
    double liquidus = IdealLiquidus.of(parts, SolubilityAssumptions.TYPICAL).point().celsius();

    assertThat(IdealLiquidus.of(whole, SolubilityAssumptions.TYPICAL).point().celsius())
        .isCloseTo(liquidus, within(1e-9));
    List<EstimateInput> stated = MeltFigures.of(parts, MeltFigures.TYPICAL).inputs();
    List<EstimateInput> inside = MeltFigures.of(whole, MeltFigures.TYPICAL).inputs();
    for (int i = 0; i < stated.size(); i++) {
      assertThat(inside.get(i).low())
          .as(stated.get(i).toString())
          .isCloseTo(stated.get(i).low(), withinPercentage(1e-9));
      assertThat(inside.get(i).high())
          .as(stated.get(i).toString())
          .isCloseTo(stated.get(i).high(), withinPercentage(1e-9));
    }
  }
}
