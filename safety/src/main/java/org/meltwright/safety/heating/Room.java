// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.meltwright.safety.heating.HeatingProblem.CHECK;

import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/**
 * A room: its volume, and how much air is drawn out of it.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Room studio =
 *     Room.of(Quantities.of(60, CUBIC_METRE)).withExtractionCubicMetresPerHour(300);
 * studio.airChangesPerHour(); // 5.0 per hour
 * Room.of(Quantities.of(60, CUBIC_METRE)).airChangesPerHour().isPresent(); // false
 * Room.of(litres(60)); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param volumeCubicMetres the volume, in m³, from 1
 * @param extractionCubicMetresPerHour the air drawn out, in m³/h; empty if not stated
 */
public record Room(double volumeCubicMetres, OptionalDouble extractionCubicMetresPerHour) {

  /** Smaller than this, in m³, is no room that a person stands in. */
  private static final double SMALLEST = 1;

  private static final double LARGEST = 1e7;

  private static final double MOST_AIR = 1e8;

  public Room {
    CHECK.between(volumeCubicMetres, SMALLEST, LARGEST, "volume of the room in m³");
    extractionCubicMetresPerHour.ifPresent(
        air -> CHECK.between(air, 0, MOST_AIR, "extraction in m³/h"));
  }

  /**
   * Returns a room of which only the volume is known.
   *
   * @param volume the volume, from 1 m³
   * @return the room
   * @throws org.meltwright.units.ProblemException if it lies outside, as that of a pot does
   */
  public static Room of(Quantity<Volume> volume) {
    return new Room(checkedVolume(volume), OptionalDouble.empty());
  }

  /**
   * Returns how often an hour the extraction moves the volume of the room.
   *
   * @return the air changes per hour; empty if the extraction is not stated
   */
  public OptionalDouble airChangesPerHour() {
    return extractionCubicMetresPerHour.isPresent()
        ? OptionalDouble.of(extractionCubicMetresPerHour.getAsDouble() / volumeCubicMetres)
        : OptionalDouble.empty();
  }

  /**
   * Returns a copy with an extraction.
   *
   * @param cubicMetresPerHour the air drawn out in m³/h; 0 for none
   * @return the new room
   * @throws org.meltwright.units.ProblemException if it is negative
   */
  public Room withExtractionCubicMetresPerHour(double cubicMetresPerHour) {
    return new Room(volumeCubicMetres, OptionalDouble.of(cubicMetresPerHour));
  }

  /**
   * Returns this room as it is written down.
   *
   * @return the draft, which reads back as an equal room
   */
  public RoomDraft toDraft() {
    return RoomDraft.of(this);
  }

  static double checkedVolume(Quantity<Volume> volume) {
    return CHECK.between(volume, SMALLEST, LARGEST, "volume of the room");
  }

  static double checkedExtraction(Quantity<Volume> perHour) {
    return CHECK.between(perHour, 0, MOST_AIR, "extraction in an hour");
  }
}
