// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;

/**
 * A hazard pictogram, by the code of the law.
 *
 * <p>The symbol that a printed label draws, and the words for a reader who cannot see it:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardCategory water = HazardCategory.parse("Aquatic Chronic 2 H411");
 * Pictogram symbol = LabelElements.of(List.of(water), rules).pictograms().get(0); // GHS09
 * symbol.symbol(Locale.ENGLISH); // environment
 * symbol.symbol(Locale.GERMAN); // Umwelt
 * }</pre>
 */
public enum Pictogram {
  /** Exploding bomb. */
  GHS01,
  /** Flame. */
  GHS02,
  /** Flame over circle. */
  GHS03,
  /** Gas cylinder. */
  GHS04,
  /** Corrosion. */
  GHS05,
  /** Skull and crossbones. */
  GHS06,
  /** Exclamation mark. */
  GHS07,
  /** Health hazard. */
  GHS08,
  /** Environment. */
  GHS09;

  /**
   * Returns what the symbol shows.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "skull and crossbones"
   */
  public String symbol(Locale locale) {
    return HazardTexts.text("pictogram." + name(), locale);
  }
}
