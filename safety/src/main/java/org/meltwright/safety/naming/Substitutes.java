// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Set;

/** Words that say of a colour that it is made of something else: "hue", "Ersatz", "imitation". */
final class Substitutes {

  private static final Set<String> BEFORE_OR_BEHIND =
      Set.of("hue", "imitation", "imitat", "ersatz", "ton", "replacement");

  /** What may stand between "imitation" or "ton" and the colour. */
  private static final Set<String> BETWEEN =
      Set.of("de", "du", "d", "des", "la", "le", "of", "for", "fuer", "von");

  private static final int LONGEST = 11;

  private Substitutes() {}

  static boolean isSaidIn(FoldedText text) {
    for (int word = 0; word < text.words(); word++) {
      if (isSubstitute(text, word)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is said of what stands from one letter to another. */
  static boolean isSaidOf(FoldedText text, int start, int end) {
    return isSaidBehind(text, end) || isSaidBefore(text, text.wordOf(start));
  }

  private static boolean isSaidBehind(FoldedText text, int end) {
    if (!text.isEnd(end)) {
      return BEFORE_OR_BEHIND.contains(rest(text, end));
    }
    int word = text.wordOf(end - 1) + 1;
    while (word < text.words() && Shades.isShade(text.word(word))) {
      word++;
    }
    return word < text.words() && isSubstitute(text, word);
  }

  private static String rest(FoldedText text, int letter) {
    return text.part(letter, text.end(text.wordOf(letter)));
  }

  private static boolean isSaidBefore(FoldedText text, int first) {
    int word = first - 1;
    while (word >= 0 && BETWEEN.contains(text.word(word))) {
      word--;
    }
    return word >= 0 && isSubstitute(text, word) && !text.isAfterComma(word + 1);
  }

  private static boolean isSubstitute(FoldedText text, int word) {
    boolean short_ = text.end(word) - text.start(word) <= LONGEST;
    return short_ && BEFORE_OR_BEHIND.contains(text.word(word));
  }
}
