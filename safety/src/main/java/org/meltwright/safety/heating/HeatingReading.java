// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.Checks.CHECK;

import java.util.OptionalDouble;
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
 * @param minutesHeld for how many minutes it has shown about that; NaN if not stated
 */
public record HeatingReading(Place place, TemperaturePoint value, double minutesHeld) {

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

  /**
   * Guards the minutes.
   *
   * @param place where the probe is
   * @param value what it shows
   * @param minutesHeld for how many minutes
   * @throws org.meltwright.units.ProblemException if the minutes are negative
   */
  public HeatingReading {
    if (!Double.isNaN(minutesHeld)) {
      CHECK.between(minutesHeld, 0, 1e6, "minutes held");
    }
  }

  /**
   * Returns a reading of which the duration is not stated.
   *
   * @param place where the probe is
   * @param value what it shows
   * @return the reading
   */
  public static HeatingReading of(Place place, TemperaturePoint value) {
    return new HeatingReading(place, value, Double.NaN);
  }

  /**
   * Returns a copy with a duration.
   *
   * @param minutes for how many minutes it has shown about that
   * @return the new reading
   * @throws org.meltwright.units.ProblemException if they are negative
   */
  public HeatingReading heldForMinutes(double minutes) {
    return new HeatingReading(place, value, CHECK.between(minutes, 0, 1e6, "minutes held"));
  }

  /**
   * Returns for how long it has shown about that.
   *
   * @return the minutes; empty if they are not stated
   */
  public OptionalDouble minutes() {
    return Double.isNaN(minutesHeld) ? OptionalDouble.empty() : OptionalDouble.of(minutesHeld);
  }

  /**
   * Returns what to do.
   *
   * @return the action, at once and later
   */
  public HeatingAction action() {
    return new HeatingAction(this);
  }

  boolean isOfWax() {
    return place == Place.LIQUID || place == Place.PALETTE_SURFACE;
  }
}
