// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.safety.exposure.CircuitLoad.Device;
import org.meltwright.safety.exposure.CircuitLoad.Outcome;
import org.meltwright.units.ProblemException;

/** Loads on one circuit; the factor is the one that the user's code states. */
class CircuitLoadTest {

  /** NEC 210.19(A)(1) and 210.20(A), as forum posts quote the code; read. */
  @ParameterizedTest
  @CsvSource({"15, 120, 1440", "20, 120, 1920"})
  void continuous_power_of_a_circuit(double amperes, double volts, double watts) {
    assertThat(CircuitLoad.of(volts, amperes, 1.25).continuousWatts())
        .isCloseTo(watts, within(1e-9));
  }

  /** Hot plates on 15 A at 120 V, all continuous; own arithmetic. */
  @ParameterizedTest
  @CsvSource({
    "1100, 300, WITHIN_THE_NUMBERS_GIVEN",
    "1100, 340, WITHIN_THE_NUMBERS_GIVEN",
    "1100, 400, ABOVE_CONTINUOUS",
    "1100, 800, ABOVE_RATING",
  })
  void two_plates_on_fifteen_amperes(double first, double second, Outcome outcome) {
    assertThat(plates(CircuitLoad.of(120, 15, 1.25), first, second).outcome()).isEqualTo(outcome);
  }

  private static CircuitLoad plates(CircuitLoad circuit, double first, double second) {
    return circuit.with(new Device("plate", first, true)).with(new Device("plate", second, true));
  }

  /** Two plates of 1500 W on 16 A at 230 V: above 80 %, below the rating; own arithmetic. */
  @Test
  void two_large_plates_on_sixteen_amperes() {
    CircuitLoad load = plates(CircuitLoad.of(230, 16, 1.25), 1500, 1500);
    assertThat(load.ratedWatts()).isEqualTo(3680);
    assertThat(load.continuousWatts()).isCloseTo(2944, within(1e-9));
    assertThat(load.nameplateWatts()).isEqualTo(3000);
    assertThat(load.outcome()).isEqualTo(Outcome.ABOVE_CONTINUOUS);
    assertThat(plates(CircuitLoad.of(230, 16, 1), 1500, 1500).outcome())
        .isEqualTo(Outcome.WITHIN_THE_NUMBERS_GIVEN);
  }

  /** NEC 210.20(A): 16 A for hours are all that 20 A hold with 125 %; remembered. */
  @Test
  void nameplate_in_amperes_counts_as_the_power_it_draws() {
    CircuitLoad load = CircuitLoad.of(120, 20, 1.25).withAmperes("heater", 16, true);
    assertThat(load.devices()).containsExactly(new Device("heater", 1920, true));
    assertThat(load.nameplateAmperes()).isCloseTo(16, within(1e-12));
    assertThat(load.requiredAmperes()).isCloseTo(20, within(1e-12));
    assertThat(load.outcome()).isEqualTo(Outcome.WITHIN_THE_NUMBERS_GIVEN);
    assertThat(load.withAmperes("iron", 0.1, true).outcome()).isEqualTo(Outcome.ABOVE_CONTINUOUS);
    assertThatThrownBy(() -> load.withAmperes("wrong", -1, true))
        .isInstanceOf(ProblemException.class);
  }

  /** Four plates of 1000 W exceed 16 A at 230 V; own arithmetic. */
  @Test
  void four_plates_exceed_sixteen_amperes() {
    CircuitLoad circuit = CircuitLoad.of(230, 16, 1);
    for (int i = 0; i < 4; i++) {
      circuit = circuit.with(new Device("plate " + i, 1000, true));
    }
    assertThat(circuit.outcome()).isEqualTo(Outcome.ABOVE_RATING);
    assertThat(circuit.text(Locale.ENGLISH)).contains("exceed the rating", "ask an electrician");
    assertThat(circuit.text(Locale.GERMAN)).contains("Elektrofachkraft");
    assertThat(circuit.outcomeText(Locale.ENGLISH))
        .contains("exceed the rating")
        .doesNotContain("electrician");
    assertThat(CircuitLoad.advice(Locale.ENGLISH)).contains("ask an electrician");
  }

  @Test
  void gun_used_now_and_then_counts_once_and_a_plate_with_the_factor() {
    CircuitLoad load =
        CircuitLoad.of(120, 20, 1.25)
            .with(new Device("plate", 1100, true))
            .with(new Device("heat gun", 900, false));
    assertThat(load.requiredAmperes()).isCloseTo((1100 * 1.25 + 900) / 120, within(1e-12));
    assertThat(load.outcome()).isEqualTo(Outcome.WITHIN_THE_NUMBERS_GIVEN);
    assertThat(load.explanation().text(Locale.ENGLISH))
        .contains("factor on continuous loads: 1.25");
    assertThat(load.devices()).hasSize(2);
  }

  /** A plug of 13 A at 230 V carries 2990 W, one of 10 A 2300 W; own arithmetic. */
  @Test
  void plug_carries_less_than_the_circuit() {
    CircuitLoad load = CircuitLoad.of(230, 32, 1).with(new Device("griddle", 2400, true));
    assertThat(load.abovePlug(13)).isEmpty();
    assertThat(load.abovePlug(10)).hasSize(1);
  }

  @Test
  void example_of_the_class_needs_14_6_amperes() {
    assertThat(plates(CircuitLoad.of(120, 15, 1.25), 1100, 300).requiredAmperes())
        .isCloseTo(14.6, within(0.05));
  }

  @Test
  void factor_below_one_is_a_problem() {
    assertThatThrownBy(() -> CircuitLoad.of(230, 16, 0.8)).isInstanceOf(ProblemException.class);
  }

  /**
   * A plate of known and one of unknown power on 15 A at 120 V: 1800 W, 1440 W for hours; own
   * arithmetic.
   */
  @ParameterizedTest
  @CsvSource({
    "0, NOT_KNOWN",
    "1100, NOT_KNOWN",
    "1440, NOT_KNOWN",
    "1441, ABOVE_CONTINUOUS",
    "1800, ABOVE_CONTINUOUS",
    "1801, ABOVE_RATING",
  })
  void unknown_power_is_never_within(double known, Outcome outcome) {
    CircuitLoad load =
        CircuitLoad.of(120, 15, 1.25)
            .with(new Device("plate", known, true))
            .with(Device.ofUnknownPower("old iron"));
    assertThat(load.outcome()).isEqualTo(outcome);
    assertThat(load.nameplateWatts()).isEqualTo(known);
    assertThat(load.unknown()).extracting(Device::name).containsExactly("old iron");
    assertThat(load.abovePlug(0.1)).extracting(Device::name).doesNotContain("old iron");
  }

  @Test
  void texts_say_that_a_power_is_not_known() {
    CircuitLoad load = CircuitLoad.of(230, 16, 1).with(Device.ofUnknownPower("old iron"));
    assertThat(load.text(Locale.ENGLISH)).contains("is not known", "nameplate", "electrician");
    assertThat(load.text(Locale.GERMAN)).contains("nicht bekannt", "Typenschild");
    assertThat(load.explanation().text(Locale.ENGLISH))
        .contains("counted as nothing: old iron", "current, at least = ", "= 0 A");
  }
}
