// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperatureDifference;

/**
 * What to do about a reading: at once, and later when it has calmed down. The level follows from
 * the reading alone.
 *
 * <p>For example:
 *
 * <pre>{@code
 * HeatingAction action =
 *     HeatingReading.of(HeatingReading.Place.LIQUID, ofCelsius(97)).action();
 * action.level(); // HEAT_OFF
 * action.lowerBy(); // 7.0 K
 * action.atOnce(Locale.ENGLISH); // The wax is at 97.0 °C (206.6 °F), at or above …
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param reading what was read
 */
public record HeatingAction(HeatingReading reading) {

  private static final TemperatureTable TABLE = TemperatureTable.STANDARD;

  /** What a reading calls for, by the one temperature table. */
  public enum Level {
    /** Wax at 110 °C or above: heat off, ventilate, leave the fumes. */
    LEAVE_THE_FUMES(Severity.DANGER),
    /** Wax at the hard ceiling or above: heat off, let it cool. */
    HEAT_OFF(Severity.DANGER),
    /** Pot floor at 110 °C or above: heat off. */
    FLOOR_OFF(Severity.DANGER),
    /** Wax above the target: lower the set point. */
    LOWER(Severity.CAUTION),
    /** Pot floor at the hard ceiling of the wax or above: lower the set point, stir. */
    FLOOR_LOWER(Severity.CAUTION),
    /** The reading is not of the wax: measure there. */
    MEASURE_THE_WAX(Severity.CAUTION),
    /** Wax above 85 °C and up to the target: count the hours. */
    COUNT_THE_HOURS(Severity.NOTICE),
    /** Wax at 85 °C or below: stay, and look again within 30 minutes. */
    KEEP_WATCH(Severity.NOTICE);

    private final Severity severity;

    Level(Severity severity) {
      this.severity = severity;
    }

    /**
     * Returns how badly it may end.
     *
     * @return the severity
     */
    public Severity severity() {
      return severity;
    }

    /**
     * Tells whether the heat has to go off now.
     *
     * @return whether it does
     */
    public boolean isHeatOff() {
      return severity == Severity.DANGER;
    }
  }

  /**
   * Returns what the reading calls for.
   *
   * @return the level, by the one temperature table
   */
  public Level level() {
    return switch (reading.place()) {
      case LIQUID, PALETTE_SURFACE -> levelOfWax();
      case POT_FLOOR -> levelOfFloor();
      case AIR -> Level.MEASURE_THE_WAX;
    };
  }

  private Level levelOfWax() {
    return switch (TABLE.band(reading.value())) {
      case FUME -> Level.LEAVE_THE_FUMES;
      case AT_CEILING -> Level.HEAT_OFF;
      case ABOVE_TARGET -> Level.LOWER;
      case DARKENING -> Level.COUNT_THE_HOURS;
      case WORKING -> Level.KEEP_WATCH;
    };
  }

  private Level levelOfFloor() {
    return switch (TABLE.floorBand(reading.value())) {
      case TOO_HOT -> Level.FLOOR_OFF;
      case AT_CEILING -> Level.FLOOR_LOWER;
      case WORKING -> Level.MEASURE_THE_WAX;
    };
  }

  /**
   * Returns by how much the wax lies above the target: the least by which to lower the set point.
   *
   * @return the difference; empty if the reading is not of the wax or not above the target
   */
  public Optional<TemperatureDifference> lowerBy() {
    return isWaxIn(Band.ABOVE_TARGET)
        ? Optional.of(reading.value().minus(TABLE.target()))
        : Optional.empty();
  }

  /**
   * Says what to do at once.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or several sentences
   */
  public String atOnce(Locale locale) {
    return text("at-once", locale);
  }

  /**
   * Says what to do later.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or several sentences
   */
  public String later(Locale locale) {
    return text("later", locale) + hours(locale);
  }

  private String hours(Locale locale) {
    return isWaxIn(Band.DARKENING) && reading.minutes().isPresent()
        ? " " + messages().text("action.minutes", locale, values(locale))
        : "";
  }

  private boolean isWaxIn(Band band) {
    return reading.isOfWax() && TABLE.hasBegun(band, reading.value());
  }

  private String text(String part, Locale locale) {
    return messages().text("action." + level() + "." + part, locale, values(locale));
  }

  private Map<String, String> values(Locale locale) {
    return Map.of(
        "reading", Texts.write(reading.value(), locale),
        "lower", lowerBy().map(d -> Texts.write(d, locale)).orElse(""),
        "minutes", Long.toString(Math.round(reading.minutes().orElse(0))));
  }

  private static Messages messages() {
    return Messages.beside(HeatingAction.class);
  }
}
