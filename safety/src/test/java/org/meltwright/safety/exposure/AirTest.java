// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.meltwright.safety.exposure.Agent.Trait;
import org.meltwright.safety.exposure.CombinedExposure.Part;
import org.meltwright.safety.exposure.ExposureLimit.Averaging;
import org.meltwright.safety.exposure.ExposureLimit.Unit;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperaturePoint;

/** Air: published worked examples, each with its source and how it is known. */
class AirTest {

  private static final Agent TURPENTINE = Agent.vapour("turpentine", 136);
  private static final Agent ETHANOL = Agent.vapour("ethanol", 46.07);

  private static ExposureLimit limit(Agent agent, double ppm) {
    return new ExposureLimit(
        agent, ppm, Unit.PPM, Averaging.EIGHT_HOURS, "a made-up list", LocalDate.of(2026, 1, 1));
  }

  private static Part part(double exposure, double limit) {
    return new Part(limit(Agent.vapour("agent of " + limit, 100), limit), exposure);
  }

  /** 29 CFR 1910.1000(d)(1), example; read. */
  @Test
  void eight_hour_average_of_the_regulation() {
    assertThat(
            CombinedExposure.eightHourAverage(List.of(150.0, 75.0, 50.0), List.of(2.0, 2.0, 4.0)))
        .isEqualTo(81.25);
  }

  /** 29 CFR 1910.1000(d)(2), example; read. */
  @Test
  void additive_formula_of_the_regulation() {
    CombinedExposure sum =
        CombinedExposure.of(List.of(part(500, 1000), part(45, 200), part(40, 200)));
    assertThat(sum.sumOfShares()).isCloseTo(0.925, within(1e-12));
    assertThat(sum.isExceeded()).isFalse();
  }

  /** ACGIH manual, additive example (acetone, sec-butyl acetate, MEK); remembered, re-computed. */
  @Test
  void additive_formula_of_the_ventilation_manual() {
    CombinedExposure sum =
        CombinedExposure.of(List.of(part(400, 500), part(150, 200), part(100, 200)));
    assertThat(sum.sumOfShares()).isCloseTo(2.05, within(1e-12));
    assertThat(sum.isExceeded()).isTrue();
  }

  @Test
  void sum_of_exactly_one_is_not_above_one() {
    assertThat(CombinedExposure.of(List.of(part(50, 100), part(100, 200))).isExceeded()).isFalse();
  }

  /** Benzene and toluene in equal parts, partial pressures in mmHg; a published example, read. */
  @Test
  void limit_of_a_vapour_mixture() {
    assertThat(CombinedExposure.limitOfVapourMixture(List.of(47.22, 13.95), List.of(0.5, 20.0)))
        .isCloseTo(0.643, within(5e-4));
  }

  @Test
  void carcinogens_differing_times_and_nothing_are_not_added_up() {
    Part cancer = new Part(limit(new Agent("benzene", 78.11, Set.of(Trait.CARCINOGEN)), 0.5), 0.1);
    assertThatThrownBy(() -> CombinedExposure.of(List.of(cancer)))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("exposure.not-additive");
    ExposureLimit shortTerm =
        new ExposureLimit(
            TURPENTINE, 100, Unit.PPM, Averaging.SHORT_TERM, "a list", LocalDate.of(2026, 1, 1));
    assertThatThrownBy(() -> CombinedExposure.of(List.of(part(1, 10), new Part(shortTerm, 1))))
        .hasMessageContaining("exposure.limits-differ");
    assertThatThrownBy(() -> CombinedExposure.of(List.of()))
        .hasMessageContaining("exposure.nothing-given");
    assertThatThrownBy(() -> CombinedExposure.eightHourAverage(List.of(1.0), List.of(1.0, 2.0)))
        .hasMessageContaining("exposure.limits-differ");
  }

