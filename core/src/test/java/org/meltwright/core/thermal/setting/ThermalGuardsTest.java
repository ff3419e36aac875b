// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.thermal.TestMaterials;
import org.meltwright.core.thermal.heat.EnthalpyCurve;
import org.meltwright.core.thermal.heat.HeatSupply;
import org.meltwright.core.thermal.heat.HeatUpTime;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.melting.IdealSolubility;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.core.thermal.settling.StirringInterval;
import org.meltwright.core.thermal.settling.ViscosityCurve;
import org.meltwright.units.Estimate;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;
import org.meltwright.units.VolumeFraction;

/** What is refused, and what the ends of the valid ranges give. */
class ThermalGuardsTest {

  private static final MeltSubstance WAX =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));
  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);
  private static final TemperaturePoint HUGE = TemperaturePoint.ofCelsius(1e308);
  private static final MeltFigures EXACT = MeltFigures.exactly(WAX);
  private static final double NAN = Double.NaN;
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private static TemperaturePoint degrees(double celsius) {
    return TemperaturePoint.ofCelsius(celsius);
  }

  static Stream<ThrowingCallable> refused() {
    return Stream.of(
        () -> ExactFreezing.onWall(WAX, INFINITE, 20),
        () -> ExactFreezing.onWall(WAX, 85, -INFINITE),
        () -> ExactFreezing.onWall(WAX, NAN, 20),
        () -> ExactFreezing.onPanel(WAX, 85, WAX.solid(), -300),
        () -> new ExactFreezing(NAN, 20, 1e-7),
        () -> Plank.seconds(WAX, Plank.Shape.SLAB, 0.02, 10, -INFINITE),
        () -> Plank.seconds(WAX, Plank.Shape.SLAB, 0.02, 10, 20, INFINITE),
        () -> Plank.Shape.SLAB.volumeOverArea(NAN),
        () -> Settling.quietSeconds(0.1, 0.005, NAN),
        () -> Settling.convectingSeconds(0.1, 0.05, NAN),
        () -> Settling.quietLoss(new double[] {1}, new double[] {NAN}, 0.005, 60),
        () -> Settling.quietLoss(new double[] {0.9, 0.9}, new double[] {1, 1}, 0.005, 60),
        () -> Settling.peclet(1e-6, NAN, 0.05, 0.012, ROOM),
        () -> Settling.peclet(1e-6, 1e-7, 0.05, 0.012, TemperaturePoint.ofKelvin(0)),
        () -> Settling.terminalVelocity(0.01, 4000, 1000, 1e-3),
        () -> ViscosityCurve.of(1000, 0, 0, ROOM).pascalSeconds(ROOM),
        () -> ViscosityCurve.of(0, -1, 0, ROOM),
        () -> ViscosityCurve.through(degrees(70), 0.012, degrees(90), 0.020, ROOM),
        () -> ViscosityCurve.through(degrees(90), 0.020, degrees(70), 0.012, ROOM),
        () -> EnthalpyCurve.of(List.of(WAX.heat(), WAX.heat()), 0.5, 0.4),
        () -> EnthalpyCurve.of(List.of(WAX.heat(), WAX.heat()), 0.5, 0.6),
        () -> EnthalpyCurve.of(List.of(WAX.heat(), WAX.heat()), 1),
        () -> Settling.quietLoss(new double[] {1}, new double[] {1, 1}, 0.005, 60),
        () -> HeatSupply.thermostatPlate(HUGE, 8),
        () -> HeatSupply.constantPower(100).withLoss(1, HUGE),
        () -> Film.of(EXACT, 1e-4, 1e-3, HUGE),
        () -> Panel.of(PanelKind.WOOD, 0.01, HUGE),
        () -> Surroundings.stillRoom(HUGE),
        () -> cake(MeltFigures.TYPICAL, 0.02, 1e308, 10),
        () -> IdealSolubility.eutecticKelvin(1, 350, 1, 350),
        () -> TestMaterials.pot(820, 1e6, 0.01, 0.01, 0.05, 0.005, ROOM),
        () -> TestMaterials.pot(820, 820, 0.01, 0.01, 0.05, 0.005, HUGE),
        () -> stirring(0),
        () -> stirring(2),
        () -> window(-1, 5),
        () -> window(10, -1),
        () -> window(500, 5));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void impossible_figure_is_refused(ThrowingCallable call) {
    assertThatThrownBy(call).isInstanceOf(ProblemException.class);
  }

  /** The middle of the typical range may lie at 60.5 °C: 59 °C is no melt for certain. */
  @Test
  void cake_poured_below_a_melting_point_that_may_be_is_refused_at_once() {
    assertThatThrownBy(() -> cake(MeltFigures.TYPICAL, 0.02, 59, 10))
        .isInstanceOf(ProblemException.class);
  }

  @Test
  void thick_cake_sets_late_but_sets() {
    Estimate<?> time = cake(EXACT, 1, 85, 10).byConduction();

    assertThat(time.centralSi()).isBetween(7e6, 3e7);
  }

  @ParameterizedTest
  @CsvSource({"20", "55", "62", "64", "70", "90"})
  void open_time_is_in_order_whatever_the_panel(double panel) {
    for (PanelKind kind : PanelKind.values()) {
      OpenTime time =
          OpenTime.of(
              Film.of(EXACT, 3e-4, 3e-4, TemperaturePoint.ofCelsius(75)),
              Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(panel)),
              new Surroundings(ROOM, 10, 10));

      assertThat(time.halfSet().lowSi())
          .as("%s", kind)
          .isLessThanOrEqualTo(time.halfSet().highSi());
      assertThat(time.fullySet().lowSi())
          .as("%s", kind)
          .isLessThanOrEqualTo(time.fullySet().highSi());
    }
  }

  @Test
  void panel_above_the_melting_point_conducts_later_not_sooner() {
    OpenTime time =
        OpenTime.of(
            Film.of(EXACT, 3e-4, 3e-4, TemperaturePoint.ofCelsius(75)),
            Panel.of(PanelKind.WOOD, 0.01, TemperaturePoint.ofCelsius(70)),
            new Surroundings(ROOM, 10, 10));

    assertThat(time.inputs().get(1).direction()).isEqualTo(EstimateInput.Direction.RAISES);
    assertThat(time.halfSet().lowSi()).isLessThan(time.halfSet().centralSi());
    assertThat(time.halfSet().highSi()).isGreaterThan(time.halfSet().centralSi());
  }

  @Test
  void pot_that_cools_names_where_it_comes_to_rest() {
    HeatUpTime.NeverReached never =
        (HeatUpTime.NeverReached)
            HeatUpTime.of(
                EnthalpyCurve.of(WAX.heat()),
                1,
                0,
                TemperaturePoint.ofCelsius(80),
                TemperaturePoint.ofCelsius(90),
                HeatSupply.constantPower(45).withLoss(1.2, ROOM));

    assertThat(never.restingPoint().celsius()).isEqualTo(57.5);
    assertThat(never.melts()).isFalse();
  }

  @Test
  void what_has_nothing_to_melt_is_not_said_never_to_melt() {
    HeatUpTime.NeverReached never =
        (HeatUpTime.NeverReached)
            HeatUpTime.of(
                EnthalpyCurve.of(MeltingHeat.withoutMelting(2000)),
                1,
                0,
                ROOM,
                TemperaturePoint.ofCelsius(90),
                HeatSupply.constantPower(45).withLoss(1.2, ROOM));

    assertThat(never.reason(Locale.ENGLISH))
        .startsWith("It never reaches 90.0 °C")
        .contains("57.5");
  }

  @Test
  void advice_on_a_measured_window_has_no_hole() {
    WorkingWindow window = window(10, 5);

    assertThat(window.state()).isEqualTo(WorkingWindow.State.MAY_BE_CLOSED);
    assertThat(window.advice(Locale.ENGLISH)).contains("the highest-melting component");
    assertThat(window.advice(Locale.GERMAN)).contains("den höchstschmelzenden Bestandteil");
  }

  /** Air, panel and what is below at and around the melting range: an answer, and soon. */
  @Test
  void open_time_has_an_answer_around_the_melting_range() {
    MeltSubstance ranged =
        new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 50, 64));
    for (MeltSubstance melt : List.of(WAX, ranged)) {
      for (double air : new double[] {-20, 49.9, 50, 62.9, 63, 63.1, 64, 90}) {
        for (double panel : new double[] {-20, 50, 63, 64, 90}) {
          for (double film : new double[] {1e-6, 3e-4, 0.1}) {
            FreezeClock clock = clock(melt, film, panel, air);
            assertThat(clock.half()).as("%s %s %s", air, panel, film).isNotNaN().isNotNegative();
            assertThat(clock.full()).isGreaterThanOrEqualTo(clock.half());
            if (air < melt.heat().solidusCelsius()) {
              assertThat(clock.full()).as("%s %s %s", air, panel, film).isFinite();
            } else if (Math.min(air, panel) >= melt.heat().liquidusCelsius()) {
              assertThat(clock.full()).as("%s %s %s", air, panel, film).isInfinite();
            }
          }
        }
      }
    }
  }

  private static FreezeClock clock(MeltSubstance melt, double film, double panel, double air) {
    return OpenTime.clock(
        melt,
        film,
        75,
        Panel.of(PanelKind.METAL, 0.002, TemperaturePoint.ofCelsius(panel)).withSpread(0),
        10,
        air,
        FreezeClock.Resolution.USUAL);
  }

  @Test
  void pieces_beyond_the_law_of_stokes_carry_a_warning() {
    assertThat(stirring(1e-3).explanation().text(Locale.ENGLISH)).contains("leave Stokes's law");
    assertThat(stirring(1e-6).explanation().text(Locale.ENGLISH))
        .doesNotContain("leave Stokes's law");
  }

  private static StirringInterval stirring(double metres) {
    return StirringInterval.of(
        TestMaterials.IRON_OXIDE,
        new QuantityRange<>(QuantityKind.LENGTH, metres, metres),
        VolumeFraction.of(0.01),
        TestMaterials.pot(820, 820, 0.01, 0.01, 0.05, 0.005, ROOM),
        0.1);
  }

  private static WorkingWindow window(double margin, double leastWidth) {
    return WorkingWindow.ofMeasured(
        new TemperatureRange(TemperaturePoint.ofCelsius(70), TemperaturePoint.ofCelsius(79)),
        TemperaturePoint.ofCelsius(90),
        TemperatureDifference.ofKelvin(margin),
        TemperatureDifference.ofKelvin(leastWidth));
  }

  private static CakeSetting cake(
      MeltFigures melt, double thickness, double pour, double transfer) {
    return CakeSetting.of(
        melt,
        new QuantityRange<>(QuantityKind.LENGTH, thickness, thickness),
        TemperaturePoint.ofCelsius(pour),
        new Surroundings(ROOM, transfer, transfer),
        CakeSetting.Faces.TOP);
  }
}
