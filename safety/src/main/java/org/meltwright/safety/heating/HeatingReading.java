// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.TemperaturePoint;

/**
 * What a thermometer shows, where it measures, and for how long that has been so: "this pot reads
 * 97 °C — what now?"
 *
 * <p>For example, 97 °C in the liquid is above the hard ceiling: heat off at once, and later a set
 * point lower by at least 7 K.
 *
 * <p>The same number in the wax and on the floor below it calls for two things; in code:
 *
 * <pre>{@code
 * HeatingReading wax = HeatingReading.of(HeatingReading.Place.LIQUID, ofCelsius(97));
 * HeatingReading floor = HeatingReading.of(HeatingReading.Place.POT_FLOOR, ofCelsius(97));
 * wax.action().level(); // HEAT_OFF
 * wax.action().lowerBy(); // 7.0 K
 * floor.action().level(); // FLOOR_LOWER
 * floor.action().lowerBy().isPresent(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param place where the probe is
 * @param value what it shows
 * @param method how a surface was read; empty if it is not stated or the probe is elsewhere
 * @param minutes for how many minutes it has shown about that; empty if not stated
 */
public record HeatingReading(
    Place place, TemperaturePoint value, Optional<SurfaceMethod> method, OptionalDouble minutes) {

  /** Where the probe is. */
  public enum Place {
    /** In the liquid wax. */
    LIQUID,
    /** On the surface of a heated palette, where the wax lies on the plate itself. */
    PALETTE_SURFACE,
    /** On the plate under a pot, or on the pot's floor. */
    POT_FLOOR,
    /** In the air of a heat gun, or over the pot. */
    AIR
  }

  /** Draws a problem if the minutes are negative or above a million. */
  public HeatingReading {
    minutes.ifPresent(m -> CHECK.between(m, 0, 1e6, "minutes held"));
  }

  /**
   * Returns a reading of which neither method nor duration is stated; one of a surface counts
   * upwards only.
   *
   * @param place where the probe is
   * @param value what it shows
   * @return the reading
   */
  public static HeatingReading of(Place place, TemperaturePoint value) {
    return new HeatingReading(place, value, Optional.empty(), OptionalDouble.empty());
  }

  /**
   * Returns a copy with a duration.
   *
   * @param minutesHeld for how many minutes it has shown about that
   * @return the new reading
   * @throws org.meltwright.units.ProblemException if they are negative or above a million
   */
  public HeatingReading heldForMinutes(double minutesHeld) {
    return new HeatingReading(place, value, method, OptionalDouble.of(minutesHeld));
  }

  /**
   * Returns what to do, by the standard limits and the lowest usable flash point of the waxes, fats
   * and oils in the catalogue.
   *
   * @return the action, at once and later
   */
  public HeatingAction action() {
    return HeatingAction.of(this);
  }

  /**
   * Returns what to do.
   *
   * @param limits the limits to hold it against
   * @param mix what is in the pot
   * @return the action, at once and later
   */
  public HeatingAction action(HeatingLimits limits, Composition mix) {
    return HeatingAction.of(this, limits, mix);
  }

  boolean isOfWax() {
    return place == Place.LIQUID || place == Place.PALETTE_SURFACE;
  }

  /** Whether it can be held against a limit in both directions. */
  boolean countsDownwards() {
    return place == Place.LIQUID || method.filter(SurfaceMethod::isReliable).isPresent();
  }
}
