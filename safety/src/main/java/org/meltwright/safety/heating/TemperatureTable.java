// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * The one temperature table: every band that a rule of this library knows, and no other.
 *
 * <p>The bands are policy after common practice. 90 °C and 200 °F are two limits: 200 °F is 93.33
 * °C, which reaches the hard ceiling. The table binds the wax; the pot floor has findings of its
 * own.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Limit.exceeds(ofCelsius(90), TemperatureTable.TARGET); // false
 * Limit.reaches(ofFahrenheit(200), TemperatureTable.HARD_CEILING); // true
 * TemperatureTable.HARD_CEILING.minus(TemperatureTable.TARGET); // 3.3 K
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class TemperatureTable {

  /** Above this, 85 °C, wax darkens with the hours. Begins beyond its value. */
  public static final TemperaturePoint DARKENING = TemperaturePoint.ofCelsius(85);

  /** The target ceiling, 90.0 °C, which is 194 °F. Passed only beyond its value. */
  public static final TemperaturePoint TARGET = TemperaturePoint.ofCelsius(90);

  /** The hard ceiling, 93.3 °C: 200 °F rounded down. Reached at its value. */
  public static final TemperaturePoint HARD_CEILING = TemperaturePoint.ofCelsius(93.3);

  /** From this, 110 °C, the fume text is shown. Reached at its value; not a measured onset. */
  public static final TemperaturePoint FUME = TemperaturePoint.ofCelsius(110);

  /** How far below the lowest usable flash point wax must stay, 50 K. */
  public static final TemperatureDifference FLASH_MARGIN = TemperatureDifference.ofKelvin(50);

  private TemperatureTable() {}
}
