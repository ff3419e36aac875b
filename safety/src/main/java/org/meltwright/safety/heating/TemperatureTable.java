// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * The one temperature table: every band that a rule of this library knows, and no other; one ladder
 * for the wax and one for the floor of a pot.
 *
 * <p>The bands are policy after common practice. 90 °C and 200 °F are two limits: 200 °F is 93.33
 * °C, which reaches the hard ceiling. Two bands begin beyond their value, darkening and what lies
 * above the target; the others begin at it. Darkening and fume are facts of wax; the other bands
 * follow the limits of the table.
 *
 * <p>For example:
 *
 * <pre>{@code
 * TemperatureTable table = TemperatureTable.STANDARD;
 * table.band(ofCelsius(90)); // DARKENING
 * table.band(ofFahrenheit(200)); // AT_CEILING
 * table.floorBand(ofCelsius(100)); // AT_CEILING
 * table.hasBegun(TemperatureTable.Band.ABOVE_TARGET, ofCelsius(90)); // false
 * table.limits().hardCeiling().minus(table.limits().target()); // 3.3 K
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class TemperatureTable {

  /** The bands of the wax, worst last. */
  public enum Band {
    /** Up to 85 °C, itself included. */
    WORKING,
    /** Above 85 °C: wax darkens with the hours. */
    DARKENING,
    /** Above the target. */
    ABOVE_TARGET,
    /** At the hard ceiling or above. */
    AT_CEILING,
    /** At 110 °C or above: the air comes first; not a measured onset. */
    FUME
  }

  /** The bands of the floor of a pot, worst last. */
  public enum FloorBand {
    /** Below both limits. */
    WORKING,
    /** At the hard ceiling of the wax or above. */
    AT_CEILING,
    /** At the limit of the floor or above. */
    TOO_HOT
  }

  /** Above this, 85 °C, wax darkens with the hours. Begins beyond its value. */
  public static final TemperaturePoint DARKENING = TemperaturePoint.ofCelsius(85);

  /** From this, 110 °C, the fume text is shown. Reached at its value; not a measured onset. */
  public static final TemperaturePoint FUME = TemperaturePoint.ofCelsius(110);

  static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

  /** How far above its clear point a mix is kept so that it does not set on the brush. */
  private static final TemperatureDifference BRUSH_MARGIN = TemperatureDifference.ofKelvin(10);

  /** The table of the standard limits. */
  public static final TemperatureTable STANDARD = new TemperatureTable(HeatingLimits.standard());

  private static final Band[] WORST_FIRST = {
    Band.FUME, Band.AT_CEILING, Band.ABOVE_TARGET, Band.DARKENING
  };

  private final HeatingLimits limits;

  /**
   * Returns the table of some limits.
   *
   * @param limits the limits
   * @return the table
   */
  public static TemperatureTable of(HeatingLimits limits) {
    return limits.equals(STANDARD.limits) ? STANDARD : new TemperatureTable(limits);
  }

  private TemperatureTable(HeatingLimits limits) {
    this.limits = limits;
  }

  /**
   * Returns the limits that the bands follow from.
   *
   * @return the limits
   */
  public HeatingLimits limits() {
    return limits;
  }

  /**
   * Returns the worst band that has begun for wax of a temperature.
   *
   * @param wax the temperature of the wax
   * @return the band
   */
  public Band band(TemperaturePoint wax) {
    for (Band band : WORST_FIRST) {
      if (hasBegun(band, wax)) {
        return band;
      }
    }
    return Band.WORKING;
  }

  /**
   * Tells whether wax of a temperature is in a band or beyond its beginning.
   *
   * @param band the band
   * @param wax the temperature of the wax
   * @return whether the band has begun, whatever else has
   */
  public boolean hasBegun(Band band, TemperaturePoint wax) {
    return switch (band) {
      case WORKING -> true;
      case DARKENING -> Limit.exceeds(wax, DARKENING);
      case ABOVE_TARGET -> Limit.exceeds(wax, limits.target());
      case AT_CEILING -> Limit.reaches(wax, limits.hardCeiling());
      case FUME -> Limit.reaches(wax, FUME);
    };
  }

  /**
   * Returns the worst band that has begun for the floor of a pot, or whatever else hot wax touches.
   *
   * @param floor the temperature of the floor at its hottest
   * @return the band; where the limit of the floor is lower than the hard ceiling, the milder of
   *     the two never comes
   */
  public FloorBand floorBand(TemperaturePoint floor) {
    if (Limit.reaches(floor, limits.floorLimit())) {
      return FloorBand.TOO_HOT;
    }
    return Limit.reaches(floor, limits.floorCaution()) ? FloorBand.AT_CEILING : FloorBand.WORKING;
  }

  /**
   * Returns the temperature that wax must stay below for a flash point.
   *
   * @param flashPoint the lowest usable flash point of the mix
   * @return the flash point less the margin, absolute zero at least; it is reached at its value
   */
  public TemperaturePoint flashLimit(TemperaturePoint flashPoint) {
    return below(flashPoint, limits.flashMargin());
  }

  /** So much lower, or absolute zero. */
  static TemperaturePoint below(TemperaturePoint point, TemperatureDifference margin) {
    double celsius = point.celsius() - margin.kelvin();
    return TemperaturePoint.ofCelsius(Math.max(celsius, ABSOLUTE_ZERO_CELSIUS));
  }

  /**
   * Returns where a mix can be worked: from 10 K above its clear point, so that it does not set on
   * the brush (common practice), up to a ceiling, with the {@link HeatingLimits#leastWidth} between
   * them.
   *
   * @param mix what is heated
   * @param ceiling the {@link HeatingLimits#target}, or less where a flash point asks for it
   * @return the working window; empty if nothing melts, or what melts has no melting range
   */
  public Optional<WorkingWindow> window(Composition mix, TemperaturePoint ceiling) {
    return window(mix, ceiling, limits.leastWidth());
  }

  Optional<WorkingWindow> window(
      Composition mix, TemperaturePoint ceiling, TemperatureDifference leastWidth) {
    return WorkingWindow.find(mix, ceiling, BRUSH_MARGIN, leastWidth);
  }

  /** Tells whether a limit of wax or floor lies between two temperatures, or at one of them. */
  boolean tellsApart(TemperaturePoint one, TemperaturePoint other) {
    return Stream.of(limits.target(), limits.hardCeiling(), limits.floorLimit(), DARKENING, FUME)
        .anyMatch(
            limit ->
                Limit.reaches(one, limit) != Limit.reaches(other, limit)
                    || Limit.exceeds(one, limit) != Limit.exceeds(other, limit));
  }

  /**
   * Compares the limits.
   *
   * @param other the other object
   * @return whether both tables are the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TemperatureTable that && limits.equals(that.limits);
  }

  @Override
  public int hashCode() {
    return limits.hashCode();
  }

  /**
   * Returns the limits.
   *
   * @return for example "target 90.0 °C, hard ceiling 93.3 °C, …"
   */
  @Override
  public String toString() {
    return limits.toString();
  }
}
