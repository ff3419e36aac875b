// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** How much heat a pigment may meet in a studio, strictest first. */
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
