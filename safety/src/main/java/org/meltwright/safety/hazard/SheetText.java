// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.meltwright.safety.hazard.SheetToken.Kind;

/** Recognises the law's own text behind the code of a statement, as far as a sheet prints it. */
final class SheetText {

  private static final Map<String, List<List<String>>> TEXTS = new HashMap<>();

  static {
    for (String code : Statements.codes()) {
      TEXTS.put(code, List.of(words(code, Locale.ENGLISH), words(code, Locale.GERMAN)));
    }
  }

  private SheetText() {}

  private static List<String> words(String code, Locale locale) {
    return SheetLexer.tokens(SheetLexer.plain(Statements.published(code, locale))).stream()
        .filter(SheetText::isWord)
        .map(SheetWords::key)
        .toList();
  }

  private static boolean isWord(SheetToken token) {
    return token.is(Kind.WORD) || token.is(Kind.NUMBER) || token.is(Kind.RANK);
  }

  /** The place behind the text of a statement; the same place if another text stands there. */
  static int end(List<SheetToken> tokens, int from, String code) {
    int longest = from;
    for (List<String> words : TEXTS.getOrDefault(code, List.of())) {
      longest = Math.max(longest, end(tokens, from, words));
    }
    return longest;
  }

  private static int end(List<SheetToken> tokens, int from, List<String> words) {
    int matched = 0;
    int end = from;
    int lines = 0;
    for (int i = from; i < tokens.size() && matched < words.size(); i++) {
      SheetToken token = tokens.get(i);
      if (isWord(token)) {
        if (!SheetWords.key(token).equals(words.get(matched))) {
          break;
        }
        matched++;
        end = i + 1;
        lines = 0;
      } else if (!token.isPunctuation() || (token.is(Kind.NEWLINE) && ++lines > 1)) {
        break;
      }
    }
    boolean enough = matched >= Math.min(2, words.size()) || isCutShort(tokens, end, matched);
    return enough ? end : from;
  }

  /** "Kann …" begins the text and leaves the rest out. */
  private static boolean isCutShort(List<SheetToken> tokens, int end, int matched) {
    return matched == 1
        && end < tokens.size()
        && tokens.get(end).is(Kind.DOT)
        && tokens.get(end).text().matches("\\.{2,}|…+");
  }
}
