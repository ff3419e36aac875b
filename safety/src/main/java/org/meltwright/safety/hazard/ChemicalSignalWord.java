// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;

/**
 * The signal word of a label under the law on chemicals.
 *
 * <p>It does not convert into the words of safety signs: "Warning" stands here for as little as an
 * irritated eye, there for possible death.
 *
 * <p>One severe category is enough:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardCategory skin = HazardCategory.parse("Skin Sens. 1 H317");
 * HazardCategory cancer = HazardCategory.parse("Carc. 1B H350");
 * LabelElements.of(List.of(skin), rules).signalWord(); // WARNING
 * LabelElements.of(List.of(skin, cancer), rules).signalWord(); // DANGER
 * ChemicalSignalWord.WARNING.word(Locale.GERMAN); // Achtung
 * }</pre>
 */
public enum ChemicalSignalWord {
  /** For the more severe categories. */
  DANGER("danger", "Danger", "Gefahr"),
  /** For the less severe categories. */
  WARNING("warning", "Warning", "Achtung");

  private final String id;
  private final String english;
  private final String german;

  ChemicalSignalWord(String id, String english, String german) {
    this.id = id;
    this.english = english;
    this.german = german;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case, for example {@code danger}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the word as printed.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "Danger"
   */
  public String word(Locale locale) {
    return HazardTexts.isGerman(locale) ? german : english;
  }
}
