// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.melting.ComponentMelting;
import org.meltwright.core.thermal.melting.DissolvingBound;
import org.meltwright.core.thermal.melting.IdealLiquidus;
import org.meltwright.core.thermal.melting.MeltingReport;
import org.meltwright.core.thermal.melting.SolubilityAssumptions;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.core.thermal.setting.MeltFigures;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/** Holds the package against the materials of the catalogue. */
class CatalogueThermalTest {

  private static final MaterialCatalogue CATALOGUE = MaterialCatalogue.standard();
  private static final TemperaturePoint CEILING = TemperaturePoint.ofCelsius(90);

  static Stream<Material> whatMelts() {
    return CATALOGUE.byFamily(MaterialFamily.WAX).stream();
  }

  static Stream<Material> resins() {
    return CATALOGUE.byFamily(MaterialFamily.RESIN).stream();
  }

  private static Composition mix(Object... parts) {
    List<Material> materials = new ArrayList<>();
    double[] masses = new double[parts.length / 2];
    for (int i = 0; i < parts.length; i += 2) {
      materials.add(CATALOGUE.require((String) parts[i]));
      masses[i / 2] = ((Number) parts[i + 1]).doubleValue();
    }
    return Composition.ofParts(materials, masses);
  }

  private static WorkingWindow window(Composition composition) {
    return WorkingWindow.of(
        composition,
        CEILING,
        TemperatureDifference.ofKelvin(10),
        TemperatureDifference.ofKelvin(5));
  }

  @ParameterizedTest
  @MethodSource("whatMelts")
  void everything_that_melts_tells_where_melting_ends(Material material) {
    ComponentMelting melting = MeltingReport.of(Composition.of(material), CEILING).melting().get(0);

    assertThat(melting.endOfMelting()).isPresent();
    assertThat(melting.startOfMelting().orElseThrow().value().range().low())
        .isLessThanOrEqualTo(melting.endOfMelting().orElseThrow().value().range().high());
  }

  @ParameterizedTest
  @MethodSource("whatMelts")
  void everything_that_melts_gives_heat_and_setting_figures(Material material) {
    HeatDemand demand =
        HeatDemand.of(
            new Mixture(Composition.of(material), 1),
            TemperaturePoint.ofCelsius(20),
            CEILING,
            HeatAssumptions.TYPICAL);

    assertThat(demand.totalHeat().centralSi()).isBetween(150e3, 500e3);
    assertThat(
            MeltFigures.of(Composition.of(material), MeltFigures.TYPICAL)
                .central()
                .densityKilogramsPerCubicMetre())
        .isBetween(800.0, 1100.0);
  }

