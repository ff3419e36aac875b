// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * What heats: a hot plate, a heated palette, an iron, a heat gun, a torch, a lamp.
 *
 * <p>What is not stated stays unknown: there is no default for set point, overshoot or power.
 *
 * <p>For example:
 *
 * <pre>{@code
 * HeatSource plate =
 *     HeatSource.of("hot plate", HeatSource.Kind.HOT_PLATE)
 *         .withSetPoint(ofCelsius(85))
 *         .withOvershoot(TemperatureDifference.ofKelvin(8));
 * plate.highestSurface(); // 93.0 °C
 * plate.powerWatts().isPresent(); // false
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class HeatSource {

  /** The kind of a heat source. */
  public enum Kind {
    /** A plate with a thermostat, under a vessel. */
    HOT_PLATE,
    /** A heated palette: the melt lies on the plate itself. */
    HEATED_PALETTE,
    /** A slow cooker or another vessel with its own heater. */
    SLOW_COOKER,
    /** A water bath. */
    WATER_BATH,
    /** An open coil or a gas ring. */
    OPEN_COIL_OR_GAS,
    /** An iron or another hot tool without flame. */
    IRON,
    /** A hot-air gun. */
    HEAT_GUN,
    /** A torch: an open flame. */
    TORCH,
    /** A lamp that heats by radiation. */
    LAMP
  }

  private final String name;
  private final Kind kind;
  private final @Nullable TemperaturePoint setPoint;
  private final @Nullable TemperatureDifference overshoot;
  private final double powerWatts;

  /**
   * Returns a heat source of which only name and kind are known.
   *
   * @param name what the studio calls it
   * @param kind its kind
   * @return the heat source
   * @throws org.meltwright.units.ProblemException if the name is blank
   */
  public static HeatSource of(String name, Kind kind) {
    return new HeatSource(CHECK.named(name, "heat source"), kind, null, null, 0);
  }

  private HeatSource(
      String name,
      Kind kind,
      @Nullable TemperaturePoint setPoint,
      @Nullable TemperatureDifference overshoot,
      double powerWatts) {
    this.name = name;
    this.kind = kind;
    this.setPoint = setPoint;
    this.overshoot = overshoot;
    this.powerWatts = powerWatts;
  }

  /**
   * Returns what the studio calls it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Returns its kind.
   *
   * @return the kind
   */
  public Kind kind() {
    return kind;
  }

  /**
   * Returns what its thermostat is set to.
   *
   * @return the set point; empty if it has none or it is not stated
   */
  public Optional<TemperaturePoint> setPoint() {
    return Optional.ofNullable(setPoint);
  }

  /**
   * Returns how far its surface rises above the set point in a thermostat cycle.
   *
   * @return the overshoot; empty if it is not stated, which is not zero
   */
  public Optional<TemperatureDifference> overshoot() {
    return Optional.ofNullable(overshoot);
  }

  /**
   * Returns the highest surface temperature over one thermostat cycle.
   *
   * @return set point plus overshoot; empty if either is not stated
   */
  public Optional<TemperaturePoint> highestSurface() {
    return setPoint().flatMap(point -> overshoot().map(point::plus));
  }

  /**
   * Returns its electrical power.
   *
   * @return the power in W; empty if it is not stated
   */
  public OptionalDouble powerWatts() {
    return powerWatts > 0 ? OptionalDouble.of(powerWatts) : OptionalDouble.empty();
  }

  /**
   * Returns a copy with a set point.
   *
   * @param point what the thermostat is set to
   * @return the new heat source
   */
  public HeatSource withSetPoint(TemperaturePoint point) {
    return new HeatSource(name, kind, point, overshoot, powerWatts);
  }

  /**
   * Returns a copy with an overshoot.
   *
   * @param difference how far the surface rises above the set point, not negative
   * @return the new heat source
   * @throws org.meltwright.units.ProblemException if it is negative
   */
  public HeatSource withOvershoot(TemperatureDifference difference) {
    CHECK.between(difference.kelvin(), 0, 1000, "overshoot in K");
    return new HeatSource(name, kind, setPoint, difference, powerWatts);
  }

  /**
   * Returns a copy with a power.
   *
   * @param watts the electrical power in W, above zero
   * @return the new heat source
   * @throws org.meltwright.units.ProblemException if it is not above zero
   */
  public HeatSource withPowerWatts(double watts) {
    return new HeatSource(
        name, kind, setPoint, overshoot, CHECK.between(watts, 1e-3, 1e6, "power in W"));
  }
}
