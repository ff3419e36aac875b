// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.meltwright.units.Messages;

/**
 * A hazard class of the law on classification and labelling, as far as this package speaks of it.
 *
 * <p>Classes up to {@link #FLAMMABLE_LIQUID} are worked out from the ingredients; the rest need a
 * test of the mixture, see {@link HazardMixtureBuilder#tested}.
 *
 * <p>What one class says of a cake with two per cent of colophony, and a class that only a test can
 * tell:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition cake =
 *     Composition.ofParts(List.of(shelf.require("beeswax"), shelf.require("colophony")), 98, 2);
 * HazardReview review = HazardReview.ofCake(cake, RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * review.finding(HazardClass.SKIN_SENSITISATION).category().orElseThrow(); // ONE
 * HazardClass.SKIN_SENSITISATION.name(Locale.ENGLISH); // Skin sensitisation
 * HazardClass.FLAMMABLE_SOLID.isComputed(); // false
 * }</pre>
 */
public enum HazardClass {
  /** Acute toxicity when swallowed. */
  ACUTE_ORAL("acute-oral"),
  /** Acute toxicity through the skin. */
  ACUTE_DERMAL("acute-dermal"),
  /** Acute toxicity when inhaled, as gas, vapour, dust or mist. */
  ACUTE_INHALATION("acute-inhalation"),
  /** Skin corrosion (categories 1, 1A to 1C) and irritation (2). */
  SKIN("skin"),
  /** Serious eye damage (1) and eye irritation (2). */
  EYE("eye"),
  /** Respiratory sensitisation. */
  RESPIRATORY_SENSITISATION("respiratory-sensitisation"),
  /** Skin sensitisation. */
  SKIN_SENSITISATION("skin-sensitisation"),
  /** Germ-cell mutagenicity. */
  MUTAGENICITY("mutagenicity"),
  /** Carcinogenicity. */
  CARCINOGENICITY("carcinogenicity"),
  /** Reproductive toxicity: fertility and development. */
  REPRODUCTION("reproduction"),
  /** Effects on or through breast-feeding. */
  LACTATION("lactation"),
  /** Damage to organs after a single exposure (1 and 2). */
  STOT_SINGLE("stot-single"),
  /** Irritation of the airways after a single exposure (3, H335). */
  STOT_SINGLE_IRRITATION("stot-single-irritation"),
  /** Drowsiness after a single exposure (3, H336). */
  STOT_SINGLE_NARCOSIS("stot-single-narcosis"),
  /** Damage to organs after repeated exposure. */
  STOT_REPEATED("stot-repeated"),
  /** Aspiration hazard, of liquids only. */
  ASPIRATION("aspiration"),
  /** Short-term hazard to water. */
  AQUATIC_ACUTE("aquatic-acute"),
  /** Long-term hazard to water. */
  AQUATIC_CHRONIC("aquatic-chronic"),
  /** Hazard to the ozone layer. */
  OZONE("ozone"),
  /** Endocrine disruption in humans. */
  ENDOCRINE_HUMAN("endocrine-human"),
  /** Endocrine disruption in the environment. */
  ENDOCRINE_ENVIRONMENT("endocrine-environment"),
  /** Persistent, bioaccumulative and toxic. */
  PBT("pbt"),
  /** Very persistent and very bioaccumulative. */
  VPVB("vpvb"),
  /** Persistent, mobile and toxic. */
  PMT("pmt"),
  /** Very persistent and very mobile. */
  VPVM("vpvm"),
  /** Flammable liquid. */
  FLAMMABLE_LIQUID("flammable-liquid"),
  /** Flammable solid: never computed, only stated from a test of the mixture. */
  FLAMMABLE_SOLID("flammable-solid"),
  /** Oxidising solid or liquid: never computed, only stated from a test of the mixture. */
  OXIDISING("oxidising"),
  /** Contact with water frees flammable gas: never computed, only stated from a test. */
  WATER_REACTIVE("water-reactive"),
  /** Corrosive to metals; needs a test. */
  METAL_CORROSION("metal-corrosion"),
  /** Aerosols; need a test. */
  AEROSOL("aerosol"),
  /** An explosive; needs a test, and its kinds are not held here. */
  EXPLOSIVE("explosive"),
  /** A desensitised explosive; needs a test, and its kinds are not held here. */
  DESENSITISED_EXPLOSIVE("desensitised-explosive"),
  /** A flammable gas; needs a test, and its kinds are not held here. */
  FLAMMABLE_GAS("flammable-gas"),
  /** An oxidising gas; needs a test, and its kinds are not held here. */
  OXIDISING_GAS("oxidising-gas"),
  /** A gas under pressure; needs a test, and its kinds are not held here. */
  GAS_UNDER_PRESSURE("gas-under-pressure"),
  /** A chemical under pressure; needs a test, and its kinds are not held here. */
  CHEMICAL_UNDER_PRESSURE("chemical-under-pressure"),
  /** What decomposes by itself; needs a test, and its kinds are not held here. */
  SELF_REACTIVE("self-reactive"),
  /** An organic peroxide; needs a test, and its kinds are not held here. */
  ORGANIC_PEROXIDE("organic-peroxide"),
  /** What catches fire in the air by itself; needs a test, and its kinds are not held here. */
  PYROPHORIC("pyrophoric"),
  /** What heats itself in the air; needs a test, and its kinds are not held here. */
  SELF_HEATING("self-heating");

  private final String id;

  HazardClass(String id) {
    this.id = id;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code skin-sensitisation}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the name of the class.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the name
   */
  public String name(Locale locale) {
    return Messages.beside(HazardClass.class).text("class." + id, locale);
  }

  /**
   * Tells whether the class is worked out from the ingredients.
   *
   * @return whether it is; the others need a test of the mixture, and are open where an ingredient
   *     is in them
   */
  public boolean isComputed() {
    return compareTo(FLAMMABLE_SOLID) < 0;
  }

  /** Whether a mixture in it is notified to the poison centres: health and physical hazards. */
  boolean isNotified() {
    return switch (this) {
      case AQUATIC_ACUTE, AQUATIC_CHRONIC, OZONE, ENDOCRINE_ENVIRONMENT -> false;
      case PBT, VPVB, PMT, VPVM -> false;
      default -> true;
    };
  }

  static Optional<HazardClass> find(String id) {
    return Stream.of(values()).filter(c -> c.id.equals(id)).findFirst();
  }

  static HazardClass ofId(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException(id));
  }
}
