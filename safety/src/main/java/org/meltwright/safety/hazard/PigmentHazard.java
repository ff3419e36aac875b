// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import org.meltwright.core.source.Knowledge;
import org.meltwright.core.source.Source;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What a studio must know of one pigment: the heat it may meet and the care its dust asks for.
 *
 * <p>What a painter who wants to use a heat gun must know of cadmium red:
 *
 * <pre>{@code
 * PigmentHazard red = PigmentHazards.byId("cadmium-red").orElseThrow();
 * red.heatUse(); // MELTED_ONLY
 * red.dust(); // TOXIC_METAL
 * red.holds("Cd"); // true
 * red.reason(Locale.ENGLISH); // Cadmium: melted only, on a plate or palette;…
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param id the stable id, that of the catalogue's material where there is one
 * @param name the name in both languages
 * @param colourIndexNames Colour Index generic names, for example "PY37"; several pigments may
 *     share one
 * @param casNumbers CAS registry numbers; empty where none is established
 * @param elements symbols of the elements to be treated as toxic, for example "Cd"
 * @param heatUse how much heat it may meet
 * @param dust how carefully its powder is handled
 * @param reasonKey the key of the reason in the message bundle
 * @param source where the metal or the heat limit is named
 * @param knowledge how it came to us
 */
public record PigmentHazard(
    String id,
    Bilingual name,
    List<String> colourIndexNames,
    List<String> casNumbers,
    List<String> elements,
    HeatUse heatUse,
    DustClass dust,
    String reasonKey,
    Source source,
    Knowledge knowledge) {

  private static final Messages TEXTS = Messages.beside(PigmentHazard.class);
  private static final String REASON = "pigment.reason.";

  /** Draws a problem if there is no text of that key. */
  public PigmentHazard {
    if (TEXTS.find(REASON + reasonKey, Locale.ENGLISH).isEmpty()) {
      throw new ProblemException(Problem.of(HazardProblem.PIGMENT_REASON, reasonKey));
    }
    colourIndexNames = List.copyOf(colourIndexNames);
    casNumbers = List.copyOf(casNumbers);
    elements = List.copyOf(elements);
  }

  /**
   * Returns the name.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the name
   */
  public String name(Locale locale) {
    return name.in(locale);
  }

  /**
   * Says why its heat is limited.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or two sentences
   */
  public String reason(Locale locale) {
    return TEXTS.text(REASON + reasonKey, locale);
  }

  /**
   * Says how to handle its dust.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or two sentences
   */
  public String dustAdvice(Locale locale) {
    return TEXTS.text("pigment.dust." + dust.id(), locale);
  }

  /**
   * Tells whether it holds an element.
   *
   * @param symbol the symbol of the element, for example "Pb"
   * @return whether the element is among those to be treated as toxic
   */
  public boolean holds(String symbol) {
    return elements.contains(symbol);
  }
}
