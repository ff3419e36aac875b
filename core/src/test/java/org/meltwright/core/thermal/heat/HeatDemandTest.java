// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.CARNAUBA;
import static org.meltwright.core.thermal.TestMaterials.DAMAR;
import static org.meltwright.core.thermal.TestMaterials.UNKNOWN_WAX;
import static org.meltwright.core.thermal.TestMaterials.mix;

import java.util.Locale;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.Sourced;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

class HeatDemandTest {

  private static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);
  private static final TemperaturePoint HOT = TemperaturePoint.ofCelsius(85);
  private static final HeatDemand KILOGRAM =
      HeatDemand.of(new Mixture(Composition.of(BEESWAX), 1), ROOM, HOT, HeatAssumptions.NONE);

  private static HeatSupply ring(double watts) {
    return HeatSupply.constantPower(watts).withLoss(1.2, ROOM);
  }

  @Test
  void parts_add_up_to_the_total() {
    HeatDemand demand = KILOGRAM.withVesselCapacity(400);

    assertThat(
            demand.solidHeat().centralSi()
                + demand.fusionHeat().centralSi()
                + demand.meltHeat().centralSi()
                + demand.vesselHeat().centralSi())
        .isCloseTo(demand.totalHeat().centralSi(), within(1e-6));
    assertThat(demand.fusionHeat().lowSi()).isEqualTo(140_000);
    assertThat(demand.fusionHeat().highSi()).isEqualTo(203_200);
  }

  @Test
  void steel_pan_of_800_grams_takes_about_a_twelfth_of_a_kilogram_of_melt() {
    Vessel pan =
        new Vessel(
            "pan", VesselMaterial.STAINLESS_STEEL, Lining.NONE, Vessel.Bottom.FLAT, 0.002, 0.8);
    HeatDemand demand = KILOGRAM.withVessel(pan);

    assertThat(demand.vesselHeat().centralSi()).isCloseTo(25_480, within(1e-6));
    assertThat(demand.vesselHeat().centralSi() / KILOGRAM.totalHeat().centralSi())
        .isBetween(0.07, 0.09);
  }

  @Test
  void weak_ring_never_melts_it_and_says_why() {
    HeatUpTime time = KILOGRAM.centralTimeOn(ring(45));

    assertThat(time).isInstanceOf(HeatUpTime.NeverReached.class);
    HeatUpTime.NeverReached never = (HeatUpTime.NeverReached) time;
    assertThat(never.restingPoint().celsius()).isCloseTo(57.5, within(1e-9));
    assertThat(never.melts()).isFalse();
    assertThat(never.reason(Locale.ENGLISH)).contains("never melts").contains("57.5 °C");
    assertThat(never.reason(Locale.GERMAN)).contains("schmilzt nie").contains("57,5 °C");
    assertThat(time.seconds()).isInfinite();
  }

  @Test
  void plate_below_the_target_melts_it_but_never_gets_there() {
    HeatSupply plate = HeatSupply.thermostatPlate(TemperaturePoint.ofCelsius(80), 8);
    HeatUpTime.NeverReached never = (HeatUpTime.NeverReached) KILOGRAM.centralTimeOn(plate);

    assertThat(never.melts()).isTrue();
    assertThat(never.reason(Locale.ENGLISH)).contains("never reaches 85.0 °C");
  }

  @Test
  void plate_just_at_the_target_takes_without_end() {
    assertThat(KILOGRAM.centralTimeOn(HeatSupply.thermostatPlate(HOT, 8)).seconds()).isInfinite();
  }

  @Test
  void supply_known_between_two_ends_may_have_no_upper_end() {
    assertThat(KILOGRAM.timeOn(ring(60), ring(150), ring(200)).highSi()).isInfinite();
    assertThat(KILOGRAM.timeOn(ring(60), ring(150), ring(200)).lowSi()).isBetween(1000.0, 3000.0);
  }

  @Test
  void stages_are_warming_melting_and_superheating() {
    HeatUpTime.Reached time = (HeatUpTime.Reached) KILOGRAM.centralTimeOn(ring(150));

    assertThat(time.warmingSeconds()).isPositive();
    assertThat(time.meltingSeconds()).isGreaterThan(time.warmingSeconds());
    assertThat(time.superheatingSeconds()).isPositive();
  }

  @Test
  void missing_figures_are_problems_that_name_material_and_property() {
    assertThatThrownBy(
            () ->
                HeatDemand.of(
                    new Mixture(mix(CARNAUBA, 1, DAMAR, 1), 1), ROOM, HOT, HeatAssumptions.NONE))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems())
                    .extracting(Problem::found)
                    .containsExactlyInAnyOrder("carnauba", "damar"));
  }

  @Test
  void assumed_figures_are_listed() {
    HeatDemand demand =
        HeatDemand.of(
            new Mixture(mix(BEESWAX, 8, DAMAR, 1), 1), ROOM, HOT, HeatAssumptions.TYPICAL);

    assertThat(demand.assumed()).containsExactly("damar liquid-specific-heat");
  }

  /** Per kilogram and kelvin 2000 J for wax and 800 J for chalk; per kilogram 180 kJ to melt. */
  @Test
  void assumptionOfOnesOwn_takesThePlaceOfAFigureThatIsMissing() {
    HeatAssumptions own =
        HeatAssumptions.NONE
            .withOrganicSpecificHeat(exactly(QuantityKind.SPECIFIC_HEAT_CAPACITY, 2000))
            .withMineralSpecificHeat(exactly(QuantityKind.SPECIFIC_HEAT_CAPACITY, 800))
            .withHeatOfFusion(exactly(QuantityKind.SPECIFIC_ENERGY, 180_000));
    Material wax =
        Material.builder("wax")
            .figure(
                PropertyKey.MELTING_RANGE,
                Sourced.of(
                    PropertyKey.MELTING_RANGE.parse("60 to 64 °C, capillary-range"),
                    Source.USER,
                    Knowledge.READ))
            .build();
    Material chalk =
        Material.builder("chalk").family(MaterialFamily.FILLER, MaterialRole.FILLER).build();

    HeatDemand demand = HeatDemand.of(new Mixture(mix(wax, 3, chalk, 1), 1), ROOM, HOT, own);

    double kelvin = HOT.minus(ROOM).kelvin();
    assertThat(demand.totalHeat().centralSi())
        .isCloseTo(0.75 * (2000 * kelvin + 180_000) + 0.25 * 800 * kelvin, within(1e-6));
    assertThat(demand.sources()).containsExactly(Source.USER);
  }

  private static <Q extends Quantity<Q>> QuantityRange<Q> exactly(QuantityKind<Q> kind, double si) {
    return new QuantityRange<>(kind, si, si);
  }

  /** 30 to 50 % and 40 to 60 % have their middles at 40 and 50: four parts in nine and five. */
  @Test
  void constituents_whose_middles_make_no_whole_are_scaled_to_one() {
    Material paste =
        Material.builder("paste")
            .constituent(BEESWAX, share(0.3, 0.5))
            .constituent(CARNAUBA, share(0.4, 0.6))
            .build();
    HeatDemand whole =
        HeatDemand.of(new Mixture(Composition.of(paste), 1), ROOM, HOT, HeatAssumptions.TYPICAL);
    HeatDemand parts =
        HeatDemand.of(
            new Mixture(mix(BEESWAX, 4, CARNAUBA, 5), 1), ROOM, HOT, HeatAssumptions.TYPICAL);

    assertThat(whole.totalHeat().centralSi())
        .isCloseTo(parts.totalHeat().centralSi(), within(1e-6));
  }

  private static MassFractionRange share(double low, double high) {
    return new MassFractionRange(MassFraction.of(low), MassFraction.of(high));
  }

  @Test
  void what_was_assumed_has_a_source_too() {
    Mixture mixture = new Mixture(mix(BEESWAX, 8, DAMAR, 1), 1);
    Vessel pot =
        new Vessel("pot", VesselMaterial.STEEL, Lining.NONE, Vessel.Bottom.FLAT, 0.002, 0.6);
    HeatDemand demand = HeatDemand.of(mixture, ROOM, HOT, HeatAssumptions.TYPICAL).withVessel(pot);

    assertThat(demand.sources())
        .extracting(Source::id)
        .contains("organic-specific-heats", "vessel-specific-heats");
    assertThat(demand.explanation().sources()).isEqualTo(demand.sources());
    HeatAssumptions own =
        HeatAssumptions.NONE.withOrganicSpecificHeat(
            new QuantityRange<>(QuantityKind.SPECIFIC_HEAT_CAPACITY, 1800, 2000));
    assertThat(HeatDemand.of(mixture, ROOM, HOT, own).sources()).contains(Source.USER);
  }

  @Test
  void component_that_melts_without_a_range_is_never_guessed() {
    assertThatThrownBy(
            () ->
                HeatDemand.of(
                    new Mixture(Composition.of(UNKNOWN_WAX), 1),
                    ROOM,
                    HOT,
                    HeatAssumptions.TYPICAL))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("melting-range");
  }

  @Test
  void falling_temperatures_are_refused() {
    assertThatThrownBy(
            () ->
                HeatDemand.of(
                    new Mixture(Composition.of(BEESWAX), 1), HOT, ROOM, HeatAssumptions.NONE))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems().get(0).code())
                    .isEqualTo(ThermalProblem.TEMPERATURES_OUT_OF_ORDER));
  }

  @Test
  void energy_use_is_heat_over_efficiency_in_kilowatt_hours() {
    EnergyUse use = KILOGRAM.energyUse(0.4, 0.6);

    assertThat(use.centralKilowattHours())
        .isCloseTo(KILOGRAM.totalHeat().centralSi() / 0.5 / 3.6e6, within(1e-12));
    assertThat(use.lowKilowattHours()).isLessThan(use.centralKilowattHours());
    assertThat(use.highKilowattHours()).isGreaterThan(use.centralKilowattHours());
    EnergyUse holding = EnergyUse.ofHolding(1.2, HOT, ROOM, 7200, 0.4, 0.6);
    assertThat(holding.centralKilowattHours()).isCloseTo(0.312, within(1e-9));
    assertThat(use.plus(holding).centralKilowattHours())
        .isCloseTo(use.centralKilowattHours() + 0.312, within(1e-9));
  }

  @Test
  void explanation_names_parts_and_sources() {
    assertThat(KILOGRAM.explanation().text(Locale.ENGLISH))
        .contains("heat that melts (low): 140 kJ", "heat that melts (high): 203.2 kJ")
        .contains("heat of fusion (Beeswax) 140 to 203 kJ/kg")
        .contains("source:");
  }
}
