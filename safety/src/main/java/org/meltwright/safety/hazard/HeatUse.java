// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * How much heat a pigment may meet in a studio, strictest first.
 *
 * <p>On which pigment may hot air be used? On one that is only kept from flames, not on one that is
 * melted only:
 *
 * <pre>{@code
 * HeatUse blue = PigmentHazards.byId("cobalt-blue").orElseThrow().heatUse(); // FLAME_FREE
 * blue.compareTo(HeatUse.FLAME_FREE) >= 0; // true
 * HeatUse prussian = PigmentHazards.byId("prussian-blue").orElseThrow().heatUse();
 * prussian.compareTo(HeatUse.FLAME_FREE) >= 0; // false
 * }</pre>
 */
public enum HeatUse {
  /** Never heated at all. */
  NEVER_HEATED("never-heated"),
  /** Melted only, on a plate or palette: no heat gun, no lamp, no flame. */
  MELTED_ONLY("melted-only"),
  /** Plate, palette, iron or hot air, but no flame. */
  FLAME_FREE("flame-free"),
  /** No limit of its own is known; this is not a word of safety. */
  NO_LIMIT_KNOWN("no-limit-known");

  private final String id;

  HeatUse(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code never-heated}
   */
  public String id() {
    return id;
  }
}
