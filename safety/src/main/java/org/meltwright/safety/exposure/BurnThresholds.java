// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * Burn thresholds of surfaces by time of contact, as ranges: below the range no burn is expected by
 * the standard, within it a burn may happen, above it will.
 *
 * <p>Figures of ISO 13732-1 and EN 563 as secondary pages restate them; the standard itself was not
 * opened. They hold for healthy adult skin, less than a tenth of the body, not the face. A time
 * between two columns takes the longer one, and a cell that no source fills takes the next longer.
 *
 * <p>Molten wax is none of these surfaces: see {@link WaxContact}. Not instantiable; thread-safe.
 *
 * <p>For example:
 *
 * <pre>{@code
 * BurnThresholds.Surface metal = BurnThresholds.Surface.BARE_METAL;
 * BurnThresholds.threshold(metal, 1); // 62.0–70.0 °C
 * BurnThresholds.outcome(metal, ofCelsius(65), 1); // MAY_BURN
 * BurnThresholds.outcome(metal, ofCelsius(85), 1); // BURNS
 * // a handle of wood, held for a minute
 * BurnThresholds.threshold(BurnThresholds.Surface.WOOD, 60); // 60.0 °C
 * }</pre>
 */
public final class BurnThresholds {

  private static final double[] SECONDS = {0.5, 1, 2, 5, 10, 60, 600, 28_800};

  /** What a contact does. */
  public enum Outcome {
    /** Below the range of the standard; skin that is thin, young or ill may burn all the same. */
    BELOW_THRESHOLD,
    /** Within the range: a burn may happen. */
    MAY_BURN,
    /** Above the range. */
    BURNS
  }

  /** A kind of surface; ranges in °C at 0.5, 1, 2, 5, 10 s, 1 min, 10 min and 8 h. */
  public enum Surface {
    /** Hot water. */
    WATER("67 64 54 54 54 51 48 43", "67 64 54 54 54 51 48 43"),
    /** Bare metal. */
    BARE_METAL("67 62 60 56 51 51 48 43", "73 70 64 61 51 51 48 43"),
    /** Ceramic, glass and stone. */
    CERAMIC_GLASS_STONE("84 56 56 56 56 56 48 43", "90 56 56 56 56 56 48 43"),
    /** Plastics. */
    PLASTIC("91 85 80 74 60 60 48 43", "99 87 87 82 60 60 48 43"),
    /** Wood. */
    WOOD("128 110 104 92 60 60 48 43", "155 135 126 112 60 60 48 43");

    private final String low;
    private final String high;

    Surface(String low, String high) {
      this.low = low;
      this.high = high;
    }

    private static double cell(String row, int column) {
      return Double.parseDouble(row.split(" ", -1)[column]);
    }
  }

  /** A lacquer on metal, by thickness; it raises the threshold at 0.5 s. */
  public enum Lacquer {
    /** No lacquer. */
    NONE(0),
    /** 50 µm of lacquer. */
    MICROMETRES_50(13),
    /** 100 µm of lacquer. */
    MICROMETRES_100(22),
    /** 150 µm of lacquer. */
    MICROMETRES_150(31);

    private final int kelvin;

    Lacquer(int kelvin) {
      this.kelvin = kelvin;
    }
  }

  private BurnThresholds() {}

  /**
   * Returns the threshold.
   *
   * @param surface the surface
   * @param seconds the time of contact; below 0.5 s that of 0.5 s, above 8 h that of 8 h
   * @return the range
   * @throws org.meltwright.units.ProblemException if the time is negative
   */
  public static TemperatureRange threshold(Surface surface, double seconds) {
    CHECK.between(seconds, 0, 1e9, "time of contact in s");
    int column = 0;
    while (column < SECONDS.length - 1 && Limit.exceeds(seconds, SECONDS[column])) {
      column++;
    }
    return TemperatureRange.ofCelsius(
        Surface.cell(surface.low, column), Surface.cell(surface.high, column));
  }

  /**
   * Returns the threshold of lacquered metal for a touch of half a second.
   *
   * <p>For example, bare metal from 67 °C and 100 µm of lacquer begin at 89 °C.
   *
   * @param lacquer the lacquer
   * @return the range
   */
  public static TemperatureRange ofLacqueredMetal(Lacquer lacquer) {
    TemperatureRange bare = threshold(Surface.BARE_METAL, 0.5);
    return TemperatureRange.ofCelsius(
        bare.low().celsius() + lacquer.kelvin, bare.high().celsius() + lacquer.kelvin);
  }

  /**
   * Returns what a contact does.
   *
   * @param surface the surface
   * @param temperature its temperature
   * @param seconds the time of contact
   * @return the outcome; a threshold counts as reached at its value
   */
  public static Outcome outcome(Surface surface, TemperaturePoint temperature, double seconds) {
    TemperatureRange range = threshold(surface, seconds);
    if (!Limit.reaches(temperature, range.low())) {
      return Outcome.BELOW_THRESHOLD;
    }
    return Limit.exceeds(temperature, range.high()) ? Outcome.BURNS : Outcome.MAY_BURN;
  }
}
