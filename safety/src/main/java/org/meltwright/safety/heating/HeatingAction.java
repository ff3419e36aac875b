// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.units.Limit;
import org.meltwright.units.Messages;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * What to do about a reading: at once, and later when it has calmed down. The level follows from
 * the reading, the limits and what is in the pot, worst first.
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
 * <p>This class is immutable and thread-safe.
 */
public final class HeatingAction {

  /** What a reading calls for, worst first. */
  public enum Level {
    /** At the autoignition temperature or above: out, and stay out. */
    OUT_AND_STAY_OUT(Severity.DANGER),
    /** At the flash point or above: out, and call the fire service. */
    OUT_AND_CALL(Severity.DANGER),
    /** Within the margin below the flash point: out, and keep it in view. */
    OUT_AND_WATCH(Severity.DANGER),
    /** Wax at 110 °C or above: heat off, ventilate, leave the fumes. */
    LEAVE_THE_FUMES(Severity.DANGER),
    /** Wax at the hard ceiling or above: heat off, let it cool. */
    HEAT_OFF(Severity.DANGER),
    /** Pot floor at its limit or above: heat off. */
    FLOOR_OFF(Severity.DANGER),
    /** Wax above the target: lower the set point. */
    LOWER(Severity.CAUTION),
    /** Pot floor at the hard ceiling of the wax or above: lower the set point. */
    FLOOR_LOWER(Severity.CAUTION),
    /** No reading of molten wax: check unit and probe. */
    CHECK_THE_PROBE(Severity.CAUTION),
    /** The reading is not of the wax, or counts upwards only: measure there. */
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

  private final HeatingReading reading;
  private final HeatingLimits limits;
  private final FireLimits fire;
  private final Optional<TemperaturePoint> molten;

  /** By the standard limits and the worst of the waxes, fats and oils of the catalogue. */
  static HeatingAction of(HeatingReading reading) {
    Optional<TemperaturePoint> molten = Optional.of(MoltenBound.UNKNOWN);
    return new HeatingAction(reading, HeatingLimits.standard(), FireLimits.ofCatalogue(), molten);
  }

  static HeatingAction of(HeatingReading reading, HeatingLimits limits, Composition mix) {
    Contents contents = new Contents(mix);
    return new HeatingAction(
        reading,
        limits,
        FireLimits.of(contents),
        MoltenBound.of(contents, TemperatureTable.of(limits).window(mix, limits.target())));
  }

  /** What the temperature that the table binds calls for. */
  static HeatingAction of(HeatingPlan plan, TemperaturePoint wax) {
    return new HeatingAction(
        HeatingReading.of(HeatingReading.Place.LIQUID, wax),
        plan.limits(),
        FireLimits.of(plan.contents()),
        plan.temperatures().moltenBound());
  }

  private HeatingAction(
      HeatingReading reading,
      HeatingLimits limits,
      FireLimits fire,
      Optional<TemperaturePoint> molten) {
    this.reading = reading;
    this.limits = limits;
    this.fire = fire;
    this.molten = molten;
  }

  /**
   * Returns the reading.
   *
   * @return what was read
   */
  public HeatingReading reading() {
    return reading;
  }

  /**
   * Returns what the reading calls for.
   *
   * @return the level
   */
  public Level level() {
    if (reading.place() == HeatingReading.Place.AIR) {
      return Level.MEASURE_THE_WAX;
    }
    return levelOfFire().orElseGet(() -> reading.isOfWax() ? levelOfWax() : levelOfFloor());
  }

  private Optional<Level> levelOfFire() {
    if (isAtLeast(fire.autoignition())) {
      return Optional.of(Level.OUT_AND_STAY_OUT);
    } else if (isAtLeast(fire.flash())) {
      return Optional.of(Level.OUT_AND_CALL);
    }
    return isAtLeast(fire.flash().map(table()::flashLimit))
        ? Optional.of(Level.OUT_AND_WATCH)
        : Optional.empty();
  }

  private boolean isAtLeast(Optional<TemperaturePoint> limit) {
    return limit.filter(l -> Limit.reaches(reading.value(), l)).isPresent();
  }

  private Level levelOfWax() {
    return switch (table().band(reading.value())) {
      case FUME -> Level.LEAVE_THE_FUMES;
      case AT_CEILING -> Level.HEAT_OFF;
      case ABOVE_TARGET -> Level.LOWER;
      case DARKENING -> milder(Level.COUNT_THE_HOURS);
      case WORKING -> milder(Level.KEEP_WATCH);
    };
  }

