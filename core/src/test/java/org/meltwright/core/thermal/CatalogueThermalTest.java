// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
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
    Map<Material, Double> map = new LinkedHashMap<>();
    for (int i = 0; i < parts.length; i += 2) {
      map.put(CATALOGUE.require((String) parts[i]), ((Number) parts[i + 1]).doubleValue());
    }
    return Composition.ofParts(map);
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
    assertThat(MeltFigures.of(Composition.of(material), MeltFigures.TYPICAL).central().density())
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
    assertThat(demand.explanation().text()).contains("Assumed, not stated: damar");
  }
}
