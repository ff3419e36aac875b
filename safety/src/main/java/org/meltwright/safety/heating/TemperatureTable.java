// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.List;
import java.util.stream.Stream;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.thermal.WorkingWindow;
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
 * table.hardCeiling().minus(table.target()); // 3.3 K
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

  /** How far above its clear point a mix is kept so that it does not set on the brush. */
  private static final TemperatureDifference BRUSH_MARGIN = TemperatureDifference.ofKelvin(10);

  /**
   * The table with the limits of this library: target 90.0 °C, which is 194 °F; hard ceiling 93.3
   * °C, 200 °F rounded down; floor of a pot 110 °C; 50 K below the flash point; a window of 5 K.
   */
  public static final TemperatureTable STANDARD =
      new TemperatureTable(
          TemperaturePoint.ofCelsius(90),
          TemperaturePoint.ofCelsius(93.3),
          TemperaturePoint.ofCelsius(110),
          TemperatureDifference.ofKelvin(50),
          TemperatureDifference.ofKelvin(5));

  private static final List<Band> WORST_FIRST =
      List.of(Band.FUME, Band.AT_CEILING, Band.ABOVE_TARGET, Band.DARKENING);

  private final TemperaturePoint target;
  private final TemperaturePoint hardCeiling;
  private final TemperaturePoint floorLimit;
  private final TemperatureDifference flashMargin;
  private final TemperatureDifference leastWidth;

  private TemperatureTable(
      TemperaturePoint target,
      TemperaturePoint hardCeiling,
      TemperaturePoint floorLimit,
      TemperatureDifference flashMargin,
      TemperatureDifference leastWidth) {
    this.target = target;
    this.hardCeiling = hardCeiling;
    this.floorLimit = floorLimit;
    this.flashMargin = flashMargin;
    this.leastWidth = leastWidth;
  }

  /**
   * Returns the target ceiling of the wax.
   *
   * @return the temperature; it is passed only beyond its value
   */
  public TemperaturePoint target() {
    return target;
  }

  /**
   * Returns the hard ceiling of the wax.
   *
   * @return the temperature; it is reached at its value
   */
  public TemperaturePoint hardCeiling() {
    return hardCeiling;
  }

  /**
   * Returns the limit of the floor of a pot.
   *
   * @return the temperature; it is reached at its value
   */
  public TemperaturePoint floorLimit() {
    return floorLimit;
  }

  /**
   * Returns how far below the lowest usable flash point wax must stay.
   *
   * @return the difference, above zero
   */
  public TemperatureDifference flashMargin() {
    return flashMargin;
  }

  /**
   * Returns the least room between the bounds of a working window that one can work in.
   *
   * @return the difference, above zero
   */
  public TemperatureDifference leastWidth() {
    return leastWidth;
  }

  /**
   * Returns the worst band that has begun for wax of a temperature.
   *
   * @param wax the temperature of the wax
   * @return the band
   */
  public Band band(TemperaturePoint wax) {
    return WORST_FIRST.stream()
        .filter(band -> hasBegun(band, wax))
        .findFirst()
        .orElse(Band.WORKING);
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
      case ABOVE_TARGET -> Limit.exceeds(wax, target);
      case AT_CEILING -> Limit.reaches(wax, hardCeiling);
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
    if (Limit.reaches(floor, floorLimit)) {
      return FloorBand.TOO_HOT;
    }
    return Limit.reaches(floor, hardCeiling) ? FloorBand.AT_CEILING : FloorBand.WORKING;
  }

  /**
   * Returns the temperature that wax must stay below for a flash point.
   *
   * @param flashPoint the lowest usable flash point of the mix
   * @return the flash point less the margin; it is reached at its value
   */
  public TemperaturePoint flashLimit(TemperaturePoint flashPoint) {
    return flashPoint.minus(flashMargin);
  }

  /**
   * Returns where a mix can be worked: from 10 K above its clear point, so that it does not set on
   * the brush (common practice), up to a ceiling, with the {@link #leastWidth} between them.
   *
   * @param mix what is heated
   * @param ceiling the {@link #target}, or less where a flash point asks for it
   * @return the working window
   * @throws org.meltwright.units.ProblemException if nothing melts, or what melts has no figure
   */
  public WorkingWindow window(Composition mix, TemperaturePoint ceiling) {
    return WorkingWindow.of(mix, ceiling, BRUSH_MARGIN, leastWidth);
  }

  /** Tells whether a limit of wax or floor lies between two temperatures, or at one of them. */
  boolean tellsApart(TemperaturePoint one, TemperaturePoint other) {
    return Stream.of(target, hardCeiling, floorLimit, FUME)
        .anyMatch(
            limit ->
                Limit.reaches(one, limit) != Limit.reaches(other, limit)
                    || Limit.exceeds(one, limit) != Limit.exceeds(other, limit));
  }
}