  @Test
  void averages_and_limits_of_impossible_numbers_are_refused() {
    assertThatThrownBy(() -> CombinedExposure.eightHourAverage(List.of(-1.0), List.of(2.0)))
        .hasMessageContaining("concentration");
    assertThatThrownBy(() -> CombinedExposure.eightHourAverage(List.of(1.0), List.of(25.0)))
        .hasMessageContaining("hours");
    assertThatThrownBy(() -> CombinedExposure.limitOfVapourMixture(List.of(1.0), List.of()))
        .hasMessageContaining("exposure.limits-differ");
    assertThatThrownBy(() -> CombinedExposure.limitOfVapourMixture(List.of(1.0), List.of(0.0)))
        .hasMessageContaining("exposure limit");
    assertThatThrownBy(() -> CombinedExposure.limitOfVapourMixture(List.of(0.0), List.of(5.0)))
        .hasMessageContaining("exposure.nothing-given");
  }

  @Test
  void amounts_below_nothing_or_no_numbers_are_refused_and_never_below_a_limit() {
    Flammability flammability = new Flammability(0.8);
    for (double wrong : new double[] {-3, Double.NaN, Double.POSITIVE_INFINITY}) {
      for (ThrowingCallable call :
          List.<ThrowingCallable>of(
              () -> TURPENTINE.milligramsPerCubicMetre(wrong),
              () -> TURPENTINE.partsPerMillion(wrong),
              () -> TURPENTINE.vapourLitres(wrong),
              () -> TURPENTINE.vapourLitres(wrong, TemperaturePoint.ofCelsius(20)),
              () -> limit(TURPENTINE, 100).shareAfterEvaporating(wrong, 3),
              () -> flammability.percentOfLowerLimit(wrong),
              () -> flammability.partsPerMillionAt(wrong),
              () -> RoomAir.flowFor(wrong, 6),
              () -> RoomAir.flowFor(60, wrong))) {
        assertThatThrownBy(call).isInstanceOf(ProblemException.class);
      }
    }
  }

  /**
   * MMWR 1994; 43 (RR-13), table S3-1, minutes to remove 90, 99 and 99.9 % at perfect mixing; read.
   * The table is rounded to whole minutes.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 138, 276, 414",
    "2, 69, 138, 207",
    "4, 35, 69, 104",
    "6, 23, 46, 69",
    "12, 12, 23, 35",
    "20, 7, 14, 21",
    "50, 3, 6, 8",
  })
  void time_to_a_share_of_the_start(double changes, double tenth, double hundredth, double last) {
    RoomAir air = RoomAir.ofAirChanges(100, changes, 1);
    assertThat(air.minutesToShareOfStart(0.1)).isCloseTo(tenth, within(1.0));
    assertThat(air.minutesToShareOfStart(0.01)).isCloseTo(hundredth, within(1.0));
    assertThat(air.minutesToShareOfStart(0.001)).isCloseTo(last, within(1.0));
    assertThat(air.shareOfStartAfter(air.minutesToShareOfStart(0.01)))
        .isCloseTo(0.01, within(1e-12));
  }

  /** A US design guide, p. 106: from 20 to 1.4 at a factor of 0.2 takes 13.3 air changes; read. */
  @Test
  void air_changes_of_the_design_guide() {
    RoomAir air = RoomAir.ofAirChanges(1, 120, 5);
    assertThat(air.minutesToShareOfStart(1.4 / 20)).isCloseTo(6.65, within(0.005));
    assertThat(air.minutesToShareOfStart(1.4 / 20) * 2).isCloseTo(13.3, within(0.05));
  }

  /** ACGIH manual, purge from 100 to 25 ppm with V ⁄ Q' of 50 min; remembered, re-computed. */
  @Test
  void purge_of_the_ventilation_manual() {
    assertThat(RoomAir.ofAirChanges(1, 60.0 / 50, 1).minutesToShareOfStart(0.25))
        .isCloseTo(69.3, within(0.05));
  }