  /** Only a reading of molten wax that counts both ways tells that a limit is not passed. */
  private Level milder(Level level) {
    if (!reading.countsDownwards()) {
      return Level.MEASURE_THE_WAX;
    }
    boolean noMoltenWax =
        reading.place() == HeatingReading.Place.LIQUID
            && molten.filter(bound -> !Limit.reaches(reading.value(), bound)).isPresent();
    return noMoltenWax ? Level.CHECK_THE_PROBE : level;
  }

  private Level levelOfFloor() {
    return switch (table().floorBand(reading.value())) {
      case TOO_HOT -> Level.FLOOR_OFF;
      case AT_CEILING -> Level.FLOOR_LOWER;
      case WORKING -> Level.MEASURE_THE_WAX;
    };
  }

  private TemperatureTable table() {
    return TemperatureTable.of(limits);
  }

  /**
   * Returns by how much the wax lies above the target: the least by which to lower the set point.
   *
   * @return the difference; empty if the reading is not of the wax or not above the target
   */
  public Optional<TemperatureDifference> lowerBy() {
    return isWaxIn(Band.ABOVE_TARGET)
        ? Optional.of(reading.value().minus(limits.target()))
        : Optional.empty();
  }

  /**
   * Says what to do at once.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or several sentences
   */
  public String atOnce(Locale locale) {
    return text("reading", locale) + " " + toDo(locale);
  }

  /** What to do at once, without the reading that calls for it. */
  String toDo(Locale locale) {
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
    return reading.isOfWax() && table().hasBegun(band, reading.value());
  }

  private String text(String part, Locale locale) {
    return messages().text("action." + level() + "." + part, locale, values(locale));
  }

  private Map<String, String> values(Locale locale) {
    Map<String, String> values = new HashMap<>(Texts.of(limits, locale));
    values.put("reading", Texts.write(reading.value(), locale, limits));
    values.put("lower", lowerBy().map(d -> Texts.write(d, locale)).orElse(""));
    values.put("minutes", Long.toString(Math.round(reading.minutes().orElse(0))));
    values.put("flash", fire.flash().map(t -> Texts.write(t, locale)).orElse(""));
    values.put("autoignition", fire.autoignition().map(t -> Texts.write(t, locale)).orElse(""));
    values.put("otherScale", otherScale(locale));
    return values;
  }

  private String otherScale(Locale locale) {
    return OtherScale.of(reading.value(), molten.orElse(MoltenBound.UNKNOWN), limits)
        .map(other -> " " + other.text().in(locale))
        .orElse("");
  }

  private static Messages messages() {
    return Messages.beside(HeatingAction.class);
  }

  /**
   * Compares reading, limits and what the mix sets.
   *
   * @param other the other object
   * @return whether both are the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HeatingAction that
        && reading.equals(that.reading)
        && limits.equals(that.limits)
        && fire.equals(that.fire)
        && molten.equals(that.molten);
  }

  @Override
  public int hashCode() {
    return Objects.hash(reading, limits, fire, molten);
  }

  /**
   * Returns the level and what to do at once.
   *
   * @return for example "HEAT_OFF: The wax is at 97.0 °C …"
   */
  @Override
  public String toString() {
    return level() + ": " + atOnce(Locale.ENGLISH);
  }

  /**
   * From which temperatures on the vapour of a mix catches fire from a spark, and by itself.
   *
   * @param flash the lowest flash point that a rule may use; empty if none is known
   * @param autoignition the lowest autoignition temperature that a rule may use; empty if none is
   *     known
   */
  private record FireLimits(
      Optional<TemperaturePoint> flash, Optional<TemperaturePoint> autoignition) {

    static FireLimits of(Contents contents) {
      return of(contents.flashPoints());
    }

    /**
     * The worst of the waxes, fats and oils of the catalogue: for a pot of which nothing is stated.
     */
    static FireLimits ofCatalogue() {
      return Catalogue.WORST;
    }

    private static FireLimits of(FlashPoints points) {
      return new FireLimits(points.lowest(), points.lowestAutoignition());
    }

    /** Worked out when first asked. */
    private static final class Catalogue {
      static final FireLimits WORST =
          of(
              FlashPoints.of(
                  Stream.of(MaterialFamily.WAX, MaterialFamily.DRYING_OIL)
                      .flatMap(family -> MaterialCatalogue.standard().byFamily(family).stream())
                      .toList()));
    }
  }
}
