// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rule of law beside the label that the mixture may fall under: a pointer, not an answer.
 *
 * <p>A pure cadmium yellow, which is a carcinogen by its own entry:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture mixture =
 *     HazardMixture.builder(rules).cas("8012-89-3", 90).cas("1306-23-6", 10).build();
 * HazardReview.of(mixture, rules).notices(); // [CADMIUM_PAINT, CMR_TO_THE_PUBLIC, NOTIFICATION]
 * LegalNotice.CADMIUM_PAINT.text(Locale.ENGLISH); // Cadmium in paints is restricted;…
 * }</pre>
 */
public enum LegalNotice {
  /** Lead carbonates and sulphates in paints (REACH, Annex XVII, entries 16 and 17). */
  LEAD_PAINT("lead-paint"),
  /** Lead chromates (REACH, Annex XIV: sunset 2015-05-21). */
  LEAD_CHROMATE_AUTHORISATION("lead-chromate-authorisation"),
  /** Carcinogens, mutagens and reprotoxicants for the public (REACH, Annex XVII, 28 to 30). */
  CMR_TO_THE_PUBLIC("cmr-to-the-public"),
  /** Notified to the poison centres, with a unique formula identifier (UFI) on the label. */
  NOTIFICATION("notification"),
  /** Cadmium in paints (REACH, Annex XVII, entry 23). */
  CADMIUM_PAINT("cadmium-paint");

  private final String id;

  LegalNotice(String id) {
    this.id = id;
  }

  static Optional<LegalNotice> find(String id) {
    return Stream.of(values()).filter(n -> n.id.equals(id)).findFirst();
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens
   */
  public String id() {
    return id;
  }

  /**
   * Says what to look up.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or two sentences
   */
  public String text(Locale locale) {
    return HazardTexts.text("notice." + id, locale);
  }
}