  /** A US Air Force course: 20 by 14 by 12 ft are 3360 cubic feet; read. */
  @Test
  void volume_of_the_course_room_turns_into_flow() {
    assertThat(RoomAir.flowFor(20 * 14 * 12, 1)).isEqualTo(3360);
    assertThat(RoomAir.flowFor(180, 10)).isEqualTo(1800);
  }

  @Test
  void build_up_ends_at_generation_over_effective_flow() {
    RoomAir air = new RoomAir(100, 600, 3);
    assertThat(air.airChangesPerHour()).isEqualTo(6);
    assertThat(air.volumeFractionAfter(0.02, 1e6)).isCloseTo(0.02 * 3 / 600, within(1e-15));
    assertThat(air.volumeFractionAfter(0.02, 0)).isZero();
  }

  /** NIOSH Pocket Guide, conversions at 25 °C and one atmosphere; read. */
  @ParameterizedTest
  @CsvSource({
    "turpentine, 136, 100, 556, 0.5",
    "acrolein, 56.06, 1, 2.29, 0.005",
    "formaldehyde, 30.03, 1, 1.23, 0.005"
  })
  void parts_per_million_and_milligrams(
      String name, double molarMass, double ppm, double milligrams, double tolerance) {
    Agent agent = Agent.vapour(name, molarMass);
    assertThat(agent.milligramsPerCubicMetre(ppm)).isCloseTo(milligrams, within(tolerance));
    assertThat(agent.partsPerMillion(agent.milligramsPerCubicMetre(ppm)))
        .isCloseTo(ppm, within(1e-12));
  }

  /** NIOSH, immediately dangerous concentration of turpentine: 10 % of 0.8 %; read. */
  @Test
  void tenth_of_the_lower_flammable_limit() {
    Flammability turpentine = new Flammability(0.8);
    assertThat(turpentine.partsPerMillionAt(10)).isCloseTo(800, within(1e-9));
    assertThat(turpentine.percentOfLowerLimit(800)).isCloseTo(10, within(1e-12));
    assertThat(new Flammability(2.8).percentOfLowerLimit(28_000)).isCloseTo(100, within(1e-9));
  }

  /** One millilitre of turpentine, 0.86 g and 136 g/mol; own arithmetic. */
  @Test
  void millilitre_of_turpentine_evaporated() {
    assertThat(TURPENTINE.vapourLitres(0.86)).isCloseTo(0.1546, within(5e-5));
    assertThat(TURPENTINE.dilutingCubicMetres(0.86, 100)).isCloseTo(1.546, within(5e-4));
    assertThat(TURPENTINE.dilutingCubicMetres(0.86, 20)).isCloseTo(7.73, within(5e-3));
    assertThat(TURPENTINE.dilutingCubicMetres(0.86, 800)).isCloseTo(0.193, within(5e-4));
    assertThat(TURPENTINE.dilutingCubicMetres(0.86, 8000)).isCloseTo(0.0193, within(5e-5));
  }

  @Test
  void evaporated_turpentine_is_held_against_the_limit_that_the_user_entered() {
    assertThat(limit(TURPENTINE, 100).shareAfterEvaporating(0.86, 1.546))
        .isCloseTo(1, within(1e-3));
    assertThat(limit(TURPENTINE, 20).shareAfterEvaporating(8.6, 60)).isCloseTo(1.29, within(5e-3));
  }

  /** Five grams of water at 130 °C, ideal gas, 1.836 l/g; own arithmetic. */
  @Test
  void water_in_hot_wax_becomes_litres_of_steam() {
    Agent water = Agent.vapour("water", 18.015);
    assertThat(water.vapourLitres(1, TemperaturePoint.ofCelsius(130)))
        .isCloseTo(1.836, within(5e-4));
    assertThat(water.vapourLitres(5, TemperaturePoint.ofCelsius(130))).isCloseTo(9.2, within(0.05));
  }

