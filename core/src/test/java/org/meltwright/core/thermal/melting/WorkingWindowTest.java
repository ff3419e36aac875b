// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.CARNAUBA;
import static org.meltwright.core.thermal.TestMaterials.DAMAR;
import static org.meltwright.core.thermal.TestMaterials.IRON_OXIDE;
import static org.meltwright.core.thermal.TestMaterials.UNKNOWN_WAX;
import static org.meltwright.core.thermal.TestMaterials.mix;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

class WorkingWindowTest {

  private static final TemperaturePoint CEILING = TemperaturePoint.ofCelsius(90);
  private static final TemperatureDifference MARGIN = TemperatureDifference.ofKelvin(10);
  private static final TemperatureDifference LEAST = TemperatureDifference.ofKelvin(5);

  private static WorkingWindow window(Composition composition) {
    return WorkingWindow.of(composition, CEILING, MARGIN, LEAST);
  }

  @Test
  void window_of_one_component_spans_its_range() {
    WorkingWindow window = window(Composition.of(BEESWAX));

    assertThat(window.lowerBound().low().celsius()).isCloseTo(72, within(1e-9));
    assertThat(window.lowerBound().high().celsius()).isEqualTo(75);
    assertThat(window.narrowestWidth().kelvin()).isEqualTo(15);
    assertThat(window.state()).isEqualTo(WorkingWindow.State.OPEN);
    assertThat(window.advice(Locale.ENGLISH)).isEmpty();
  }

  @Test
  void resin_never_lifts_the_lower_bound_although_it_carries_a_melting_figure() {
    WorkingWindow plain = window(Composition.of(BEESWAX));
    WorkingWindow medium = window(mix(BEESWAX, 7, DAMAR, 1));

    double change = medium.lowerBound().low().celsius() - plain.lowerBound().low().celsius();
    assertThat(change).as("mass-weighted averaging would say +4.6 K").isBetween(-2.5, -1.0);
    assertThat(medium.lowerBound().high()).isEqualTo(plain.lowerBound().high());
  }

  @Test
  void hard_component_in_small_share_may_close_the_window() {
    WorkingWindow window = window(mix(BEESWAX, 9, CARNAUBA, 1));

    assertThat(window.state()).isEqualTo(WorkingWindow.State.MAY_BE_CLOSED);
    assertThat(window.lowerBound().high().celsius()).isEqualTo(96);
    assertThat(window.lowerBound().low().celsius()).isBetween(71.0, 73.0);
    assertThat(window.narrowestWidth().isNegative()).isTrue();
    assertThat(window.highestMelting()).contains(CARNAUBA);
    assertThat(window.advice(Locale.ENGLISH)).contains("spoonful").contains("Carnauba wax");
    assertThat(window.advice(Locale.GERMAN)).contains("Löffel").contains("Nie die Obergrenze");
  }

  @Test
  void hard_component_alone_closes_the_window() {
    WorkingWindow window = window(Composition.of(CARNAUBA));

    assertThat(window.state()).isEqualTo(WorkingWindow.State.CLOSED);
    assertThat(window.advice(Locale.ENGLISH)).contains("less of Carnauba").contains("Never raise");
  }

  @ParameterizedTest
  @CsvSource({
    "74.9, 74.9, OPEN",
    "75, 75, OPEN",
    "75, 75.1, MAY_BE_CLOSED",
    "75.1, 75.1, CLOSED",
    "60, 90, MAY_BE_CLOSED"
  })
  void measured_clear_point_wins_and_a_width_of_just_the_least_is_enough(
      double low, double high, WorkingWindow.State expected) {
    WorkingWindow window =
        WorkingWindow.ofMeasured(TemperatureRange.ofCelsius(low, high), CEILING, MARGIN, LEAST);

    assertThat(window.state()).isEqualTo(expected);
    assertThat(window.liquidus()).isEmpty();
  }

  @Test
  void pigment_changes_no_bound() {
    assertThat(window(mix(BEESWAX, 9, IRON_OXIDE, 1)).lowerBound())
        .isEqualTo(window(Composition.of(BEESWAX)).lowerBound());
  }

  @Test
  void component_without_a_figure_is_a_problem_that_names_it() {
    assertThatThrownBy(() -> window(mix(BEESWAX, 1, UNKNOWN_WAX, 1)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> {
              assertThat(e.problems().get(0).code()).isEqualTo(MaterialProblem.PROPERTY_MISSING);
              assertThat(e.problems().get(0).found()).isEqualTo("unknown-wax");
            });
  }

  @Test
  void mix_in_which_nothing_melts_is_a_problem() {
    assertThatThrownBy(() -> window(Composition.of(DAMAR)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).code()).isEqualTo(ThermalProblem.NOTHING_MELTS));
  }

  @Test
  void explanation_says_that_it_is_an_estimate() {
    assertThat(window(mix(BEESWAX, 9, CARNAUBA, 1)).explanation().text(Locale.ENGLISH))
        .contains("Ideal solubility is an estimate")
        .contains("may be closed")
        .contains("Never raise the ceiling");
  }
}
