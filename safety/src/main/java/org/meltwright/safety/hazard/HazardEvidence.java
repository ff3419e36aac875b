// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/** What an ingredient's classification rests on. */
public enum HazardEvidence {
  /** A harmonised entry of the law; it binds for the classes that it names. */
  HARMONISED("harmonised"),
  /** The user's own safety data sheet or test. */
  DATA_SHEET("data-sheet"),
  /** No harmonised entry, and suppliers usually classify it in no class: an assumption, shown. */
  PRESUMED_NONE("presumed-none"),
  /** No harmonised entry, and nothing else is known: never "harmless". */
  NO_ENTRY("no-entry"),
  /** Not looked up: no CAS number, or one that the tables here do not hold. */
  NOT_LOOKED_UP("not-looked-up");

  private final String id;

  HazardEvidence(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return for example {@code no-entry}
   */
  public String id() {
    return id;
  }

  /**
   * Tells whether nothing is known that a rule could use.
   *
   * @return whether the ingredient leaves classes open
   */
  public boolean isOpen() {
    return this == NO_ENTRY || this == NOT_LOOKED_UP;
  }
}
