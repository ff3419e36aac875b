// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.IdentifierScheme;

/** The CAS registry numbers and Colour Index names that stand in a text. */
final class StatedNumbers {

  /** The letters of a Colour Index name, in lower case, as the scheme writes them. */
  private static final Map<String, String> CODES =
      Map.ofEntries(
          Map.entry("w", "W"),
          Map.entry("y", "Y"),
          Map.entry("o", "O"),
          Map.entry("r", "R"),
          Map.entry("v", "V"),
          Map.entry("b", "B"),
          Map.entry("g", "G"),
          Map.entry("br", "Br"),
          Map.entry("bk", "Bk"),
          Map.entry("m", "M"));

  private static final Map<String, String> COLOURS =
      Map.of(
          "white", "W", "yellow", "Y", "orange", "O", "red", "R", "violet", "V", "blue", "B",
          "green", "G", "brown", "Br", "black", "Bk", "metal", "M");

  private static final Set<String> DYE_COLOURS =
      Set.of(
          "yellow", "orange", "red", "violet", "blue", "green", "brown", "black", "gelb", "rot",
          "violett", "blau", "gruen", "braun", "schwarz");

  /** A Colour Index name in one word is no longer than this. */
  private static final int LONGEST = 8;

  private static final int MOST_DIGITS = 3;

  private final FoldedText text;
  private final Set<String> cas = new LinkedHashSet<>();
  private final Set<String> colourIndexNames = new LinkedHashSet<>();

  StatedNumbers(FoldedText text) {
    this.text = text;
    for (int word = 0; word < text.words(); word++) {
      readCas(word);
      readColourIndexName(word);
    }
  }

  Set<String> cas() {
    return cas;
  }

  Set<String> colourIndexNames() {
    return colourIndexNames;
  }

  boolean isEmpty() {
    return cas.isEmpty() && colourIndexNames.isEmpty();
  }

  /** Whether a word begins the Colour Index name of a dye, such as "Solvent Red 24": no solvent. */
  static boolean isDye(FoldedText text, int word) {
    return word + 2 < text.words()
        && text.word(word).equals("solvent")
        && DYE_COLOURS.contains(text.word(word + 1))
        && text.word(word + 2).chars().allMatch(Character::isDigit);
  }

  private void readCas(int word) {
    if (isDigits(word, 7) && text.isHyphenated(word + 1) && text.isHyphenated(word + 2)) {
      if (isDigits(word + 1, 2) && isDigits(word + 2, 1)) {
        String number = text.word(word) + "-" + text.word(word + 1) + "-" + text.word(word + 2);
        addIfAccepted(cas, IdentifierScheme.CAS, number);
      }
    }
  }

  private boolean isDigits(int word, int longest) {
    if (word >= text.words() || text.end(word) - text.start(word) > longest) {
      return false;
    }
    return text.word(word).chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private static void addIfAccepted(Set<String> numbers, IdentifierScheme scheme, String number) {
    if (scheme.accepts(number)) {
      numbers.add(number);
    }
  }

  /** "PY34" and "py35:1", "PY 34", "Pigment Yellow 34". */
  private void readColourIndexName(int word) {
    if (text.end(word) - text.start(word) > LONGEST) {
      return;
    }
    String written = text.word(word);
    int digits = firstDigit(written);
    if (digits < written.length()) {
      addName(code(written.substring(0, digits)), written.substring(digits), word);
    } else if (text.isCapital(word) && text.isDirect(word + 1) && isDigits(word + 1, MOST_DIGITS)) {
      addName(code(written), text.word(word + 1), word + 1);
    } else if (written.equals("pigment") || written.equals("natural")) {
      readInWords(written.substring(0, 1).toUpperCase(Locale.ROOT), word + 1);
    }
  }

  private void readInWords(String group, int word) {
    if (text.isDirect(word) && text.isDirect(word + 1) && isDigits(word + 1, MOST_DIGITS)) {
      String colour = COLOURS.get(text.word(word));
      addName(colour == null ? null : group + colour, text.word(word + 1), word + 1);
    }
  }

  private static int firstDigit(String word) {
    int i = 0;
    while (i < word.length() && !Character.isDigit(word.charAt(i))) {
      i++;
    }
    return i;
  }

  /** The code of a Colour Index name, "py" as "PY"; null if the letters are none. */
  private static @Nullable String code(String letters) {
    if (letters.length() < 2 || (letters.charAt(0) != 'p' && letters.charAt(0) != 'n')) {
      return null;
    }
    String colour = CODES.get(letters.substring(1));
    return colour == null ? null : letters.substring(0, 1).toUpperCase(Locale.ROOT) + colour;
  }

  private void addName(@Nullable String code, String number, int last) {
    if (code != null) {
      String suffix =
          text.isAfterColon(last + 1) && isDigits(last + 1, 2) ? ":" + text.word(last + 1) : "";
      addIfAccepted(colourIndexNames, IdentifierScheme.COLOUR_INDEX_NAME, code + number + suffix);
    }
  }
}
