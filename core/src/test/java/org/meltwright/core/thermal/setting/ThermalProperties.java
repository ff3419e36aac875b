// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.thermal.TestMaterials.BEESWAX;
import static org.meltwright.core.thermal.TestMaterials.CARNAUBA;
import static org.meltwright.core.thermal.TestMaterials.DAMAR;
import static org.meltwright.core.thermal.TestMaterials.mix;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.meltwright.core.thermal.heat.EnthalpyCurve;
import org.meltwright.core.thermal.heat.HeatSupply;
import org.meltwright.core.thermal.heat.HeatUpTime;
import org.meltwright.core.thermal.heat.MeltingHeat;
import org.meltwright.core.thermal.heat.ReadingLog;
import org.meltwright.core.thermal.melting.IdealSolubility;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.core.thermal.setting.FreezeClock.Resolution;
import org.meltwright.core.thermal.settling.Settling;
import org.meltwright.core.thermal.settling.SuspensionViscosity;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

class ThermalProperties {

  private static final MeltSubstance RANGED =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 50, 64));
  private static final MeltSubstance SHARP =
      new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 63, 63));
  private static final double HAIR = 1 + 1e-9;

  private static FreezeClock clock(PanelKind kind, double film, double panel, double melt) {
    return OpenTime.clock(
        RANGED,
        film,
        melt,
        Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(panel)),
        10,
        20,
        Resolution.USUAL);
  }

  @Property(tries = 60)
  void moreSuperheatNeverShortensOpenTime(
      @ForAll PanelKind kind,
      @ForAll @DoubleRange(min = 65, max = 88) double melt,
      @ForAll @DoubleRange(min = 0, max = 10) double hotter,
      @ForAll @DoubleRange(min = 10, max = 45) double panel) {
    FreezeClock base = clock(kind, 3e-4, panel, melt);
    FreezeClock hot = clock(kind, 3e-4, panel, melt + hotter);

    assertThat(hot.half() * HAIR).as("%s + %s", melt, hotter).isGreaterThanOrEqualTo(base.half());
    assertThat(hot.full() * HAIR).as("%s + %s", melt, hotter).isGreaterThanOrEqualTo(base.full());
  }

  @Property(tries = 60)
  void thickerFilmNeverSetsSooner(
      @ForAll PanelKind kind,
      @ForAll @DoubleRange(min = 1e-4, max = 1e-3) @Scale(9) double film,
      @ForAll @DoubleRange(min = 1, max = 2) double times) {
    FreezeClock thin = clock(kind, film, 20, 80);
    FreezeClock thick = clock(kind, film * times, 20, 80);

    assertThat(thick.half() * (1 + 1e-3)).as("x %s", times).isGreaterThanOrEqualTo(thin.half());
    assertThat(thick.full() * (1 + 1e-3)).as("x %s", times).isGreaterThanOrEqualTo(thin.full());
  }

  @Property(tries = 60)
  void warmerPanelNeverSetsSooner(
      @ForAll PanelKind kind,
      @ForAll @DoubleRange(min = 5, max = 40) double panel,
      @ForAll @DoubleRange(min = 0, max = 15) double warmer) {
    assertThat(clock(kind, 3e-4, panel + warmer, 80).half() * HAIR)
        .as("%s + %s", panel, warmer)
        .isGreaterThanOrEqualTo(clock(kind, 3e-4, panel, 80).half());
  }

  @Property(tries = 40)
  void thickerCakeNeverSetsSoonerByEitherWay(
      @ForAll @DoubleRange(min = 0.005, max = 0.03) @Scale(9) double thickness,
      @ForAll @DoubleRange(min = 1, max = 2) double times,
      @ForAll CakeSetting.Faces faces) {
    double thin = CakeSetting.solidSeconds(RANGED, thickness, 80, 10, 20, faces);
    double thick = CakeSetting.solidSeconds(RANGED, thickness * times, 80, 10, 20, faces);

    assertThat(thick * (1 + 1e-3)).isGreaterThanOrEqualTo(thin);
    assertThat(Plank.seconds(RANGED, Plank.Shape.SLAB, thickness * times, 10, 20, 80))
        .isGreaterThanOrEqualTo(Plank.seconds(RANGED, Plank.Shape.SLAB, thickness, 10, 20, 80));
  }

  @Property(tries = 60)
  void energyBalancesWhateverTheSteps(
      @ForAll PanelKind kind,
      @ForAll @Size(min = 1, max = 20)
          List<@DoubleRange(min = 1e-4, max = 30) @Scale(9) Double> steps,
      @ForAll @DoubleRange(min = 50, max = 90) double melt,
      @ForAll @DoubleRange(min = 0, max = 100) double transfer) {
    Panel panel = Panel.of(kind, 0.01, TemperaturePoint.ofCelsius(20));
    FreezingColumn column =
        new FreezingColumn(ColumnGrid.of(4e-4, 20, panel), RANGED, 20, melt)
            .openAbove(transfer, 20)
            .openBelow(transfer, 15);
    double before = column.heat();
    steps.forEach(column::advance);

    assertThat(column.heat() - before)
        .as("steps %s", steps)
        .isCloseTo(column.heatIn(), within(1e-8 * 4e-4 * 900 * 180_000));
  }

  @Property
  void crustGrowsFasterWithAColderWallAndSlowerWithAHotterMelt(
      @ForAll @DoubleRange(min = -20, max = 55) double wall,
      @ForAll @DoubleRange(min = 0.1, max = 20) double more,
      @ForAll @DoubleRange(min = 63, max = 95) double melt) {
    double base = ExactFreezing.onWall(SHARP, melt, wall).lambda();

    assertThat(ExactFreezing.onWall(SHARP, melt, wall - more).lambda()).isGreaterThan(base);
    assertThat(ExactFreezing.onWall(SHARP, melt + more, wall).lambda()).isLessThan(base);
  }

  @Property
  void crustVanishesJustWhereTheNoFreezeRuleSays(
      @ForAll PanelKind kind, @ForAll @DoubleRange(min = 63.5, max = 95) double melt) {
    Substance body = kind.substance();
    double rule =
        NoFreezePanel.of(
                SHARP, TemperaturePoint.ofCelsius(melt), body, TemperaturePoint.ofCelsius(63))
            .ruleCelsius();

    assertThat(ExactFreezing.onPanel(SHARP, melt, body, rule + 1e-9).lambda()).isZero();
    assertThat(ExactFreezing.onPanel(SHARP, melt, body, rule - 1e-4).lambda())
        .as("%s on %s of %s °C", melt, kind, rule)
        .isBetween(0.0, 1e-3);
  }

  @Property
  void heatAndTemperatureAreEachOthersInverse(
      @ForAll @DoubleRange(min = -20, max = 200) double celsius,
      @ForAll @DoubleRange(min = 0, max = 30) double width) {
    EnthalpyCurve curve =
        EnthalpyCurve.of(
            List.of(
                new MeltingHeat(2000, 2400, 180_000, 40, 40 + width),
                new MeltingHeat(1900, 2200, 137_600, 80, 86),
                MeltingHeat.withoutMelting(650)),
            0.7,
            0.2,
            0.1);
    TemperaturePoint from = TemperaturePoint.ofCelsius(-30);
    double heat = curve.joulesPerKilogram(from, TemperaturePoint.ofCelsius(celsius));

    assertThat(curve.temperature(from, heat).celsius()).isCloseTo(celsius, within(1e-8));
    assertThat(curve.joulesPerKilogram(from, TemperaturePoint.ofCelsius(celsius + 1)))
        .isGreaterThan(heat);
    assertThat(
            curve.solidJoulesPerKilogram(from, TemperaturePoint.ofCelsius(celsius))
                + curve.fusionJoulesPerKilogram(from, TemperaturePoint.ofCelsius(celsius))
                + curve.meltJoulesPerKilogram(from, TemperaturePoint.ofCelsius(celsius)))
        .isCloseTo(heat, within(1e-6));
  }

  @Property
  void strongerSupplyNeverTakesLonger(
      @ForAll @DoubleRange(min = 10, max = 500) double watts,
      @ForAll @DoubleRange(min = 0, max = 200) double more,
      @ForAll @DoubleRange(min = 0, max = 3) double loss) {
    EnthalpyCurve curve = EnthalpyCurve.of(RANGED.heat());
    TemperaturePoint room = TemperaturePoint.ofCelsius(20);
    double weak = seconds(curve, HeatSupply.constantPower(watts).withLoss(loss, room));
    double strong = seconds(curve, HeatSupply.constantPower(watts + more).withLoss(loss, room));

    assertThat(strong).isLessThanOrEqualTo(weak * HAIR);
    assertThat(weak).isPositive();
  }

  private static double seconds(EnthalpyCurve curve, HeatSupply supply) {
    return HeatUpTime.of(
            curve, 1, 400, TemperaturePoint.ofCelsius(20), TemperaturePoint.ofCelsius(80), supply)
        .seconds();
  }

  @Property
  void noLossMakesTimeEnergyOverPower(
      @ForAll @DoubleRange(min = 21, max = 200) double to,
      @ForAll @DoubleRange(min = 1, max = 1000) double watts) {
    EnthalpyCurve curve = EnthalpyCurve.of(RANGED.heat());
    TemperaturePoint from = TemperaturePoint.ofCelsius(20);
    TemperaturePoint end = TemperaturePoint.ofCelsius(to);

    assertThat(HeatUpTime.of(curve, 2, 100, from, end, HeatSupply.constantPower(watts)).seconds())
        .isCloseTo(
            (2 * curve.joulesPerKilogram(from, end) + 100 * (to - 20)) / watts,
            within(1e-6 * 1e6 / watts));
  }

  @Property
  void largerPiecesAndThinnerMeltNeverSettleSlower(
      @ForAll @DoubleRange(min = 1e-7, max = 5e-5) @Scale(9) double diameter,
      @ForAll @DoubleRange(min = 1, max = 5) double times,
      @ForAll @DoubleRange(min = 0.002, max = 0.1) @Scale(9) double viscosity) {
    double base = Settling.stokesVelocity(diameter, 1500, viscosity);

    assertThat(Settling.stokesVelocity(diameter * times, 1500, viscosity))
        .isGreaterThanOrEqualTo(base);
    assertThat(Settling.stokesVelocity(diameter, 1500, viscosity / times))
        .isGreaterThanOrEqualTo(base);
    assertThat(Settling.terminalVelocity(diameter, 1500, 820, viscosity))
        .isLessThanOrEqualTo(base * HAIR);
  }

  @Property
  void crowdingSlowsSettlingAndThickensTheMelt(
      @ForAll @DoubleRange(min = 0, max = 0.5) double share,
      @ForAll @DoubleRange(min = 0, max = 0.1) double more) {
    VolumeFraction less = VolumeFraction.of(share);
    VolumeFraction crowded = VolumeFraction.of(share + more);
    VolumeFraction packing = VolumeFraction.of(0.64);

    assertThat(Settling.hindrance(crowded, Settling.HINDRANCE_EXPONENT))
        .isLessThanOrEqualTo(Settling.hindrance(less, Settling.HINDRANCE_EXPONENT));
    assertThat(SuspensionViscosity.concentrated(crowded, packing, 2.5))
        .isGreaterThanOrEqualTo(SuspensionViscosity.concentrated(less, packing, 2.5));
  }

  @Property
  void resinNeverLiftsALowerBound(@ForAll @DoubleRange(min = 0, max = 0.5) double share) {
    assertThat(low(mix(BEESWAX, 1 - share, DAMAR, share)))
        .as("share %s", share)
        .isLessThanOrEqualTo(72 + 1e-9);
  }

  @Property
  void moreOfAHardComponentNeverDropsItsOwnLiquidus(
      @ForAll @DoubleRange(min = 0.01, max = 0.9) double fraction,
      @ForAll @DoubleRange(min = 0, max = 0.1) double more) {
    assertThat(IdealSolubility.liquidusKelvin(fraction + more, 1e5, 357.15))
        .isBetween(IdealSolubility.liquidusKelvin(fraction, 1e5, 357.15), 357.15);
    assertThat(low(mix(BEESWAX, 1 - fraction, CARNAUBA, fraction))).isLessThanOrEqualTo(96);
  }

  private static double low(org.meltwright.core.mixture.Composition composition) {
    return WorkingWindow.of(
            composition,
            TemperaturePoint.ofCelsius(90),
            TemperatureDifference.ofKelvin(10),
            TemperatureDifference.ofKelvin(5))
        .lowerBound()
        .low()
        .celsius();
  }

  @Property
  void timesAboveAndBelowAThresholdAddUpToTheLog(
      @ForAll @Size(min = 2, max = 20) List<@DoubleRange(min = 20, max = 100) Double> readings,
      @ForAll @IntRange(min = 60, max = 4000) int apart,
      @ForAll @DoubleRange(min = 20.5, max = 99.5) double threshold) {
    List<ReadingLog.Reading> log = new ArrayList<>();
    List<ReadingLog.Reading> mirrored = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      double celsius = readings.get(i);
      log.add(new ReadingLog.Reading(i * (double) apart, TemperaturePoint.ofCelsius(celsius)));
      mirrored.add(
          new ReadingLog.Reading(
              i * (double) apart, TemperaturePoint.ofCelsius(2 * threshold - celsius)));
    }
    TemperaturePoint limit = TemperaturePoint.ofCelsius(threshold);
    ReadingLog.TimeAbove above = new ReadingLog(log).above(limit, 3600);
    ReadingLog.TimeAbove below = new ReadingLog(mirrored).above(limit, 3600);
    double length = apart * (readings.size() - 1.0);

    assertThat(above.unknownSeconds()).isEqualTo(apart > 3600 ? length : 0);
    assertThat(above.aboveSeconds() + below.aboveSeconds() + above.unknownSeconds())
        .isLessThanOrEqualTo(length * HAIR);
    assertThat(above.atMostHours()).isLessThanOrEqualTo(length / 3600 * HAIR);
  }
}
