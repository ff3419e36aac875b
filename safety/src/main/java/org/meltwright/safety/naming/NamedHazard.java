// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.units.Messages;

/**
 * One hazard that a name or number tells: what, by what, and whether it holds or is only asked for.
 *
 * <p>A rule that refuses what is named like a hazard, and asks for the rest:
 *
 * <pre>{@code
 * NamedHazard old = HazardNames.ofName("Mennige, alt").get(0);
 * old.isBinding(); // true
 * old.heatUse(); // NEVER_HEATED
 * old.text(Locale.ENGLISH); // “Mennige”: named like “Red lead” (word; lead), never heated: ask for…
 * NamedHazard hue = HazardNames.ofName("cadmium yellow hue").get(0);
 * hue.isBinding(); // false
 * hue.isAskedFor(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param hazard the entry of the list
 * @param listed the list's own name for it, or the number
 * @param found what was written in the name, or the number
 * @param evidence by what it was found
 * @param standing whether the name decides
 * @param against the number or Colour Index name that says something milder; empty if none does
 */
public record NamedHazard(
    ListedHazard hazard,
    String listed,
    String found,
    Evidence evidence,
    Standing standing,
    Optional<String> against) {

  /** What holds first; of these less heat, then more care with dust, then the better evidence. */
  static final Comparator<NamedHazard> WORST_FIRST =
      Comparator.comparing((NamedHazard n) -> !n.isBinding())
          .thenComparing(NamedHazard::heatUse)
          .thenComparing(NamedHazard::dust, ListedHazard.DUST_STRICTEST_FIRST)
          .thenComparing(NamedHazard::standing)
          .thenComparing(NamedHazard::evidence)
          .thenComparing(n -> n.hazard().id());

  /** By what a hazard was found, the best evidence first. */
  public enum Evidence {
    /** A CAS registry number. */
    CAS,
    /** A Colour Index generic name. */
    COLOUR_INDEX_NAME,
    /** A word of the name. */
    WORD
  }

  /** Whether a name decides what it stands for. */
  public enum Standing {
    /** It does. */
    NAMED,
    /** Several things bear the name; the worst of them holds until a number says which it is. */
    AMBIGUOUS,
    /** It says that it is made of something else ("hue", "Ersatz"): asked for, nothing refused. */
    SUBSTITUTE
  }

  /**
   * Returns how much heat it may meet.
   *
   * @return that of the entry; of a substitute never stricter than melted only
   */
  public HeatUse heatUse() {
    boolean milder = standing == Standing.SUBSTITUTE && hazard.heatUse() == HeatUse.NEVER_HEATED;
    return milder ? HeatUse.MELTED_ONLY : hazard.heatUse();
  }

  /**
   * Returns how carefully its powder is handled.
   *
   * @return that of the entry; of a substitute never stricter than toxic metal; empty for what is
   *     no powder
   */
  public Optional<DustClass> dust() {
    boolean milder = standing == Standing.SUBSTITUTE;
    return hazard
        .dust()
        .map(d -> milder && d == DustClass.REFUSE_POWDER ? DustClass.TOXIC_METAL : d);
  }

  /**
   * Tells whether its limits hold, and not only a question.
   *
   * @return false for what says that it is made of something else
   */
  public boolean isBinding() {
    return standing != Standing.SUBSTITUTE;
  }

  /**
   * Tells whether all that the name tells is that an oil dries, and that rags with it heat up.
   *
   * @return whether it is a drying oil that may be heated
   */
  public boolean isDryingOil() {
    return hazard.kind() == NameKind.OIL_RESIN && heatUse() == HeatUse.NO_LIMIT_KNOWN;
  }

  /**
   * Tells whether the CAS number, the Colour Index name or the data sheet should be asked for.
   *
   * @return whether a word alone told it
   */
  public boolean isAskedFor() {
    return evidence == Evidence.WORD;
  }

  /**
   * Says it in one line, with what to ask for.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence, or two where a number says something milder
   */
  public String text(Locale locale) {
    Messages words = Messages.beside(NamedHazard.class);
    Map<String, String> values =
        Map.of(
            "found", found,
            "what", what(words, locale),
            "is", hazard.text(locale),
            "heat", heatUse().id(),
            "ask", hazard.isPowder() ? "number" : "sheet");
    String said = words.text("named." + key(), locale, values);
    return against
        .map(number -> said + " " + words.text("named.against", locale, Map.of("number", number)))
        .orElse(said);
  }

  private String key() {
    return switch (evidence) {
      case CAS -> "cas";
      case COLOUR_INDEX_NAME -> "colour-index-name";
      case WORD ->
          switch (standing) {
            case NAMED -> hazard.kind() == NameKind.GENERIC_WORD ? "generic" : "word";
            case AMBIGUOUS -> "ambiguous";
            case SUBSTITUTE -> "substitute";
          };
    };
  }

  private String what(Messages words, Locale locale) {
    Optional<PigmentHazard> pigment = hazard.pigment();
    return pigment
        .map(p -> words.text("named.quoted", locale, Map.of("name", p.name(locale))))
        .orElseGet(() -> hazard.kind().label(locale));
  }
}
