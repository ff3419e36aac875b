// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
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
import org.meltwright.units.QuantityRange;
import org.meltwright.units.TemperaturePoint;

/**
 * How long a cast cake takes until it is solid throughout and can leave its mould, as an estimate:
 * by Plank's formula and by one-dimensional conduction with freezing.
 *
 * <p>The cake is a slab; a narrow one that cools at its rim too sets sooner. Solid means 99 %
 * solid. Plank's formula takes the middle of the melting range as one melting point and ends some
 * per cent early: it is the check, the conduction the answer.
 *
 * <p>A cake of 25 mm poured at 75 °C into a thin metal mould on a grid:
 *
 * <pre>{@code
 * CakeSetting cake =
 *     CakeSetting.of(
 *         MeltFigures.TYPICAL,
 *         new QuantityRange<>(QuantityKind.LENGTH, 0.024, 0.026),
 *         ofCelsius(75),
 *         Surroundings.stillRoom(ofCelsius(20)),
 *         CakeSetting.Faces.BOTH);
 * cake.byConduction().centralSi() / 60; // 147 minutes
 * cake.byPlank().centralSi() / 60; // 138 minutes
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class CakeSetting {

  /** Which faces of a cake take part. */
  public enum Faces {
    /** The open top only: the mould insulates, or stands on something that does. */
    TOP,
    /** Top and bottom alike: a thin metal mould on a grid. */
    BOTH
  }

  private static final Resolution RESOLUTION = new Resolution(60, 0.02);

  private static final Symbol THICKNESS =
      Symbol.beside(ThermalProblem.class, "thickness of the cake", "m");
  private static final Symbol SOLID =
      Symbol.beside(ThermalProblem.class, "time until the cake is solid", "s");

  private final MeltFigures melt;
  private final EstimateInput thickness;
  private final EstimateInput transfer;
  private final TemperaturePoint pour;
  private final TemperaturePoint air;
  private final Faces faces;
  private final Estimate<Time> plank;
  private final Estimate<Time> conduction;

  /**
   * Returns the setting time of a cake.
   *
   * @param melt the figures of the melt
   * @param thickness the thickness of the cake, as a range
   * @param pour the temperature it is poured at
   * @param surroundings the air around
   * @param faces which faces take part
   * @return the setting time
   * @throws org.meltwright.units.ProblemException if the thickness cannot be, or pouring, melting
   *     and air temperature are out of order
   */
  public static CakeSetting of(
      MeltFigures melt,
      QuantityRange<Length> thickness,
      TemperaturePoint pour,
      Surroundings surroundings,
      Faces faces) {
    CHECK.between(pour.celsius(), -100, 1000, "temperature of pouring in °C");
    CHECK.between(thickness.lowSi(), 1e-4, 1, "thickness of the cake in m");
    CHECK.between(thickness.highSi(), 1e-4, 1, "thickness of the cake in m");
    return new CakeSetting(melt, thickness, pour, surroundings, faces);
  }

  private CakeSetting(
      MeltFigures melt,
      QuantityRange<Length> thickness,
      TemperaturePoint pour,
      Surroundings surroundings,
      Faces faces) {
    this.melt = melt;
    this.thickness =
        EstimateInput.of(THICKNESS, thickness.lowSi(), thickness.highSi(), Direction.RAISES);
    this.transfer = surroundings.transfer();
    this.pour = pour;
    this.air = surroundings.air();
    this.faces = faces;
    this.plank =
        new Estimate<>(
            QuantityKind.TIME,
            plank(EstimateInput::forLow),
            plank(EstimateInput::central),
            plank(EstimateInput::forHigh));
    this.conduction =
        new Estimate<>(
            QuantityKind.TIME,
            conduction(EstimateInput::forLow),
            conduction(EstimateInput::central),
            conduction(EstimateInput::forHigh));
  }

  /**
   * Returns the time by one-dimensional conduction.
   *
   * @return the time until 99 % is solid
   */
  public Estimate<Time> byConduction() {
    return conduction;
  }

  /**
   * Returns the time by Plank's formula with the sensible heat of the melt.
   *
   * @return the time
   */
  public Estimate<Time> byPlank() {
    return plank;
  }

  /**
   * Returns what the time by conduction hangs on.
   *
   * @return the drivers: thickness, air and the figures of the melt
   */
  public Drivers byConductionDrivers() {
    return Drivers.of(SOLID, inputs(), this::conduction);
  }

  /**
   * Returns what the time by Plank's formula hangs on.
   *
   * @return the drivers: thickness, air and the figures of the melt
   */
  public Drivers byPlankDrivers() {
    return Drivers.of(SOLID, inputs(), this::plank);
  }

  private double conduction(Values values) {
    return solidSeconds(
        melt.at(values),
        values.of(thickness),
        pour.celsius(),
        values.of(transfer),
        air.celsius(),
        faces);
  }

  /** Cooling both faces is half the slab with its middle insulated. */
  static double solidSeconds(
      MeltSubstance melt,
      double thickness,
      double pourCelsius,
      double transfer,
      double airCelsius,
      Faces faces) {
    double depth = faces == Faces.BOTH ? thickness / 2 : thickness;
    FreezingColumn column =
        new FreezingColumn(ColumnGrid.ofMelt(depth, RESOLUTION.cells()), melt, 0, pourCelsius)
            .openAbove(transfer, airCelsius);
    return FreezeClock.run(column, RESOLUTION.firstStep(depth), RESOLUTION.growth()).full();
  }

  private double plank(Values values) {
    return Plank.seconds(
        melt.at(values),
        Plank.Shape.SLAB,
        faces == Faces.BOTH ? values.of(thickness) : 2 * values.of(thickness),
        values.of(transfer),
        air.celsius(),
        pour.celsius());
  }

  /**
   * Returns the named inputs with their ranges and directions.
   *
   * @return thickness, air, and the figures of the melt
   */
  public List<EstimateInput> inputs() {
    List<EstimateInput> inputs = new ArrayList<>(List.of(thickness, transfer));
    inputs.addAll(melt.inputs());
    return List.copyOf(inputs);
  }

  /**
   * Explains the setting time.
   *
   * @return inputs, both times, and what was assumed
   */
  public Explanation explanation() {
    Explanation.Builder text =
        SettingWorking.builder("working.cake")
            .stated(SettingWorking.POURED, pour.celsius())
            .stated(SettingWorking.AIR, air.celsius())
            .inputs(inputs())
            .method(SettingWorking.conduction(conduction, byPlank()))
            .conclusion("working.cake." + faces, Map.of())
            .caution("working.cake.assumed")
            .caution("working.cake.plank");
    return SettingWorking.finish(text, melt, conduction);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CakeSetting that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(melt, thickness, transfer, pour, air, faces);
  }

  @Override
  public String toString() {
    return "setting of a cake poured at " + pour + " in air of " + air;
  }
}
