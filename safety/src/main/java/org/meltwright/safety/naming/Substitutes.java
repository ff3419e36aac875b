// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Set;

/**
 * Words that say of a colour that it is made of something else: "hue", "Ersatz", "imitation". They
 * stand behind it or, with some, before it; where it is not plain which of two colours they speak
 * of, the one that comes first is meant.
 */
final class Substitutes {

  private static final Set<String> BEHIND =
      Set.of("hue", "imitation", "imitat", "ersatz", "ton", "replacement");

  private static final Set<String> BEFORE = Set.of("imitation", "imitat", "ersatz", "ton");

  /** What may stand between "imitation" or "ton" and the colour. */
  private static final Set<String> LINKS =
      Set.of("de", "du", "d", "des", "la", "le", "of", "for", "fuer", "von");

  private Substitutes() {}

  static boolean isSaidIn(FoldedText text) {
    for (int word = 0; word < text.words(); word++) {
      if (BEHIND.contains(text.word(word))) {
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
      return BEHIND.contains(text.part(end, text.end(text.wordOf(end))));
    }
    int word = text.wordOf(end - 1) + 1;
    boolean apart = false;
    while (word < text.words() && Shades.isShade(text.word(word))) {
      apart |= text.isAfterComma(word);
      word++;
    }
    if (word == text.words() || !BEHIND.contains(text.word(word))) {
      return false;
    }
    boolean behindComma = apart || text.isAfterComma(word);
    return behindComma ? closes(text, word) : !links(text, word + 1);
  }

  /**
   * Behind a comma it must be the last word before the next: not "Bleiweiß, Ersatz für Zinkweiß".
   */
  private static boolean closes(FoldedText text, int word) {
    boolean last = word + 1 == text.words() || text.isAfterComma(word + 1);
    return last && !text.word(word).equals("ton");
  }

  private static boolean links(FoldedText text, int word) {
    return text.isDirect(word) && LINKS.contains(text.word(word));
  }

  private static boolean isSaidBefore(FoldedText text, int first) {
    int word = first;
    while (text.isDirect(word) && LINKS.contains(text.word(word - 1))) {
      word--;
    }
    if (word == 0 || text.isAfterComma(word) || !BEFORE.contains(text.word(word - 1))) {
      return false;
    }
    return word < first || word == 1 || text.isAfterComma(word - 1);
  }
}
