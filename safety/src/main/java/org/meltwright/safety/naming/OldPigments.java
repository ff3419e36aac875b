// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.HashSet;
import java.util.Set;

/**
 * Tells a nameless pigment of old: a text that says pigment, or stands for one, and old, or a year
 * before 1970, and beside these nothing but its colour and where it was found. Until it is known it
 * is lead, unless it is blue, brown or black.
 */
final class OldPigments {

  /** The entry of the list. */
  static final String ID = "old-pigment";

  private static final int LONGEST = 24;
  private static final int FIRST_YEAR = 1700;
  private static final int YEAR_OF_CHANGE = 1970;

  private static final Set<String> OLD =
      Set.of(
          "old",
          "alt",
          "alte",
          "alter",
          "altes",
          "alten",
          "altem",
          "vieux",
          "vieil",
          "vieille",
          "vieilles",
          "ancien",
          "ancienne",
          "anciens",
          "anciennes",
          "vintage");

  private static final Set<String> PIGMENT =
      Set.of(
          "pigment",
          "pigments",
          "pigmente",
          "pigmenten",
          "farbpulver",
          "farbpigment",
          "pulver",
          "powder",
          "poudre",
          "farbe",
          "farben",
          "paint",
          "paints",
          "colour",
          "colours",
          "color",
          "colors",
          "couleur",
          "couleurs",
          "peinture");

  private static final Set<String> COLOUR_OF_LEAD =
      Set.of(
          "yellow", "orange", "red", "white", "green", "gelb", "gelbe", "gelber", "gelbes",
          "gelben", "oranges", "rot", "rote", "roter", "rotes", "roten", "weiss", "weisse",
          "weisser", "weisses", "weissen", "gruen", "gruene", "gruener", "gruenes", "gruenen",
          "jaune", "jaunes", "rouge", "rouges", "blanc", "blanche", "vert", "verte", "verts");

  private static final Set<String> BESIDE =
      Set.of(
          "unknown",
          "unnamed",
          "unlabelled",
          "unlabeled",
          "dry",
          "from",
          "an",
          "a",
          "the",
          "of",
          "in",
          "box",
          "jar",
          "tin",
          "tube",
          "with",
          "without",
          "no",
          "label",
          "unbekannt",
          "unbekannte",
          "unbekannter",
          "unbekanntes",
          "unbekannten",
          "unbeschriftet",
          "unbeschriftetes",
          "trocken",
          "trockenes",
          "aus",
          "einer",
          "einem",
          "dem",
          "der",
          "kasten",
          "kiste",
          "schachtel",
          "dose",
          "glas",
          "ohne",
          "etikett",
          "inconnu",
          "inconnue",
          "sec",
          "d",
          "de",
          "du",
          "une",
          "un",
          "boite",
          "pot",
          "sans",
          "etiquette",
          "circa",
          "ca",
          "um");

  private OldPigments() {}

  static boolean isOne(FoldedText text, boolean isPigment) {
    Set<String> words = new HashSet<>();
    for (int word = 0; word < text.words(); word++) {
      if (text.end(word) - text.start(word) > LONGEST) {
        return false;
      }
      words.add(text.word(word));
    }
    return words.stream().allMatch(OldPigments::isSaidOfOne)
        && (isPigment || words.stream().anyMatch(PIGMENT::contains))
        && words.stream().anyMatch(word -> OLD.contains(word) || isOldYear(word));
  }

  private static boolean isSaidOfOne(String word) {
    return OLD.contains(word)
        || PIGMENT.contains(word)
        || COLOUR_OF_LEAD.contains(word)
        || BESIDE.contains(word)
        || Shades.isShade(word);
  }

  private static boolean isOldYear(String word) {
    if (word.length() != 4 || !word.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return false;
    }
    int year = Integer.parseInt(word);
    return year >= FIRST_YEAR && year < YEAR_OF_CHANGE;
  }
}
