// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.util.Set;

/**
 * Words that say, directly at a name, that it is not in there: "-free", "-frei", "sans", "ohne".
 */
final class Absences {

  private static final Set<String> FREE =
      Set.of("free", "frei", "freie", "freier", "freies", "freien", "freiem");
  private static final Set<String> BEFORE = Set.of("sans", "ohne", "without");
  private static final Set<String> OF = Set.of("of", "from", "von");
  private static final Set<String> AND = Set.of("und", "oder", "and", "or", "et", "ou");
  private static final int LONGEST_FREE = 6;

  /** How many words a hanging hyphen may wait for its "-frei": "blei-, cobalt- und cadmiumfrei". */
  private static final int LONGEST_WAIT = 8;

  private Absences() {}

  /** Whether it is said of what stands from one letter to another. */
  static boolean isSaidOf(FoldedText text, int start, int end) {
    if (!text.isEnd(end)) {
      return FREE.contains(text.part(end, text.end(text.wordOf(end))));
    }
    int next = text.wordOf(end - 1) + 1;
    return (isFree(text, next) && isMeant(text, start, next))
        || (text.hangs(next) && comesFree(text, next))
        || isSaidBefore(text, text.wordOf(start));
  }

  /** With a hyphen always; with a blank only of one word, and not of what "free of" speaks of. */
  private static boolean isMeant(FoldedText text, int start, int free) {
    boolean oneWord = text.wordOf(start) == free - 1;
    boolean ofSomethingElse = text.isDirect(free + 1) && OF.contains(text.word(free + 1));
    return text.isHyphenated(free) || (oneWord && !ofSomethingElse);
  }

  private static boolean isFree(FoldedText text, int word) {
    return text.isDirect(word) && FREE.contains(text.word(word));
  }

  private static boolean isSaidBefore(FoldedText text, int first) {
    if (!text.isDirect(first)) {
      return false;
    }
    String before = text.word(first - 1);
    return BEFORE.contains(before)
        || (OF.contains(before) && text.isDirect(first - 1) && isFreeWord(text, first - 2));
  }

  private static boolean isFreeWord(FoldedText text, int word) {
    return FREE.contains(text.word(word));
  }

  private static boolean comesFree(FoldedText text, int from) {
    int last = Math.min(text.words(), from + LONGEST_WAIT);
    for (int word = from; word < last; word++) {
      if (endsFree(text.word(word)) || isFree(text, word + 1)) {
        return true;
      }
      if (!AND.contains(text.word(word)) && !text.hangs(word + 1)) {
        return false;
      }
    }
    return false;
  }

  private static boolean endsFree(String word) {
    for (int length = LONGEST_FREE; length >= 4; length--) {
      if (word.length() > length && FREE.contains(word.substring(word.length() - length))) {
        return true;
      }
    }
    return false;
  }
}
