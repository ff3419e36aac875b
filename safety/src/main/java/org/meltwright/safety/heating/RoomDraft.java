// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

/**
 * A {@link Room} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Room studio = new RoomDraft("60 m³", "300 m³").toRoom(QuantityParser.localeFree());
 * studio.airChangesPerHour(); // 5.0 per hour
 * studio.toDraft().volume(); // 60 m³
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param volume its volume, from 1 m³
 * @param extractionPerHour the air that is drawn out of it in an hour, a volume: "0 m³" for none;
 *     absent if it is not stated
 */
public record RoomDraft(@Nullable String volume, @Nullable String extractionPerHour) {

  static RoomDraft of(Room room) {
    OptionalDouble air = room.extractionCubicMetresPerHour();
    return new RoomDraft(
        text(room.volumeCubicMetres()), air.isPresent() ? text(air.getAsDouble()) : null);
  }

  private static String text(double cubicMetres) {
    return QuantityFormatter.exact()
        .format(QuantityKind.VOLUME, cubicMetres, MetricUnits.CUBIC_METRE);
  }

  /**
   * Returns the room.
   *
   * @param parser reads the volumes
   * @return the room
   * @throws ProblemException if the volume is missing or a field is wrong; it carries all problems
   *     found, each at its field
   */
  public Room toRoom(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<Double> size =
        at.parse("volume", volume, (p, t) -> Room.checkedVolume(p.parseVolume(t)));
    Optional<Double> air =
        at.optional()
            .parse(
                "extractionPerHour",
                extractionPerHour,
                (p, t) -> Room.checkedExtraction(p.parseVolume(t)));
    return at.make(
        () -> new Room(size.get(), air.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
  }
}