  @ParameterizedTest
  @MethodSource("resins")
  void no_resin_is_shown_dissolving_above_the_ceiling(Material resin) {
    DissolvingBound bound = MeltingReport.of(Composition.of(resin), CEILING).dissolving().get(0);

    assertThat(bound.shown().stream().noneMatch(r -> r.high().isAbove(CEILING))).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "beeswax-yellow, OPEN",
    "beeswax-bleached, OPEN",
    "candelilla, OPEN",
    "soy-wax, OPEN",
    "stearic-acid, OPEN",
    "carnauba, CLOSED",
    "microcrystalline, MAY_BE_CLOSED",
    "ozokerite, MAY_BE_CLOSED",
    "montan, CLOSED"
  })
  void window_of_a_material_by_itself(String id, WorkingWindow.State expected) {
    assertThat(window(Composition.of(CATALOGUE.require(id))).state()).isEqualTo(expected);
  }

  @Test
  void medium_with_a_hard_component_may_be_closed_and_without_it_is_open() {
    assertThat(window(mix("beeswax-yellow", 8, "damar", 1)).state())
        .isEqualTo(WorkingWindow.State.OPEN);
    assertThat(window(mix("beeswax-yellow", 8, "damar", 1, "carnauba", 0.5)).state())
        .isEqualTo(WorkingWindow.State.MAY_BE_CLOSED);
  }

  @ParameterizedTest
  @CsvSource({"60, MAY_BE_CLOSED, true", "74, MAY_BE_CLOSED, true", "75, OPEN, false"})
  void window_is_not_open_where_a_resin_does_not_dissolve(
      double ceiling, WorkingWindow.State state, boolean undissolved) {
    WorkingWindow window =
        WorkingWindow.of(
            mix("soy-wax", 8, "damar", 1),
            TemperaturePoint.ofCelsius(ceiling),
            TemperatureDifference.ofKelvin(2),
            TemperatureDifference.ofKelvin(3));

    assertThat(window.narrowestWidth().kelvin()).isGreaterThanOrEqualTo(3);
    assertThat(window.state()).isEqualTo(state);
    assertThat(window.undissolved().isEmpty()).isNotEqualTo(undissolved);
    assertThat(window.advice(Locale.ENGLISH).contains("dissolves only above this ceiling"))
        .isEqualTo(undissolved);
    assertThat(window.advice(Locale.GERMAN).contains("löst sich erst oberhalb"))
        .isEqualTo(undissolved);
    assertThat(window.explanation().text(Locale.ENGLISH).contains("dissolves only above"))
        .isEqualTo(undissolved);
  }

  @Test
  void closed_window_names_the_resin_too() {
    WorkingWindow window =
        WorkingWindow.of(
            mix("beeswax-yellow", 8, "damar", 1),
            TemperaturePoint.ofCelsius(60),
            TemperatureDifference.ofKelvin(10),
            TemperatureDifference.ofKelvin(5));

    assertThat(window.state()).isEqualTo(WorkingWindow.State.CLOSED);
    assertThat(window.advice(Locale.ENGLISH)).contains("Use less of").contains("dissolves only");
  }

  @ParameterizedTest
  @CsvSource({
    "stearic-acid, 18, 36, 2, 284.48",
    "cetyl-palmitate, 32, 64, 2, 480.86",
    "water, 0, 2, 1, 18.015"
  })
  void compound_has_the_molar_mass_of_its_formula(
      String id, int carbon, int hydrogen, int oxygen, double stated) {
    double byFormula = carbon * 12.011 + hydrogen * 1.008 + oxygen * 15.999;

    assertThat(stated).isCloseTo(byFormula, within(0.005));
    assertThat(SolubilityAssumptions.TYPICAL.molarMass(CATALOGUE.require(id)))
        .isCloseTo(stated / 1000, within(1e-12));
    assertThat(CATALOGUE.require(id).find(PropertyKey.MOLECULAR_WEIGHT).orElseThrow().knowledge())
        .isEqualTo(Knowledge.DERIVED);
  }

  @Test
  void stearic_acid_in_beeswax_melts_lower_by_its_own_molar_mass() {
    Material acid = CATALOGUE.require("stearic-acid");
    Composition mix = mix("beeswax-yellow", 1, "stearic-acid", 1);
    double own = IdealLiquidus.of(mix, SolubilityAssumptions.TYPICAL).point().kelvin();
    double assumed =
        IdealLiquidus.of(mix, SolubilityAssumptions.TYPICAL.withMolarMass(acid, 0.747))
            .point()
            .kelvin();

    assertThat(assumed - own).isBetween(0.0, 3.0);
  }

  @Test
  void missing_heat_has_one_name() {
    Composition medium = mix("damar", 1, "beeswax-yellow", 8);
    HeatDemand demand =
        HeatDemand.of(
            new Mixture(medium, 1),
            TemperaturePoint.ofCelsius(20),
            CEILING,
            HeatAssumptions.TYPICAL);

    assertThat(MeltFigures.of(medium, MeltFigures.TYPICAL).assumed())
        .contains("damar liquid-specific-heat")
        .isSubsetOf(demand.assumed());
  }

  @Test
  void kilogram_of_medium_takes_about_300_kilojoules() {
    HeatDemand demand =
        HeatDemand.of(
            Mixture.of(mix("beeswax-yellow", 8, "damar", 1), MetricUnits.kilograms(1)),
            TemperaturePoint.ofCelsius(20),
            TemperaturePoint.ofCelsius(80),
            HeatAssumptions.TYPICAL);

    assertThat(demand.totalHeat().centralSi()).isBetween(260e3, 320e3);
    assertThat(demand.assumed()).contains("damar liquid-specific-heat");
    assertThat(demand.explanation().text(Locale.ENGLISH)).contains("Assumed, not stated: damar");
  }
}
