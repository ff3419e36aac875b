// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.IRON_OXIDE;
import static org.meltwright.core.thermal.TestMaterials.mix;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.thermal.TestMaterials;
import org.meltwright.core.thermal.heat.EnthalpyCurve;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.setting.FreezeClock.Resolution;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Moves each named input of each estimate by itself and looks which way the result goes. */
class DirectionTableTest {

  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);

  /** How far an input that hardly matters may turn the other way, as a share of the result. */
  private static final double HARDLY = 3e-3;

  private static final List<EstimateInput> MELT = MeltFigures.TYPICAL.inputs();

  private static MeltSubstance melt(int moved, double value) {
    double[] v = MELT.stream().mapToDouble(EstimateInput::central).toArray();
    v[moved] = value;
    return new MeltSubstance(v[0], v[1], v[2], new MeltingHeat(v[3], v[4], v[5], v[6], v[7]));
  }

  private static void moves(
      EstimateInput input, ToDoubleFunction<Double> result, double slack, String where) {
    double low = result.applyAsDouble(input.low());
    double high = result.applyAsDouble(input.high());
    double sign = input.direction() == Direction.RAISES ? 1 : -1;
    assertThat(sign * (high - low))
        .as(
            "%s from %s to %s moves %s to %s: %s",
            input, input.low(), input.high(), low, high, where)
        .isGreaterThanOrEqualTo(-slack * low);
  }

  static Stream<Arguments> filmsAndFigures() {
    return Stream.of(PanelKind.values())
        .flatMap(
            kind ->
                Stream.of(20.0, 45.0)
                    .flatMap(
                        panel ->
                            Stream.iterate(0, i -> i < MELT.size(), i -> i + 1)
                                .map(i -> Arguments.of(kind, panel, i))));
  }

  @ParameterizedTest
  @MethodSource("filmsAndFigures")
  void figures_of_the_melt_move_open_time_as_the_table_says(
      PanelKind kind, double panel, int figure) {
    moves(
        MELT.get(figure),
        v -> clock(melt(figure, v), 4e-4, kind, panel, 10).half(),
        HARDLY,
        "half set on " + kind + " at " + panel);
    moves(
        MELT.get(figure),
        v -> clock(melt(figure, v), 4e-4, kind, panel, 10).full(),
        HARDLY,
        "fully set on " + kind + " at " + panel);
  }

  private static FreezeClock clock(
      MeltSubstance melt, double film, PanelKind kind, double panel, double transfer) {
    return OpenTime.clock(
        melt,
        film,
        85,
        Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(panel)),
        transfer,
        20,
        Resolution.USUAL);
  }

  @Test
  void film_panel_and_air_move_open_time_as_the_table_says() {
    OpenTime time =
        OpenTime.of(
            Film.of(
                MeltFigures.exactly(MeltFigures.TYPICAL.central()),
                3e-4,
                6e-4,
                TemperaturePoint.ofCelsius(85)),
            Panel.of(PanelKind.WOOD, 0.01, ROOM),
            Surroundings.stillRoom(ROOM));
    MeltSubstance melt = MeltFigures.TYPICAL.central();
    List<EstimateInput> inputs = time.inputs();

    moves(inputs.get(0), v -> clock(melt, v, PanelKind.WOOD, 20, 10).half(), 0, "film");
    moves(inputs.get(2), v -> clock(melt, 4e-4, PanelKind.WOOD, 20, v).half(), 0, "air");
    moves(
        inputs.get(1),
        v ->
            OpenTime.clock(
                    melt,
                    4e-4,
                    85,
                    Panel.of(PanelKind.WOOD, 0.01, ROOM).conducting(v),
                    10,
                    20,
                    Resolution.USUAL)
                .half(),
        0,
        "panel");
    assertThat(time.halfSet().lowSi()).isLessThan(time.halfSet().centralSi());
    assertThat(time.halfSet().highSi()).isGreaterThan(time.halfSet().centralSi());
  }

  static Stream<Integer> figures() {
    return Stream.iterate(0, i -> i < MELT.size(), i -> i + 1);
  }

  @ParameterizedTest
  @MethodSource("figures")
  void figures_of_the_melt_move_setting_time_as_the_table_says(int figure) {
    for (CakeSetting.Faces faces : CakeSetting.Faces.values()) {
      moves(
          MELT.get(figure),
          v -> CakeSetting.solidSeconds(melt(figure, v), 0.02, 80, 10, 20, faces),
          1e-3,
          "conduction, " + faces);
    }
    moves(
        MELT.get(figure),
        v -> Plank.seconds(melt(figure, v), Plank.Shape.SLAB, 0.04, 10, 20, 80),
        0,
        "Plank");
  }

  @Test
  void every_input_of_a_heat_demand_raises_it() {
    HeatDemand demand =
        HeatDemand.of(
                new Mixture(mix(BEESWAX, 9, IRON_OXIDE, 1), 1),
                ROOM,
                TemperaturePoint.ofCelsius(85),
                HeatAssumptions.NONE)
            .withVesselCapacity(400);

    assertThat(demand.inputs()).isNotEmpty().allMatch(i -> i.direction() == Direction.RAISES);
    double base = heat(2000, 2300, 180_000);
    assertThat(heat(2100, 2300, 180_000)).isGreaterThan(base);
    assertThat(heat(2000, 2400, 180_000)).isGreaterThan(base);
    assertThat(heat(2000, 2300, 190_000)).isGreaterThan(base);
    assertThat(demand.totalHeat().lowSi()).isLessThan(demand.totalHeat().highSi());
  }

  private static double heat(double solid, double liquid, double fusion) {
    return EnthalpyCurve.of(new MeltingHeat(solid, liquid, fusion, 50, 64))
        .joulesPerKilogram(ROOM, TemperaturePoint.ofCelsius(85));
  }

  @Test
  void inputs_of_a_stirring_interval_move_it_as_the_table_says() {
    StirringInterval interval = interval(1e-6, 5e-6, 5100, 5250, 820, 850, 0.010, 0.030);
    List<EstimateInput> inputs = interval.inputs();

    moves(inputs.get(0), v -> centralMinutes(v, 5175, 835, 0.02), 0, "size");
    moves(inputs.get(1), v -> centralMinutes(3e-6, v, 835, 0.02), 0, "density");
    moves(inputs.get(2), v -> centralMinutes(3e-6, 5175, v, 0.02), 0, "density of the melt");
    moves(inputs.get(3), v -> centralMinutes(3e-6, 5175, 835, v), 0, "viscosity");
    assertThat(interval.quiet().lowSi()).isLessThan(interval.quiet().centralSi());
    assertThat(interval.convecting().highSi()).isGreaterThan(interval.convecting().centralSi());
  }

  private static double centralMinutes(double size, double density, double melt, double viscosity) {
    return Settling.quietSeconds(
        0.1, 0.005, Settling.stokesVelocity(size, density - melt, viscosity));
  }

  private static StirringInterval interval(double... v) {
    return StirringInterval.of(
        IRON_OXIDE,
        new QuantityRange<>(QuantityKind.LENGTH, v[0], v[1]),
        VolumeFraction.of(0.02),
        TestMaterials.pot(v[4], v[5], v[6], v[7], 0.05, 0.005, TemperaturePoint.ofCelsius(80)),
        0.1);
  }
}
