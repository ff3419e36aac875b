// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;

/**
 * A line of the mixture as it was given, before it was taken apart and added up.
 *
 * <p>A cake as its maker declares it on the label:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(
 *         List.of(shelf.require("beeswax"), shelf.require("zinc-white")), 70, 30);
 * HazardMixture mixture =
 *     HazardMixture.of(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1))).build();
 * DeclaredShare white = mixture.declared().get(1);
 * white.name(Locale.GERMAN); // Zinkweiß (PW4)
 * white.highPercent(); // 30 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param englishName the English name
 * @param germanName the German name
 * @param colourIndexName the Colour Index names, its own or those of its constituents; empty if
 *     there is none
 * @param lowPercent the low end of its share by mass, in per cent
 * @param highPercent the high end, in per cent
 */
public record DeclaredShare(
    String englishName,
    String germanName,
    String colourIndexName,
    double lowPercent,
    double highPercent) {

  /**
   * Returns the name with the Colour Index name.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "Zinc white (PW4)"
   */
  public String name(Locale locale) {
    String name = HazardTexts.isGerman(locale) ? germanName : englishName;
    return colourIndexName.isEmpty() ? name : name + " (" + colourIndexName + ")";
  }
}
