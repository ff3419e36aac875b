// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** How carefully a dry pigment is handled as powder, strictest first. */
public enum DustClass {
  /** Not to be handled as powder in a studio. */
  REFUSE_POWDER("refuse-powder"),
  /** Holds a metal to be treated as toxic. */
  TOXIC_METAL("toxic-metal"),
  /** Harmful dust without such a metal. */
  HARMFUL("harmful"),
  /** A fine powder, as all dry pigments are. */
  FINE("fine");

  private final String id;

  DustClass(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code toxic-metal}
   */
  public String id() {
    return id;
  }
}
