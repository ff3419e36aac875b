// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * What an ingredient's classification rests on.
 *
 * <p>Zinc oxide has an entry of its own, damar has none and is presumed to need none, cadmium red
 * is excluded from its group by name and stays open:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * rules.find("1314-13-2").orElseThrow().evidence(); // HARMONISED
 * rules.find("9000-16-2").orElseThrow().evidence(); // PRESUMED_NONE
 * HazardEvidence red = rules.find("58339-34-7").orElseThrow().evidence(); // NO_ENTRY
 * red.isOpen(); // true
 * }</pre>
 */
public enum HazardEvidence {
  /** A harmonised entry of the law; it binds for the classes that it names. */
  HARMONISED("harmonised"),
  /** The user's own safety data sheet or test. */
  DATA_SHEET("data-sheet"),
  /** No harmonised entry, and suppliers usually classify it in no class: an assumption, shown. */
  PRESUMED_NONE("presumed-none"),
  /**
   * The part of a mixture that was not named and is held to be in no class: an assumption, shown.
   */
  REST_PRESUMED_NONE("rest-presumed-none"),
  /** No harmonised entry, and nothing else is known: never "harmless". */
  NO_ENTRY("no-entry"),
  /**
   * Not looked up: no CAS number, one that the tables here do not hold, or a change of the law that
   * was not read in full.
   */
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
