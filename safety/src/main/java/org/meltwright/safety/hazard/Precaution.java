// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Why a precautionary statement stands on a label, or was left out.
 *
 * <p>Turpentine for the public: fire and the lungs come before comfort:
 *
 * <pre>{@code
 * RuleSet rules = RuleSet.clpOn(LocalDate.of(2026, 6, 1));
 * HazardMixture turpentine =
 *     HazardMixture.builder(rules)
 *         .cas("8006-64-2", 100)
 *         .state(PhysicalState.LIQUID)
 *         .viscosityAt40(1.5)
 *         .flashPoint(ofCelsius(35))
 *         .build();
 * HazardLabel label =
 *     HazardLabel.of(HazardReview.of(turpentine, rules), LabelDetails.builder().build());
 * Precaution first = label.precautions().get(1);
 * first.code(); // P210
 * first.verdict(); // CORE
 * first.reason(Locale.ENGLISH); // never left out: Flammable liquids
 * label.precautions().get(0).code(); // P102
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param code the code, for example "P210"
 * @param verdict what became of it
 * @param askedBy the classes of the mixture that ask for it or offer it
 * @param other the statement that beats it, or the note of the law that asks for it; else empty
 */
public record Precaution(
    String code, Verdict verdict, List<HazardClass> askedBy, Optional<String> other) {

  /** What becomes of a statement that is offered. */
  public enum Verdict {
    /** Printed, never cut: it prevents the accident, or its omission would make it worse. */
    CORE("core", true),
    /** Printed for the public. */
    PUBLIC("public", true),
    /** Printed because a note of the law asks for it. */
    NOTE("note", true),
    /** Printed, since there was room up to the usual number. */
    FILL("fill", true),
    /** Left out: another says it already. */
    BEATEN("beaten", false),
    /** Left out: the usual number was reached. */
    NO_ROOM("no-room", false),
    /** Left out: of less weight than what the classes of this mixture need. */
    NOT_NEEDED("not-needed", false),
    /** Left out: it would have to describe a treatment of its own. */
    NEEDS_TREATMENT("needs-treatment", false);

    private final String id;
    private final boolean printed;

    Verdict(String id, boolean printed) {
      this.id = id;
      this.printed = printed;
    }

    /**
     * Returns the stable id.
     *
     * @return for example {@code no-room}
     */
    public String id() {
      return id;
    }

    /**
     * Tells whether the statement is printed.
     *
     * @return whether it is
     */
    public boolean isPrinted() {
      return printed;
    }
  }

  public Precaution {
    askedBy = List.copyOf(askedBy);
  }

  /**
   * Returns the reason for the reader.
   *
   * @param locale the reader's language; German for {@code de}, else English
   * @return part of a sentence
   */
  public String reason(Locale locale) {
    String classes = askedBy.stream().map(c -> c.name(locale)).collect(Collectors.joining("; "));
    return HazardTexts.label(
        "precaution." + verdict.id, locale, Map.of("classes", classes, "other", other.orElse("")));
  }
}