  /** ACGIH manual, example 2.3 in cfm: 403 × 1.32 × 1.5 ⁄ 60 ⁄ 133.4, 350 ppm; remembered. */
  @Test
  void dilution_of_methyl_chloroform() {
    double generation = 403 * 1.32 * 1.5 / 60 / 133.4;
    assertThat(DilutionVentilation.flow(generation, 350e-6, 1)).isCloseTo(284.8, within(0.1));
    assertThat(DilutionVentilation.flow(generation, 350e-6, 5)).isCloseTo(1425, within(1.5));
  }

  /** ACGIH manual, example 2.4 in cfm: MEK and toluene, 2 pints an hour each, K 5; remembered. */
  @Test
  void dilution_of_two_vapours_adds_up() {
    double ketone = DilutionVentilation.flow(403 * 0.805 * 2 / 60 / 72.1, 200e-6, 5);
    double toluene = DilutionVentilation.flow(403 * 0.866 * 2 / 60 / 92.13, 50e-6, 5);
    assertThat(ketone).isCloseTo(3750, within(2.0));
    assertThat(toluene).isCloseTo(12_627, within(2.0));
    assertThat(ketone + toluene).isCloseTo(16_377, within(3.0));
  }

  @Test
  void dilution_in_metric_is_the_same_arithmetic() {
    DilutionVentilation dilution = new DilutionVentilation(limit(ETHANOL, 200), 86, 5);
    assertThat(dilution.flowCubicMetresPerHour()).isCloseTo(1141, within(0.5));
    assertThat(dilution.explanation().text(Locale.ENGLISH))
        .contains("a made-up list", "2026-01-01", "source: ");
  }

  /**
   * A pound-mole of gas is 387 cubic feet at 70 °F and one atmosphere, ACGIH manual; remembered,
   * re-computed from 359 at 32 °F. A pound is 453.59237 g, a cubic foot 28.316847 l, exactly.
   */
  @Test
  void dilution_at_the_temperature_of_the_room() {
    double poundMole = 453.59237 * 46.07;
    double cubicFeet =
        ETHANOL.vapourLitres(poundMole, TemperaturePoint.ofFahrenheit(70)) / 28.316847;
    assertThat(cubicFeet).isCloseTo(387, within(0.5));
    DilutionVentilation dilution = new DilutionVentilation(limit(ETHANOL, 1e6 / 2), poundMole, 1);
    assertThat(dilution.flowCubicMetresPerHour(TemperaturePoint.ofFahrenheit(70)))
        .isCloseTo(2 * 387 * 28.316847e-3, within(0.05));
  }

  /** EH40 of the British executive turns ppm into mg/m³ at 20 °C by 24.05526 l/mol; remembered. */
  @Test
  void vapour_at_twenty_degrees_is_that_of_the_british_list() {
    assertThat(ETHANOL.vapourLitres(46.07, TemperaturePoint.ofCelsius(20)))
        .isCloseTo(24.05526, within(5e-4));
  }

  @Test
  void limit_of_mass_asks_the_same_flow_at_any_temperature() {
    ExposureLimit mass =
        new ExposureLimit(
            ETHANOL,
            380,
            Unit.MILLIGRAMS_PER_CUBIC_METRE,
            Averaging.EIGHT_HOURS,
            "a made-up list",
            LocalDate.of(2026, 1, 1));
    DilutionVentilation dilution = new DilutionVentilation(mass, 38, 2);
    assertThat(dilution.flowCubicMetresPerHour(TemperaturePoint.ofCelsius(10)))
        .isCloseTo(200, within(1e-9))
        .isEqualTo(dilution.flowCubicMetresPerHour());
    assertThatThrownBy(() -> dilution.flowCubicMetresPerHour(TemperaturePoint.ofCelsius(90)))
        .hasMessageContaining("temperature of the room");
  }

