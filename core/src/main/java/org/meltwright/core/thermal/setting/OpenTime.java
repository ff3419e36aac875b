// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.Drivers.Values;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.core.thermal.setting.FreezeClock.Resolution;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;

/**
 * How long a film of melt stays workable on a panel, as an estimate.
 *
 * <p><em>Half set</em> is when half of the film, on average, is solid: a threshold at which a tool
 * drags (assumed). <em>Fully set</em> is when 99 % is. Both come from one-dimensional conduction
 * with freezing through panel, film and air.
 *
 * <p>Even with all inputs known, seconds are good to a factor of about two either way; ratios of
 * two set-ups to 20–30 %. Cooling on the tool before contact is not in it.
 *
 * <p>Half a millimetre at 75 °C on wood, cold and warmed to 40 °C: the ratio is the figure to
 * trust.
 *
 * <pre>{@code
 * MeltSubstance wax =
 *     new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 50, 64));
 * Film film = Film.of(MeltFigures.exactly(wax), 5e-4, 5e-4, ofCelsius(75));
 * Panel cold = Panel.of(PanelKind.WOOD, 0.010, ofCelsius(20));
 * Surroundings room = Surroundings.stillRoom(ofCelsius(20));
 * OpenTime onCold = OpenTime.of(film, cold, room);
 * onCold.halfSet().centralSi(); // 18.5 s
 * OpenTime onWarm = OpenTime.of(film, cold.withTemperature(ofCelsius(40)), room);
 * onWarm.ratioTo(onCold).getAsDouble(); // 2.5
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class OpenTime {

  private static final Symbol HALF_SET = symbol("time until half set", "s");
  private static final Symbol FULLY_SET = symbol("time until fully set", "s");
  private static final Symbol THICKNESS = symbol("thickness of the film", "m");
  private static final Symbol PANEL = symbol("conductivity of the panel, relative", "");

  private final Film film;
  private final Panel panel;
  private final Surroundings surroundings;
  private final EstimateInput thickness;
  private final EstimateInput conduction;
  private final FreezeClock low;
  private final FreezeClock central;
  private final FreezeClock high;

  /**
   * Returns the open time of a film on a panel.
   *
   * @param film the film
   * @param panel the panel
   * @param surroundings the air above
   * @return the open time
   */
  public static OpenTime of(Film film, Panel panel, Surroundings surroundings) {
    return new OpenTime(film, panel, surroundings);
  }

  private OpenTime(Film film, Panel panel, Surroundings surroundings) {
    this.film = film;
    this.panel = panel;
    this.surroundings = surroundings;
    this.thickness =
        EstimateInput.of(
            THICKNESS, film.thickness().lowSi(), film.thickness().highSi(), Direction.RAISES);
    this.conduction =
        EstimateInput.of(
            PANEL,
            1 - panel.spread(),
            1 + panel.spread(),
            feeds(film, panel) ? Direction.RAISES : Direction.LOWERS);
    this.low = clock(EstimateInput::forLow);
    this.central = clock(EstimateInput::central);
    this.high = clock(EstimateInput::forHigh);
  }

  /** A panel at or above the middle of the melting range keeps the film warm: no longer a sink. */
  private static boolean feeds(Film film, Panel panel) {
    return panel.temperature().celsius() >= film.melt().central().meltingCelsius();
  }

  private FreezeClock clock(Values values) {
    return clock(
        film.melt().at(values),
        values.of(thickness),
        film.temperature().celsius(),
        panel.conducting(values.of(conduction)),
        values.of(surroundings.transfer()),
        surroundings.air().celsius(),
        Resolution.USUAL);
  }

  static FreezeClock clock(
      MeltSubstance melt,
      double thickness,
      double meltCelsius,
      Panel panel,
      double transfer,
      double airCelsius,
      Resolution resolution) {
    FreezingColumn column =
        new FreezingColumn(
                ColumnGrid.of(thickness, resolution.cells(), panel),
                melt,
                panel.temperature().celsius(),
                meltCelsius)
            .openAbove(transfer, airCelsius);
    panel
        .back()
        .ifPresent(
            b ->
                column.openBelow(b.transferWattsPerSquareMetreKelvin(), b.temperature().celsius()));
    return FreezeClock.run(column, resolution.firstStep(thickness), resolution.growth());
  }

  /**
   * Returns the time until the film is half set.
   *
   * @return the time; infinite at an end where it never sets
   */
  public Estimate<Time> halfSet() {
    return estimate(low.half(), central.half(), high.half());
  }

  /**
   * Returns the time until the film is fully set.
   *
   * @return the time; infinite at an end where it never sets
   */
  public Estimate<Time> fullySet() {
    return estimate(low.full(), central.full(), high.full());
  }

  /**
   * Returns what the time until the film is half set hangs on.
   *
   * @return the drivers: film, panel, air and the figures of the melt
   */
  public Drivers halfSetDrivers() {
    return Drivers.of(HALF_SET, inputs(), values -> clock(values).half());
  }

  /**
   * Returns what the time until the film is fully set hangs on.
   *
   * @return the drivers: film, panel, air and the figures of the melt
   */
  public Drivers fullySetDrivers() {
    return Drivers.of(FULLY_SET, inputs(), values -> clock(values).full());
  }

  private static Symbol symbol(String name, String unit) {
    return Symbol.beside(ThermalProblem.class, name, unit);
  }

  /** Near the turning point of an input its ends may change places by a little. */
  private static Estimate<Time> estimate(double low, double central, double high) {
    return new Estimate<>(
        QuantityKind.TIME,
        Math.min(central, Math.min(low, high)),
        central,
        Math.max(central, Math.max(low, high)));
  }

  /**
   * Returns how many times longer this film stays workable than another: the figure to trust more
   * than the seconds.
   *
   * @param other the open time to compare with
   * @return the ratio of the central half-set times; empty if one of the two never sets
   */
  public OptionalDouble ratioTo(OpenTime other) {
    double ratio = central.half() / other.central.half();
    return ratio > 0 && Double.isFinite(ratio) ? OptionalDouble.of(ratio) : OptionalDouble.empty();
  }

  /** {@return the film} */
  public Film film() {
    return film;
  }

  /** {@return the panel} */
  public Panel panel() {
    return panel;
  }

  /**
   * Returns the named inputs with their ranges and directions.
   *
   * @return thickness, panel, air, and the figures of the melt
   */
  public List<EstimateInput> inputs() {
    List<EstimateInput> inputs =
        new ArrayList<>(List.of(thickness, conduction, surroundings.transfer()));
    inputs.addAll(film.melt().inputs());
    return List.copyOf(inputs);
  }

  /**
   * Explains the open time.
   *
   * @return inputs, both times, and what was assumed
   */
  public Explanation explanation() {
    Explanation.Builder text =
        SettingWorking.builder("working.open-time")
            .stated(SettingWorking.LAID, film.temperature().celsius())
            .stated(SettingWorking.PANEL, panel.temperature().celsius())
            .stated(SettingWorking.AIR, surroundings.air().celsius())
            .inputs(inputs())
            .method(SettingWorking.freezing(halfSet(), fullySet()))
            .caution("working.open-time.model")
            .caution("working.open-time.drags")
            .caution("working.open-time.left-out");
    return SettingWorking.finish(text, film.melt(), fullySet());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof OpenTime that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(film, panel, surroundings);
  }

  @Override
  public String toString() {
    return "open time of " + film + " on " + panel;
  }
}
