// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.DAMAR;
import static org.meltwright.core.thermal.TestMaterials.IRON_OXIDE;
import static org.meltwright.core.thermal.TestMaterials.mix;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.meltwright.core.thermal.TestMaterials;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.heat.ReadingLog;
import org.meltwright.core.thermal.melting.IdealLiquidus;
import org.meltwright.core.thermal.melting.IdealSolubility;
import org.meltwright.core.thermal.melting.SolubilityAssumptions;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.core.thermal.settling.ViscosityCurve;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Mistakes found in print, which the library must not repeat. */
class TrapsTest {

  private static final MeltSubstance WAX =
      new MeltSubstance(0.25, 0.25, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));

  @Test
  void cake_of_25_mm_is_refused_as_lumped() {
    double biot = Conduction.biot(10, 0.025 / 2, 0.25);

    assertThat(biot).isEqualTo(0.5);
    assertThatThrownBy(() -> Conduction.lumped(60, 1000, biot))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Som, Introduction to Heat Transfer, example 4.1 (an apple of 50 mm radius). */
  @Test
  void apple_is_refused_as_lumped() {
    double biot = Conduction.biot(10, 0.05 / 3, 0.6);

    assertThat(biot).isCloseTo(0.277778, within(1e-6));
    assertThatThrownBy(() -> Conduction.lumped(60, 1000, biot))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void lumped_is_allowed_at_its_limit_and_refused_just_above() {
    assertThat(Conduction.lumped(1000, 1000, 0.1)).isCloseTo(Math.exp(-1), within(1e-15));
    assertThatThrownBy(() -> Conduction.lumped(1000, 1000, 0.1000001))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * A re-working of Incropera, example 5.6, takes erfc where the inverse of erf is needed: 0.92.
   */
  @Test
  void depth_of_frost_comes_from_the_inverse_error_function() {
    double diffusivity = 0.138e-6;
    double sixtyDays = 60 * 24 * 3600.0;

    assertThat(Conduction.halfSpaceDepth(15.0 / 35.0, diffusivity, sixtyDays))
        .isCloseTo(0.6766132, within(1e-3));
  }

  /** A re-working of de Nevers, example 11.13, prints 4.7e-15 from another exponent. */
  @Test
  void salt_in_ideal_solution_is_not_4_7e_15() {
    assertThat(IdealSolubility.moleFraction(30_219, 1073.15, 293.15)).isGreaterThan(1e-4);
  }

  @Test
  void stefan_number_is_not_inverted() {
    assertThat(ExactFreezing.onePhaseLambda(0.1)).isLessThan(ExactFreezing.onePhaseLambda(10));
    assertThat(ExactFreezing.onePhaseLambda(0.1)).isCloseTo(Math.sqrt(0.05), within(0.016 * 0.23));
  }

  @Test
  void three_lengths_of_biot_differ_for_one_slab() {
    double thickness = 0.04;
    double lumped = Conduction.biot(10, Plank.Shape.SLAB.volumeOverArea(thickness), 0.25);
    double series = Conduction.biot(10, thickness / 2, 0.25);
    double lumpedSphere = Conduction.biot(10, Plank.Shape.SPHERE.volumeOverArea(thickness), 0.25);

    assertThat(lumped).isEqualTo(series);
    assertThat(lumpedSphere).isCloseTo(series / 3, within(1e-12));
  }

  @Test
  void crowding_is_counted_once() {
    VolumeFraction content = VolumeFraction.of(0.2);
    StirringInterval interval =
        StirringInterval.of(
            IRON_OXIDE,
            new QuantityRange<>(QuantityKind.LENGTH, 1e-6, 1e-6),
            content,
            TestMaterials.pot(820, 820, 0.012, 0.012, 0.05, 0.005, TemperaturePoint.ofCelsius(80)),
            0.1);
    double alone = Settling.stokesVelocity(1e-6, 5175 - 820, 0.012);

    assertThat(interval.centralVelocity()).isCloseTo(alone * Math.pow(0.8, 4.65), within(1e-18));
  }

  @Test
  void averaged_melting_point_has_the_wrong_sign() {
    double averaged = (7 * 63.5 + 100) / 8;
    IdealLiquidus liquidus =
        IdealLiquidus.of(mix(BEESWAX, 7, DAMAR, 1), SolubilityAssumptions.TYPICAL);

    assertThat(averaged).isGreaterThan(63.5);
    assertThat(liquidus.point().celsius()).isLessThan(62);
  }

  /** With the figures that a published estimate assumes: 62.85 °C, 180 kJ/kg, 677 and 443 g/mol. */
  @Test
  void resin_lowers_the_liquidus_by_one_and_a_half_kelvin() {
    double wax = 7 / 0.677;
    double fraction = wax / (wax + 1 / 0.443);
    double liquidus = IdealSolubility.liquidusKelvin(fraction, 180_000 * 0.677, 336.15);

    assertThat(liquidus - 336.15).isCloseTo(-1.52, within(0.05));
  }

  @Test
  void isothermal_figures_are_not_taken_for_a_range() {
    double sharp = CakeSetting.solidSeconds(WAX, 0.02, 85, 10, 20, CakeSetting.Faces.TOP);
    MeltSubstance ranged =
        new MeltSubstance(0.25, 0.25, 900, new MeltingHeat(2000, 2300, 180_000, 50, 64));

    assertThat(CakeSetting.solidSeconds(ranged, 0.02, 85, 10, 20, CakeSetting.Faces.TOP) / sharp)
        .isGreaterThan(1.15);
  }

  @Test
  void viscosity_below_the_clear_point_is_refused() {
    ViscosityCurve curve =
        ViscosityCurve.through(
            TemperaturePoint.ofCelsius(70),
            0.020,
            TemperaturePoint.ofCelsius(90),
            0.012,
            TemperaturePoint.ofCelsius(65));

    assertThatThrownBy(() -> curve.pascalSeconds(TemperaturePoint.ofCelsius(64.9)))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems().get(0).code()).isEqualTo(ThermalProblem.BELOW_CLEAR_POINT));
  }

  @Test
  void gap_in_a_log_is_never_counted_as_below() {
    ReadingLog log =
        new ReadingLog(
            List.of(reading(0, 80), reading(3600, 90), reading(7200, 80), reading(20_000, 70)));
    ReadingLog.TimeAbove above = log.above(TemperaturePoint.ofCelsius(85), 3600);

    assertThat(above.aboveHours()).isEqualTo(1);
    assertThat(above.unknownSeconds()).isEqualTo(12_800);
    assertThat(above.atMostHours()).isCloseTo(1 + 12_800 / 3600.0, within(1e-12));
  }

  @Test
  void readings_out_of_order_are_refused() {
    assertThatThrownBy(() -> new ReadingLog(List.of(reading(10, 80), reading(10, 81))))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e -> assertThat(e.problems().get(0).path()).isEqualTo("/readings/1"));
  }

  @Test
  void reading_just_at_the_threshold_is_not_above_it() {
    ReadingLog log = new ReadingLog(List.of(reading(0, 85), reading(3600, 85)));

    assertThat(log.above(TemperaturePoint.ofCelsius(85), 3600).aboveSeconds()).isZero();
  }

  private static ReadingLog.Reading reading(double seconds, double celsius) {
    return new ReadingLog.Reading(seconds, TemperaturePoint.ofCelsius(celsius));
  }
}
