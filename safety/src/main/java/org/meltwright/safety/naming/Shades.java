// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Set;

/**
 * Words behind a name that tell a shade or a number and change nothing: "light", "hell", "no. 3".
 */
final class Shades {

  private static final Set<String> WORDS =
      Set.of(
          "light",
          "deep",
          "dark",
          "pale",
          "medium",
          "middle",
          "hell",
          "dunkel",
          "mittel",
          "tief",
          "clair",
          "claire",
          "fonce",
          "foncee",
          "moyen",
          "moyenne",
          "chiaro",
          "chiara",
          "scuro",
          "scura",
          "medio",
          "media",
          "claro",
          "clara",
          "oscuro",
          "oscura",
          "heller",
          "helles",
          "helle",
          "dunkler",
          "dunkles",
          "dunkle",
          "warm",
          "cool",
          "transparent",
          "no",
          "nr",
          "num");

  private Shades() {}

  static boolean isShade(String word) {
    return WORDS.contains(word) || word.chars().allMatch(Character::isDigit);
  }

  /** Whether all words from a letter on tell shades. */
  static boolean areAllFrom(FoldedText text, int letter) {
    for (int i = letter; i < text.length(); i = text.end(text.wordOf(i))) {
      if (!isShade(text.word(text.wordOf(i)))) {
        return false;
      }
    }
    return true;
  }
}
