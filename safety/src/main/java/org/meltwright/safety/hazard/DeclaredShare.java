// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.meltwright.core.material.Material;

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
 *     HazardMixture.builder(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1))).build();
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
    Optional<String> colourIndexName,
    double lowPercent,
    double highPercent) {

  static DeclaredShare of(Material material, double percent) {
    String names = colourIndexNames(material);
    return new DeclaredShare(
        material.name(Locale.ENGLISH),
        material.name(Locale.GERMAN),
        names.isEmpty() ? Optional.empty() : Optional.of(names),
        percent,
        percent);
  }

  static DeclaredShare of(SubstanceHazards hazards, double lowPercent, double highPercent) {
    return new DeclaredShare(
        hazards.name(),
        Catalogued.germanName(hazards).orElse(hazards.name()),
        Optional.empty(),
        lowPercent,
        highPercent);
  }

  static DeclaredShare rest(double lowPercent, double highPercent) {
    return new DeclaredShare(
        HazardTexts.label("rest", Locale.ENGLISH),
        HazardTexts.label("rest", Locale.GERMAN),
        Optional.empty(),
        lowPercent,
        highPercent);
  }

  SubstanceHazards asRest() {
    return new SubstanceSheet(englishName, HazardEvidence.REST_PRESUMED_NONE)
        .germanName(germanName)
        .build();
  }

  /** The material's own Colour Index name, else those of what it is made of. */
  private static String colourIndexNames(Material material) {
    return material
        .colourIndexName()
        .orElseGet(
            () ->
                material.constituents().stream()
                    .map(c -> colourIndexNames(c.material()))
                    .filter(name -> !name.isEmpty())
                    .distinct()
                    .collect(Collectors.joining(", ")));
  }

  /**
   * Returns the name with the Colour Index name.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "Zinc white (PW4)"
   */
  public String name(Locale locale) {
    String name = HazardTexts.isGerman(locale) ? germanName : englishName;
    return colourIndexName.map(ci -> name + " (" + ci + ")").orElse(name);
  }
}
