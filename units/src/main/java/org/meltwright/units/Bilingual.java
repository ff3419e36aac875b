// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Locale;

/**
 * Words in the two languages of this library.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Bilingual why = new Bilingual("house rule 3", "Hausregel 3");
 * why.in(Locale.GERMAN); // Hausregel 3
 * why.in(Locale.FRENCH); // house rule 3
 * Bilingual.of("school rule").in(Locale.GERMAN); // school rule
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param english the words in English, not blank
 * @param german the words in German, not blank
 */
public record Bilingual(String english, String german) {

  /**
   * Guards the words.
   *
   * @param english the words in English
   * @param german the words in German
   * @throws ProblemException if either is blank
   */
  public Bilingual {
    UnitsProblem.requireName(english, "words");
    UnitsProblem.requireName(german, "words");
  }

  /**
   * Returns words that were given in one language only, for readers of both.
   *
   * @param words the words as a person wrote them
   * @return the same words for both
   * @throws ProblemException if they are blank
   */
  public static Bilingual of(String words) {
    return new Bilingual(words, words);
  }

  /**
   * Returns the words in the reader's language.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return the words
   */
  public String in(Locale locale) {
    return locale.getLanguage().equals(Locale.GERMAN.getLanguage()) ? german : english;
  }

  /**
   * Returns the English words.
   *
   * @return the words
   */
  @Override
  public String toString() {
    return english;
  }
}
