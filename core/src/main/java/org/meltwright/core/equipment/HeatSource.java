// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
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
    /**
     * A ring or plate with numbers instead of degrees: its regulator shares out time, not heat, so
     * it has neither set point nor overshoot.
     */
    RING_WITH_NUMBERS,
    /** An oven. */
    OVEN,
    /** A microwave oven. */
    MICROWAVE,
    /** An open coil or a gas ring. */
    OPEN_COIL_OR_GAS,
    /** An iron or another hot tool without flame. */
    IRON,
    /** A hot-air gun. */
    HEAT_GUN,
    /** A torch: an open flame. */
    TORCH,
    /** A lamp that heats by radiation. */
    LAMP;

    /**
     * Tells whether it burns or glows in the open: a torch, a gas ring, an open coil.
     *
     * @return whether what burns catches fire from it without touching a wall between
     */
    public boolean isFlameOrGlow() {
      return this == TORCH || this == OPEN_COIL_OR_GAS;
    }

    /**
     * Tells whether it can be set to a temperature.
     *
     * @return false for a ring with numbers, which has neither set point nor overshoot
     */
    public boolean hasDegrees() {
      return this != RING_WITH_NUMBERS;
    }
  }

  private static final double LEAST_WATTS = 1e-3;
  private static final double MOST_WATTS = 1e6;

  private final String name;
  private final Kind kind;
  private final @Nullable TemperaturePoint setPoint;
  private final @Nullable TemperatureDifference overshoot;
  private final OptionalDouble powerWatts;

  /**
   * Returns a heat source of which only name and kind are known.
   *
   * @param name what the studio calls it
   * @param kind its kind
   * @return the heat source
   * @throws ProblemException if the name is blank
   */
  public static HeatSource of(String name, Kind kind) {
    return new HeatSource(
        CHECK.named(name, "heat source"), kind, null, null, OptionalDouble.empty());
  }

  private HeatSource(
      String name,
      Kind kind,
      @Nullable TemperaturePoint setPoint,
      @Nullable TemperatureDifference overshoot,
      OptionalDouble powerWatts) {
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

  /** {@return the kind} */
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
    return powerWatts;
  }

  /**
   * Returns a copy with a set point.
   *
   * @param point what the thermostat is set to
   * @return the new heat source
   * @throws ProblemException if it has numbers instead of degrees
   */
  public HeatSource withSetPoint(TemperaturePoint point) {
    requireDegrees(point.toString());
    return new HeatSource(name, kind, point, overshoot, powerWatts);
  }

  /**
   * Returns a copy with an overshoot.
   *
   * @param difference how far the surface rises above the set point, not negative
   * @return the new heat source
   * @throws ProblemException if it is negative, or the source has numbers instead of degrees
   */
  public HeatSource withOvershoot(TemperatureDifference difference) {
    requireDegrees(difference.toString());
    return new HeatSource(name, kind, setPoint, checkedOvershoot(difference), powerWatts);
  }

  /**
   * Returns a copy with a power.
   *
   * @param watts the electrical power in W, above zero
   * @return the new heat source
   * @throws ProblemException if it is not above zero
   */
  public HeatSource withPowerWatts(double watts) {
    return new HeatSource(
        name,
        kind,
        setPoint,
        overshoot,
        OptionalDouble.of(CHECK.between(watts, LEAST_WATTS, MOST_WATTS, "power in W")));
  }

  private void requireDegrees(String found) {
    if (!kind.hasDegrees()) {
      throw new ProblemException(
          Problem.of(EquipmentProblem.NUMBERS_NOT_DEGREES, found).with("source", name));
    }
  }

  /**
   * Compares name, kind, set point, overshoot and power.
   *
   * @param other the other object
   * @return whether all are the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatSource that
        && name.equals(that.name)
        && kind == that.kind
        && Objects.equals(setPoint, that.setPoint)
        && Objects.equals(overshoot, that.overshoot)
        && powerWatts.equals(that.powerWatts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, kind, setPoint, overshoot, powerWatts);
  }

  /**
   * Returns name, kind and what is stated.
   *
   * @return for example "hot plate (HOT_PLATE), set to 85.0 °C, overshoot 8.0 K"
   */
  @Override
  public String toString() {
    return name
        + " ("
        + kind
        + ")"
        + setPoint().map(t -> ", set to " + t).orElse("")
        + overshoot().map(d -> ", overshoot " + d).orElse("");
  }

  /**
   * Returns this heat source as it is written down.
   *
   * @return the draft, which reads back as an equal heat source
   */
  public HeatSourceDraft toDraft() {
    return HeatSourceDraft.of(this);
  }

  static TemperatureDifference checkedOvershoot(TemperatureDifference difference) {
    CHECK.between(difference.kelvin(), 0, 1000, "overshoot in K");
    return difference;
  }

  static double checkedPower(Quantity<Power> power) {
    return CHECK.between(power, LEAST_WATTS, MOST_WATTS, "power");
  }
}
