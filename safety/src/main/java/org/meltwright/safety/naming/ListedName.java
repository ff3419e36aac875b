// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Set;

/**
 * One name of the list.
 *
 * @param hazard what it stands for
 * @param text the name as the list writes it
 * @param language the language it belongs to, which says how its words end
 * @param use where in a text it counts
 * @param letters how many letters it has
 * @param isSubstitute whether the name itself says that it is made of something else
 */
record ListedName(
    ListedHazard hazard,
    String text,
    Language language,
    Use use,
    int letters,
    boolean isSubstitute) {

  /** From here on a German name also stands for a compound that begins with it. */
  private static final int LEAST_FIRST_PART = 6;

  /** From here on the German name of a pigment also stands for a compound that ends with it. */
  private static final int LEAST_LAST_PART = 7;

  private static final Set<NameKind> COLOURS = Set.of(NameKind.PIGMENT, NameKind.AMBIGUOUS_NAME);

  /** How the words of a name end in the plural and, in German, otherwise. */
  enum Language {
    ENGLISH("en", 1, "s es"),
    GERMAN("de", 2, "e n en s es er em se sen"),
    FRENCH("fr", 4, "s x"),
    ITALIAN("it", 8, ""),
    SPANISH("es", 16, "s es");

    /** All of them as a set of bits. */
    static final int ALL = ENGLISH.bit | GERMAN.bit | FRENCH.bit | ITALIAN.bit | SPANISH.bit;

    private final String id;
    private final int bit;
    private final String endings;

    Language(String id, int bit, String endings) {
      this.id = id;
      this.bit = bit;
      this.endings = " " + endings + " ";
    }

    String id() {
      return id;
    }

    /** Whether it is in a set of bits. */
    boolean isIn(int languages) {
      return (languages & bit) != 0;
    }

    /** The languages in which a word may end so, as a set of bits. */
    static int endingWith(String ending) {
      String word = " " + ending + " ";
      int languages = 0;
      for (Language language : values()) {
        languages |= language.endings.contains(word) ? language.bit : 0;
      }
      return languages;
    }
  }

  /** Where in a text a name counts. */
  enum Use {
    /** Wherever its words stand. */
    ANYWHERE,
    /** As the whole text only. */
    ALONE,
    /** As the last part of a German word. */
    LAST_PART
  }

  /** Whether nothing is told of it, and what stands inside it is cut out. */
  boolean isFalseFriend() {
    return hazard.kind() == NameKind.FALSE_FRIEND || isOrdinaryPigment();
  }

  boolean isOrdinaryPigment() {
    return hazard.kind() == NameKind.ORDINARY_PIGMENT;
  }

  /** Whether the list itself writes a comma into it: "paraffin oil, cosmetic". */
  boolean hasComma() {
    return text.indexOf(',') >= 0;
  }

  private boolean isGenericWord() {
    return hazard.kind() == NameKind.GENERIC_WORD;
  }

  /** Whether a German word that begins with it is meant too: "Mennigegrund", "Bleiglasur". */
  boolean isFirstPart() {
    return language == Language.GERMAN
        && use == Use.ANYWHERE
        && !isFalseFriend()
        && (isGenericWord() || letters >= LEAST_FIRST_PART);
  }

  /** Whether a German word that ends with it is meant too: "Naturzinnober", "Schwarzlack". */
  boolean isLastPart() {
    boolean pigment = COLOURS.contains(hazard.kind()) && hazard.isPowder();
    return use == Use.LAST_PART
        || (use == Use.ANYWHERE
            && language == Language.GERMAN
            && pigment
            && letters >= LEAST_LAST_PART);
  }
}
