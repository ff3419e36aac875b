// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.thermal.setting.ExactFreezing;
import org.meltwright.core.thermal.setting.MeltSubstance;
import org.meltwright.core.thermal.setting.Substance;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Cases of our own, worked out to 25 digits from the formulas that the classes state. */
class FurtherCasesTest {

  private static final MeltSubstance WAX =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));
  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);

  @ParameterizedTest
  @CsvSource({
    "0.02, 0.0996691975715480",
    "0.3, 0.369880216724209",
    "3, 0.913751269972184",
    "10, 1.25697212127920"
  })
  void one_phase_lambda(double stefan, double lambda) {
    assertThat(ExactFreezing.onePhaseLambda(stefan)).isCloseTo(lambda, within(1e-12));
  }

  @Test
  void supercooled_lambda_at_one_half() {
    assertThat(ExactFreezing.supercooledLambda(0.5)).isCloseTo(0.432751599366308, within(1e-12));
  }

  @Test
  void two_phase_lambda() {
    MeltSubstance other =
        new MeltSubstance(0.3, 0.15, 950, new MeltingHeat(2100, 2500, 200_000, 60, 60));

    assertThat(ExactFreezing.onWall(WAX, 95, 10).lambda())
        .isCloseTo(0.390481402094570, within(1e-12));
    assertThat(ExactFreezing.onWall(other, 80, 20).lambda())
        .isCloseTo(0.366623747026308, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "0.15, 1000, 1300, 20, 63, 0.155412564374590, 58.5817627819828",
    "1, 2500, 840, 20, 75, 0.249919224385296, 46.9297303612239",
    "0.5, 1200, 1090, 20, 85, 0.127201392624560, 56.6861482003046",
    "237, 2702, 903, 20, 85, 0.364979632605118, 22.8414769838793",
    "1, 2500, 840, 40, 85, 0.104480875888739, 58.3448692447461"
  })
  void two_body_lambda_and_interface(
      double k, double rho, double c, double panel, double melt, double lambda, double interf) {
    ExactFreezing freezing = ExactFreezing.onPanel(WAX, melt, new Substance(k, rho, c), panel);

    assertThat(freezing.lambda()).isCloseTo(lambda, within(1e-11));
    assertThat(freezing.interfaceCelsius()).isCloseTo(interf, within(1e-9));
  }

  @Test
  void temperature_of_60_kilojoules_per_kilogram() {
    EnthalpyCurve curve = EnthalpyCurve.of(new MeltingHeat(2000, 2400, 180_000, 40, 65));

    assertThat(curve.temperature(ROOM, 60_000).celsius())
        .isCloseTo(42.1698190307598, within(1e-10));
  }

  @Test
  void thermostat_plate_at_90_with_6_watts_per_kelvin() {
    MeltingHeat heat = new MeltingHeat(1500, 1500, 150_000, 60, 60);
    HeatSupply plate = HeatSupply.thermostatPlate(TemperaturePoint.ofCelsius(90), 6);
    HeatUpTime.Reached time =
        (HeatUpTime.Reached)
            HeatUpTime.of(
                EnthalpyCurve.of(heat),
                1,
                0,
                TemperaturePoint.ofCelsius(15),
                TemperaturePoint.ofCelsius(60),
                plate);

    assertThat(time.warmingSeconds()).isCloseTo(229.072682968539, within(1e-9));
    assertThat(time.meltingSeconds()).isCloseTo(833.333333333333, within(1e-9));
  }

  /** ∫ (1000 + 20 T)/(150 − 0.00001 T) dT from 0 to 10: closed forms cancel here. */
  @Test
  void heat_capacity_that_rises_against_a_tiny_loss() {
    HeatSupply supply = HeatSupply.constantPower(150).withLoss(1e-5, TemperaturePoint.ofCelsius(0));

    assertThat(supply.seconds(1000, 1200, 0, 10)).isCloseTo(73.3333585185299, within(1e-11));
  }

  @ParameterizedTest
  @CsvSource({"0.0499", "0.0501", "1e-7", "1e-3"})
  void time_on_a_supply_is_smooth_where_the_formula_changes(double fall) {
    double loss = fall * 150 / 10;
    HeatSupply supply = HeatSupply.constantPower(150).withLoss(loss, TemperaturePoint.ofCelsius(0));
    double sum = 0;
    int parts = 20_000;
    for (int i = 0; i < parts; i++) {
      double t = (i + 0.5) * 10 / parts;
      sum += (1000 + 20 * t) / (150 - loss * t) * 10 / parts;
    }

    assertThat(supply.seconds(1000, 1200, 0, 10)).isCloseTo(sum, within(1e-9 * sum));
  }

  @Test
  void crowded_settling_of_2_micrometres() {
    double alone = Settling.stokesVelocity(2e-6, 4000 - 850, 0.02);

    assertThat(alone).isCloseTo(3.4323275e-7, within(1e-20));
    assertThat(Settling.hindrance(VolumeFraction.of(0.15), Settling.HINDRANCE_EXPONENT))
        .isCloseTo(0.469675606193062, within(1e-13));
    assertThat(Settling.convectingSeconds(0.2, 0.08, alone))
        .isCloseTo(52_009.8507649307, within(1e-7));
  }
}
