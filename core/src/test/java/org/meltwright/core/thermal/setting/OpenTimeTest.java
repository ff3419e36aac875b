// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.setting.FreezeClock.Resolution;
import org.meltwright.units.TemperaturePoint;

class OpenTimeTest {

  private static final MeltSubstance WAX =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 50, 64));
  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);

  private static FreezeClock clock(
      PanelKind kind, double millimetres, double panel, double melt, Resolution resolution) {
    return OpenTime.clock(
        WAX,
        millimetres / 1000,
        melt,
        Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(panel)),
        10,
        20,
        resolution);
  }

  /** Where melting begins and ends may overlap; the figures of one melt never do. */
  @Test
  void drivers_ofAMeltWhoseSolidusMayLieAboveItsLiquidus_areTold() {
    MeltFigures medium =
        MeltFigures.between(
            new MeltSubstance(0.2, 0.15, 900, new MeltingHeat(1900, 2100, 140_000, 45, 60)),
            new MeltSubstance(0.3, 0.2, 970, new MeltingHeat(2400, 2600, 210_000, 62, 65)));
    OpenTime time =
        OpenTime.of(
            Film.of(medium, 2e-4, 5e-4, TemperaturePoint.ofCelsius(75)),
            Panel.of(PanelKind.WOOD, 0.01, ROOM),
            Surroundings.stillRoom(ROOM));

    assertThat(time.halfSetDrivers().ranked()).hasSize(11);
    assertThat(time.halfSetDrivers().likely().high()).isLessThan(time.halfSet().highSi());
    assertThat(time.halfSetDrivers().measureFirst(Locale.ENGLISH))
        .contains(
            "Weigh one panel before and after ten layers: how thick a stroke is decides half of"
                + " this range.");
  }

  /** Values of an independent finite-volume run, printed to two figures. */
  @ParameterizedTest
  @CsvSource({
    "WOOD, 0.2, 20, 75, 3.5, 13",
    "WOOD, 0.2, 20, 90, 5.1, 16",
    "WOOD, 0.2, 40, 75, 10.7, 43",
    "WOOD, 0.2, 40, 90, 15, 51",
    "WOOD, 0.2, 55, 75, 39, 138",
    "WOOD, 0.2, 55, 90, 48, 151",
    "BOARD, 0.2, 20, 75, 1.7, 6.3",
    "BOARD, 0.2, 20, 90, 2.5, 7.9",
    "GLASS, 0.2, 20, 75, 0.33, 1.2",
    "GLASS, 0.2, 20, 90, 0.46, 1.4"
  })
  void set_times_agree_with_an_independent_run(
      PanelKind kind, double film, double panel, double melt, double half, double full) {
    FreezeClock clock = clock(kind, film, panel, melt, Resolution.USUAL);

    assertThat(clock.half()).isCloseTo(half, within(0.05 * half));
    assertThat(clock.full()).isCloseTo(full, within(0.05 * full));
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 20, 75, 18.5",
    "0.5, 20, 90, 26.7",
    "0.5, 40, 75, 46",
    "0.5, 40, 90, 62",
    "0.5, 55, 75, 111",
    "0.5, 55, 90, 136",
    "1.0, 20, 75, 61",
    "1.0, 20, 90, 85",
    "1.0, 40, 75, 126",
    "1.0, 40, 90, 166",
    "1.0, 55, 75, 239",
    "1.0, 55, 90, 295"
  })
  void half_set_of_thicker_films_agrees_with_an_independent_run(
      double film, double panel, double melt, double half) {
    assertThat(clock(PanelKind.WOOD, film, panel, melt, Resolution.USUAL).half())
        .isCloseTo(half, within(0.02 * half));
  }

  @ParameterizedTest
  @EnumSource(PanelKind.class)
  void usual_resolution_is_within_1_percent_of_the_converged_times(PanelKind kind) {
    for (double film : new double[] {0.2, 0.5, 1}) {
      FreezeClock usual = clock(kind, film, 20, 85, Resolution.USUAL);
      FreezeClock fine = clock(kind, film, 20, 85, new Resolution(320, 0.0025));

      assertThat(usual.half())
          .as("half, %s mm", film)
          .isCloseTo(fine.half(), within(0.01 * fine.half()));
      assertThat(usual.full())
          .as("full, %s mm", film)
          .isCloseTo(fine.full(), within(0.01 * fine.full()));
    }
  }

  @Test
  void warmed_panel_gives_more_time_than_a_hotter_melt() {
    Film film = Film.of(MeltFigures.exactly(WAX), 5e-4, 5e-4, TemperaturePoint.ofCelsius(75));
    OpenTimeTable table =
        OpenTimeTable.of(
            film,
            Panel.of(PanelKind.WOOD, 0.01, ROOM),
            Surroundings.stillRoom(ROOM),
            List.of(TemperaturePoint.ofCelsius(75), TemperaturePoint.ofCelsius(90)),
            List.of(ROOM, TemperaturePoint.ofCelsius(40), TemperaturePoint.ofCelsius(55)));

    double base = table.halfSet(0, 0).centralSi();
    assertThat(table.halfSet(1, 0).centralSi() / base).isBetween(1.2, 1.5);
    assertThat(table.halfSet(0, 1).centralSi() / base).isBetween(2.0, 3.0);
    assertThat(table.halfSet(0, 2).centralSi() / base).isBetween(3.5, 11.0);
    assertThat(table.rows().get(0).get(1).ratioTo(table.rows().get(0).get(0)))
        .hasValue(table.halfSet(0, 1).centralSi() / base);
  }

  @Test
  void ratioTo_filmThatNeverSets_isNone() {
    Film film = Film.of(MeltFigures.exactly(WAX), 5e-4, 5e-4, TemperaturePoint.ofCelsius(75));
    Panel cold = Panel.of(PanelKind.WOOD, 0.01, ROOM);
    OpenTime sets = OpenTime.of(film, cold, Surroundings.stillRoom(ROOM));
    TemperaturePoint hot = TemperaturePoint.ofCelsius(80);
    OpenTime never = OpenTime.of(film, cold.withTemperature(hot), Surroundings.stillRoom(hot));

    assertThat(never.halfSet().centralSi()).isInfinite();
    assertThat(never.ratioTo(sets)).isEmpty();
    assertThat(sets.ratioTo(never)).isEmpty();
    assertThat(never.ratioTo(never)).isEmpty();
  }

  @Test
  void thin_ground_counts_little_and_a_thick_one_decides() {
    Panel wood = Panel.of(PanelKind.WOOD, 0.01, ROOM);
    double bare = half(wood);
    double thin = half(wood.withGround(PanelKind.PLASTER_GROUND.substance(), 1e-4));
    double thick = half(wood.withGround(PanelKind.PLASTER_GROUND.substance(), 4e-3));
    double plaster = half(Panel.of(PanelKind.PLASTER_GROUND, 0.01, ROOM));

    assertThat(thin).isBetween(0.75 * bare, bare);
    assertThat(thick).isCloseTo(plaster, within(0.02 * plaster));
  }

  private static double half(Panel panel) {
    return OpenTime.clock(WAX, 2e-4, 85, panel, 10, 20, Resolution.USUAL).half();
  }

  @Test
  void film_on_a_plate_above_its_range_never_sets() {
    Panel hot =
        Panel.of(PanelKind.METAL, 0.01, TemperaturePoint.ofCelsius(80))
            .withBack(1000, TemperaturePoint.ofCelsius(80));
    OpenTime time =
        OpenTime.of(
            Film.of(MeltFigures.exactly(WAX), 5e-4, 5e-4, TemperaturePoint.ofCelsius(80)),
            hot,
            Surroundings.stillRoom(ROOM));

    assertThat(time.halfSet().centralSi()).isInfinite();
    assertThat(time.explanation().text(Locale.ENGLISH)).contains("without end");
  }

  @ParameterizedTest
  @CsvSource({"WOOD, true", "PLASTER_GROUND, true", "GLASS, true", "METAL, false"})
  void panel_that_would_have_to_be_hotter_than_the_cap_is_said_to_lie_above_it(
      PanelKind kind, boolean reachable) {
    NoFreezePanel panel =
        NoFreezePanel.of(
            new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63)),
            TemperaturePoint.ofCelsius(85),
            kind.substance(),
            TemperaturePoint.ofCelsius(55));

    assertThat(panel.temperature().isPresent()).isEqualTo(reachable);
    assertThat(panel.touchCaution(Locale.ENGLISH)).contains("burns");
    assertThat(panel.touchCaution(Locale.GERMAN)).contains("verbrennt");
    if (!reachable) {
      assertThat(panel.text(Locale.ENGLISH)).isEqualTo("above 55.0 °C");
      assertThat(panel.text(Locale.GERMAN)).isEqualTo("über 55,0 °C");
    }
  }

  @Test
  void no_panel_will_do_for_a_melt_that_freezes_by_itself() {
    NoFreezePanel panel =
        NoFreezePanel.of(
            new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63)),
            TemperaturePoint.ofCelsius(60),
            PanelKind.WOOD.substance(),
            TemperaturePoint.ofCelsius(55));

    assertThat(panel.temperature()).isEmpty();
    assertThat(panel.text(Locale.ENGLISH)).startsWith("none: ");
    assertThat(panel.text(Locale.GERMAN)).startsWith("keine: ");
  }

  @Test
  void crust_stops_growing_just_at_the_no_freeze_rule() {
    MeltSubstance sharp =
        new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));
    Substance plaster = PanelKind.PLASTER_GROUND.substance();
    double rule =
        NoFreezePanel.of(
                sharp, TemperaturePoint.ofCelsius(85), plaster, TemperaturePoint.ofCelsius(100))
            .ruleCelsius();

    assertThat(ExactFreezing.onPanel(sharp, 85, plaster, rule + 1e-6).lambda()).isZero();
    assertThat(ExactFreezing.onPanel(sharp, 85, plaster, rule - 1e-3).lambda())
        .isBetween(0.0, 1e-4);
    assertThat(ExactFreezing.onPanel(sharp, 85, plaster, rule - 1).lambda()).isGreaterThan(1e-3);
  }
}
