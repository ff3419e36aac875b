// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;

/**
 * How the temperature of a surface was taken.
 *
 * <p>An infrared thermometer looks at what a surface radiates. Bare metal radiates little and
 * mirrors the room: polished aluminium at 150 °C reads 34 to 44 °C on an instrument set to an
 * emissivity of 0.95 in a room of 22 °C (worked out by the total-radiation law with emissivities of
 * 0.05 and 0.10). Such a reading, and one of which nobody says how it was taken, can show that
 * something is too hot, never that it is not.
 *
 * <p>For example:
 *
 * <pre>{@code
 * SurfaceMethod.INFRARED_ON_BARE_METAL.isReliable(); // false
 * SurfaceMethod.INFRARED_ON_MATT.isReliable(); // true
 * }</pre>
 */
public enum SurfaceMethod {
  /** A probe that touches the surface. */
  PROBE(true),
  /** Infrared, with paint, matt tape or wax under the spot. */
  INFRARED_ON_MATT(true),
  /** Infrared on bare metal. */
  INFRARED_ON_BARE_METAL(false);

  private final boolean reliable;

  SurfaceMethod(boolean reliable) {
    this.reliable = reliable;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code infrared-on-matt}
   */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Tells whether a reading taken so can be held against a limit in both directions.
   *
   * @return whether it can; else it counts upwards only
   */
  public boolean isReliable() {
    return reliable;
  }
}