  /**
   * Turpentine makes allergic, and some lists limit it to 20 ppm: refused for the one and the
   * other.
   */
  @Test
  void dilution_of_turpentine_is_refused_whatever_list_is_taken() {
    Agent sensitiser = new Agent("turpentine", 136, Set.of(Trait.SENSITISER));
    assertThatThrownBy(() -> new DilutionVentilation(limit(sensitiser, 100), 10, 5))
        .hasMessageContaining("SENSITISER");
    assertThatThrownBy(() -> new DilutionVentilation(limit(TURPENTINE, 20), 10, 5))
        .hasMessageContaining("20 ppm");
  }

  /**
   * ACGIH manual, build-up of methyl chloroform: 20.3 min to 200 ppm, 419 ppm after an hour;
   * remembered, re-computed.
   */
  @Test
  void build_up_of_the_ventilation_manual() {
    double foot = 0.028316846592;
    RoomAir air = new RoomAir(100_000 * foot, 2000 * 60 * foot, 1);
    double vapour = 1.2 * 60 * foot;
    assertThat(air.minutesToVolumeFraction(vapour, 200e-6).orElseThrow())
        .isCloseTo(20.3, within(0.05));
    assertThat(air.volumeFractionAfter(vapour, 60)).isCloseTo(419e-6, within(0.5e-6));
  }

  @Test
  void concentration_above_what_the_air_carries_off_is_never_reached() {
    RoomAir air = new RoomAir(100, 600, 3);
    double steady = 0.02 * 3 / 600;
    assertThat(air.minutesToVolumeFraction(0.02, steady)).isEmpty();
    assertThat(air.minutesToVolumeFraction(0, 1e-6)).isEmpty();
    double minutes = air.minutesToVolumeFraction(0.02, steady / 2).orElseThrow();
    assertThat(air.volumeFractionAfter(0.02, minutes)).isCloseTo(steady / 2, within(1e-15));
  }

  @Test
  void dilution_is_refused_below_100_ppm() {
    assertThatThrownBy(() -> new DilutionVentilation(limit(TURPENTINE, 99), 10, 5))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems().get(0).remedy(Locale.ENGLISH))
                    .contains("local exhaust", "occupational hygienist"));
    assertThat(new DilutionVentilation(limit(TURPENTINE, 100), 0, 1).flowCubicMetresPerHour())
        .isZero();
  }

  @ParameterizedTest
  @EnumSource(Trait.class)
  void dilution_is_refused_for(Trait trait) {
    Agent agent = new Agent("agent", 100, Set.of(trait));
    assertThatThrownBy(() -> new DilutionVentilation(limit(agent, 500), 10, 5))
        .hasMessageContaining("exposure.not-for-dilution");
  }

  /** OSHA limit for cadmium and the share of cadmium in its sulphide; own arithmetic. */
  @Test
  void dust_of_a_compound_that_holds_the_limit_of_a_metal() {
    ExposureLimit cadmium =
        new ExposureLimit(
            new Agent("cadmium", 112.41, Set.of(Trait.CARCINOGEN, Trait.DUST)),
            0.005,
            Unit.MILLIGRAMS_PER_CUBIC_METRE,
            Averaging.EIGHT_HOURS,
            "OSHA",
            LocalDate.of(2026, 1, 1));
    assertThat(cadmium.dustMilligramsPerCubicMetre(0.7781)).isCloseTo(0.00643, within(5e-6));
    assertThat(cadmium.milligramsPerCubicMetre()).isEqualTo(0.005);
    assertThat(limit(TURPENTINE, 100).milligramsPerCubicMetre()).isCloseTo(556, within(0.5));
  }

  @Test
  void limit_needs_the_place_where_it_holds() {
    assertThatThrownBy(
            () ->
                new ExposureLimit(
                    TURPENTINE, 20, Unit.PPM, Averaging.EIGHT_HOURS, " ", LocalDate.EPOCH))
        .hasMessageContaining("exposure.limit-without-jurisdiction");
  }
}
