// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.FieldReader;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperatureScale;

/**
 * A {@link Thermometer} as it is written down, not checked yet.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Thermometer probe =
 *     new ThermometerDraft("probe", "liquid", "0.1 K", "2 K")
 *         .toThermometer(QuantityParser.localeFree());
 * ofCelsius(88).plus(probe.tolerance()); // 90.0 °C
 * probe.toDraft().tolerance(); // 2 K
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id what the studio calls it
 * @param place where it measures, a word of {@link Thermometer.Place}, such as "liquid"
 * @param interval its scale interval, above zero, such as "0.1 K"
 * @param tolerance how far it may be off, either way, such as "2 K"
 */
public record ThermometerDraft(
    @Nullable String id,
    @Nullable String place,
    @Nullable String interval,
    @Nullable String tolerance) {

  static ThermometerDraft of(Thermometer thermometer) {
    QuantityFormatter exact = QuantityFormatter.exact();
    return new ThermometerDraft(
        thermometer.name(),
        FieldReader.wordOf(thermometer.place()),
        exact.format(thermometer.interval(), TemperatureScale.KELVIN),
        exact.format(thermometer.tolerance(), TemperatureScale.KELVIN));
  }

  /**
   * Returns the thermometer.
   *
   * @param parser reads the temperature differences
   * @return the thermometer
   * @throws ProblemException if a field is missing or wrong; it carries all problems found, each at
   *     its field
   */
  public Thermometer toThermometer(QuantityParser parser) {
    FieldReader at = FieldReader.of(parser);
    Optional<String> name = at.value("id", id);
    Optional<Thermometer.Place> where = at.word("place", place, Thermometer.Place.class);
    Optional<TemperatureDifference> step =
        at.parse(
            "interval",
            interval,
            (p, t) -> Thermometer.checkedInterval(p.parseTemperatureDifference(t)));
    Optional<TemperatureDifference> off =
        at.parse(
            "tolerance",
            tolerance,
            (p, t) -> Thermometer.checkedTolerance(p.parseTemperatureDifference(t)));
    return at.make(() -> new Thermometer(name.get(), where.get(), step.get(), off.get()));
  }
}
