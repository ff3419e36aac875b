// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text and a place in it, moved from left to right past blanks, signs and words.
 *
 * <p>One short-lived object for each text.
 */
abstract class TextCursor {

  /** What may stand between two parts of an amount. */
  private static final String[] JOINTS = {",", " and", " und", " +", " &"};

  final String text;
  final int end;
  int at;

  /** Starts at the first character that is no blank; the last one ends the text. */
  TextCursor(String text) {
    int last = text.length();
    while (last > 0 && isSpace(text.charAt(last - 1))) {
      last--;
    }
    this.text = text;
    this.end = last;
    skipSpaces();
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f' || c == '\u2009';
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isSlash(char c) {
    return c == '/' || c == '\u2044';
  }

  static boolean isHyphen(char c) {
    return c == '-' || c == '\u2010' || c == '\u2011';
  }

  /** Whether a number may begin here; a sign is none. */
  abstract boolean startsNumber(int i);

  abstract ProblemException malformed();

  /** The whole text as a problem shows it. */
  String shown() {
    return Shown.text(text);
  }

  char peek(int i) {
    return i < end ? text.charAt(i) : 0;
  }

  boolean isAtEnd() {
    return at == end;
  }

  final void skipSpaces() {
    while (at < end && isSpace(text.charAt(at))) {
      at++;
    }
  }

  /** Where the digits that begin here end. */
  int behindDigits(int from) {
    int i = from;
    while (isDigit(peek(i))) {
      i++;
    }
    return i;
  }

  int behindSpaces(int from) {
    int i = from;
    while (isSpace(peek(i))) {
      i++;
    }
    return i;
  }

  /** Moves past a character, spaces around it allowed; tells whether it was there. */
  boolean skip(char expected) {
    int i = behindSpaces(at);
    if (peek(i) != expected) {
      return false;
    }
    at = behindSpaces(i + 1);
    return true;
  }

  /** Moves past a word in any case and the space behind it; tells whether it was there. */
  boolean skipWord(String word) {
    int after = at + word.length();
    if (after < end
        && text.regionMatches(true, at, word, 0, word.length())
        && isSpace(text.charAt(after))) {
      at = behindSpaces(after);
      return true;
    }
    return false;
  }

  /** Moves past the beginning of a word that goes on; tells whether it was there. */
  boolean skipPrefix(String prefix) {
    int after = at + prefix.length();
    if (text.regionMatches(true, at, prefix, 0, prefix.length())
        && Character.isLetter(peek(after))) {
      at = after;
      return true;
    }
    return false;
  }

  /** A number of words from here on, as far as there are so many. */
  String nextWords(int count) {
    int i = at;
    for (int word = 0; word < count && i < end; word++) {
      i = word == 0 ? i : behindSpaces(i);
      while (i < end && !isSpace(text.charAt(i))) {
        i++;
      }
    }
    return text.substring(at, i);
  }

  /** Moves past the first of some words that stands here; tells whether one did. */
  boolean skipOneOf(String... words) {
    for (String word : words) {
      if (skipWord(word)) {
        return true;
      }
    }
    return false;
  }

  /** The rest of the text. */
  String rest() {
    String rest = text.substring(at, end);
    at = end;
    return rest;
  }

  /** Where the first digit of words stands; -1 if none does. */
  static int firstDigit(String words) {
    for (int i = 0; i < words.length(); i++) {
      if (isDigit(words.charAt(i))) {
        return i;
      }
    }
    return -1;
  }

  /** Goes back into words just read. */
  void backTo(String words, int index) {
    at = text.lastIndexOf(words, at) + index;
  }

  /** All that is left, without moving past it. */
  String remaining() {
    return text.substring(at, end);
  }

  /** Moves past a sign of multiplication that a number follows; tells whether it was there. */
  boolean skipTimes() {
    int before = at;
    boolean times = skip('x') || skip('×') || skip('X') || skip('*') || skipWordAfterSpace("mal");
    if (times && startsNumber(at)) {
      return true;
    }
    at = before;
    return false;
  }

  /** Moves as {@link #skipTimes}, or past "packs of" in "2 packs of 500 g"; tells whether. */
  boolean skipTimesOrPacks() {
    int behind = skipTimes() ? at : Packs.behind(text, behindSpaces(at), end);
    at = Math.max(at, behind);
    return behind >= 0;
  }

  private boolean skipWordAfterSpace(String word) {
    at = behindSpaces(at);
    return skipWord(word);
  }

  /**
   * The words up to the next number behind a space, or to the end; without what joins them to that
   * number, as in "1 lb, 4 oz" and "1 hour and 30 minutes".
   */
  String words() {
    skipSpaces();
    if (startsNumber(at)) {
      throw malformed();
    }
    int from = at;
    int to = at;
    while (to < end && !(to > from && isSpace(text.charAt(to - 1)) && startsNumber(to))) {
      to++;
    }
    at = to;
    String words = text.substring(from, to);
    return to == end ? words : withoutJoint(words.strip());
  }

  private static String withoutJoint(String words) {
    for (String joint : JOINTS) {
      if (words.endsWith(joint)) {
        return words.substring(0, words.length() - joint.length());
      }
    }
    return words;
  }

  /** The words up to one of the dashes, or a word that says a range, or to the end. */
  String wordsBeforeRange() {
    int from = at;
    while (at < end && !atRangeSign()) {
      at++;
    }
    return text.substring(from, at);
  }

  private boolean atRangeSign() {
    char c = peek(at);
    return isDash(c)
        || (c == '.' && peek(at + 1) == '.')
        || (isSpace(c) && isOneOf(at + 1, "to ", "bis ", "and ", "und "));
  }

  private boolean isOneOf(int from, String... words) {
    for (String word : words) {
      if (text.regionMatches(true, from, word, 0, word.length())) {
        return true;
      }
    }
    return false;
  }

  private static boolean isDash(char c) {
    return isHyphen(c) || c == '–' || c == '—' || c == '\u2212' || c == '…';
  }

  /** Moves past a dash, dots, "to" or "bis"; after "between" past "and". Tells whether it did. */
  boolean skipRangeSign(boolean between) {
    skipSpaces();
    if (isDash(peek(at))) {
      at = behindSpaces(at + 1);
      return true;
    }
    int dots = at;
    while (peek(dots) == '.') {
      dots++;
    }
    if (dots >= at + 2) {
      at = behindSpaces(dots);
      return true;
    }
    return between ? skipOneOf("and", "und") : skipOneOf("to", "bis");
  }

  /**
   * What amounts are packed in, where they are counted: "2 packs of 500 g", "2 Packungen à 500 g".
   *
   * <p>Only these words are read, for others may be numbers or units themselves, such as a dozen.
   */
  private static final class Packs {

    private static final Pattern OF =
        Pattern.compile(
            "(?iu)(?:packs?|packets?|packages?|bags?|blocks?|bars?|box(?:es)?|tins?|cans?|jars?"
                + "|tubes?|bottles?|cakes?|pieces?"
                + "|Packung(?:en)?|Päckchen|Pakete?|Beutel|Block|Blöcke|Riegel|Dosen?|Tuben?"
                + "|Flaschen?|Glas|Gläser|Kuchen|Stück|Sack|Säcke|Eimer)"
                + "\\s+(?:of|at|à|a|@|zu|zu je|mit|mit je|je)\\s+(?=\\d)");

    private Packs() {}

    /** Where the amount of one of them begins; -1 if no such words stand here. */
    static int behind(String text, int from, int to) {
      if (from >= to || !Character.isLetter(text.charAt(from))) {
        return -1;
      }
      Matcher packs = OF.matcher(text).region(from, to);
      return packs.lookingAt() ? packs.end() : -1;
    }
  }
}
