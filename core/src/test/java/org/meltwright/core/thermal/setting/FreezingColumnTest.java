// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.units.TemperaturePoint;

/** Holds the solver against the exact solutions of Neumann and of two bodies that meet. */
class FreezingColumnTest {

  private static final MeltSubstance WAX =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));

  /** Returns the rms of the relative error of the front from 12 to 60 s, 15 mm on a cold wall. */
  private static double frontError(int cells, int steps, double meltCelsius) {
    ExactFreezing exact = ExactFreezing.onWall(WAX, meltCelsius, 20);
    FreezingColumn column =
        new FreezingColumn(ColumnGrid.ofMelt(0.015, cells), WAX, 0, meltCelsius)
            .openBelow(Double.POSITIVE_INFINITY, 20);
    double step = 60.0 / steps;
    double sum = 0;
    int count = 0;
    for (int i = 1; i <= steps; i++) {
      column.advance(step);
      if (i * step >= 12) {
        double error = column.crust() / exact.crustMetres(i * step) - 1;
        sum += error * error;
        count++;
      }
    }
    return Math.sqrt(sum / count);
  }

  /** Bounds: 1.3 times the errors of an independent run of the same method. */
  @ParameterizedTest
  @CsvSource({
    "75, 63, 8.98e-3",
    "150, 63, 4.363e-3",
    "300, 63, 2.116e-3",
    "600, 63, 1.046e-3",
    "75, 85, 2.153e-2",
    "150, 85, 9.86e-3",
    "300, 85, 4.50e-3",
    "600, 85, 2.15e-3"
  })
  void front_on_a_cold_wall_keeps_to_the_exact_solution(int cells, double melt, double error) {
    assertThat(frontError(cells, 2 * cells, melt)).isLessThan(1.3 * error);
  }

  @ParameterizedTest
  @CsvSource({"63", "85"})
  void front_converges_with_first_order(double melt) {
    double coarse = frontError(150, 300, melt);
    double fine = frontError(300, 600, melt);
    double finest = frontError(600, 1200, melt);

    assertThat(Math.log(coarse / fine) / Math.log(2)).isBetween(0.9, 1.3);
    assertThat(Math.log(fine / finest) / Math.log(2)).isBetween(0.9, 1.3);
  }

  /** Bounds: 1.3 times the errors measured with this grid; they halve with twice the cells. */
  @ParameterizedTest
  @CsvSource({
    "GLASS, 85, 400, 0.48e-2",
    "PLASTER_GROUND, 75, 400, 0.33e-2",
    "BOARD, 75, 400, 0.19e-2",
    "WOOD, 75, 400, 0.80e-2",
    "WOOD, 63, 400, 0.80e-2"
  })
  void crust_on_a_panel_keeps_to_the_exact_solution(
      PanelKind kind, double melt, int cells, double error) {
    Substance body = kind.substance();
    ExactFreezing exact = ExactFreezing.onPanel(WAX, melt, body, 20);
    double thickness = 0.006;
    Panel panel = Panel.of(body, 0.03, TemperaturePoint.ofCelsius(20));
    FreezingColumn column =
        new FreezingColumn(ColumnGrid.of(thickness, cells, panel), WAX, 20, melt);
    for (int i = 0; i < 1000; i++) {
      column.advance(0.005);
    }

    assertThat(column.crust()).isCloseTo(exact.crustMetres(5), withinShare(exact, 1.3 * error));
    assertThat(column.interfaceCelsius()).isCloseTo(exact.interfaceCelsius(), within(0.06));
  }

  private static org.assertj.core.data.Offset<Double> withinShare(
      ExactFreezing exact, double share) {
    return within(exact.crustMetres(5) * share);
  }

  @ParameterizedTest
  @CsvSource({"WOOD, 50, 64", "GLASS, 50, 64", "METAL, 63, 63", "BOARD, 45, 66"})
  void energy_balances_to_1e8(PanelKind kind, double solidus, double liquidus) {
    MeltSubstance melt =
        new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, solidus, liquidus));
    Panel panel = Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(20));
    FreezingColumn column =
        new FreezingColumn(ColumnGrid.of(5e-4, 40, panel), melt, 20, 85)
            .openAbove(10, 20)
            .openBelow(5, 18);
    double before = column.heat();
    double scale = 5e-4 * 900 * 180_000;
    double step = 1e-3;
    for (int i = 0; i < 500; i++) {
      column.advance(step);
      step *= 1.02;
      assertThat(column.heat() - before)
          .as("step %d", i)
          .isCloseTo(column.heatIn(), within(1e-8 * scale));
    }
  }

  @Test
  void isothermal_melting_keeps_the_melt_at_its_melting_point() {
    FreezingColumn column =
        new FreezingColumn(ColumnGrid.ofMelt(0.015, 100), WAX, 0, 63)
            .openBelow(Double.POSITIVE_INFINITY, 20);
    for (int i = 0; i < 100; i++) {
      column.advance(0.5);
    }

    assertThat(column.hottestCelsius()).isCloseTo(63, within(1e-9));
    assertThat(column.liquidFraction()).isBetween(0.8, 0.95);
  }

  @Test
  void cake_of_one_melting_point_sets_as_an_independent_run_says() {
    assertThat(CakeSetting.solidSeconds(WAX, 0.020, 63, 10, 20, CakeSetting.Faces.TOP))
        .isCloseTo(11_352, within(0.01 * 11_352));
    assertThat(CakeSetting.solidSeconds(WAX, 0.020, 85, 10, 20, CakeSetting.Faces.TOP))
        .isCloseTo(13_490, within(0.01 * 13_490));
  }

  /** The statement of the Javadoc of Plank and of the page on formulas, measured. */
  @ParameterizedTest
  @CsvSource({
    "63, 63, 63",
    "63, 63, 85",
    "57, 57, 85",
    "50, 64, 85",
    "50, 64, 75",
  })
  void plank_by_the_middle_of_the_range_ends_4_to_7_per_cent_early(
      double solidus, double liquidus, double pour) {
    MeltSubstance melt = melt(solidus, liquidus);
    double solved = CakeSetting.solidSeconds(melt, 0.020, pour, 10, 20, CakeSetting.Faces.TOP);

    assertThat(1 - Plank.seconds(melt, Plank.Shape.SLAB, 0.040, 10, 20, pour) / solved)
        .as("solved %s s", solved)
        .isBetween(0.035, 0.075);
  }

  @Test
  void plank_by_the_upper_end_of_a_range_ends_21_per_cent_early() {
    double solved =
        CakeSetting.solidSeconds(melt(50, 64), 0.020, 85, 10, 20, CakeSetting.Faces.TOP);

    assertThat(solved).isCloseTo(16_241, within(0.015 * 16_241));
    assertThat(1 - Plank.seconds(WAX, Plank.Shape.SLAB, 0.040, 10, 20, 85) / solved)
        .isBetween(0.20, 0.22);
  }

  private static MeltSubstance melt(double solidus, double liquidus) {
    return new MeltSubstance(
        0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, solidus, liquidus));
  }
}
