// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import java.text.Normalizer;
import java.util.Arrays;

/**
 * A text as the list compares it: only letters and digits, case and accents folded, parted into
 * words. The letters of all words stand in one row, so that "Kremser Weiß" and "Kremserweiß" are
 * the same; what stood between two words is kept beside.
 *
 * <p>Any text has such a form, in time linear to its length.
 */
final class FoldedText {

  /** What may stand between two words. */
  private static final int BLANK = 1;

  private static final int HYPHEN = 2;
  private static final int COMMA = 4;
  private static final int COLON = 8;
  private static final int OTHER = 16;

  private static final char DIAERESIS = '\u0308';

  private final String source;
  private final StringBuilder letters = new StringBuilder();

  /** For each letter: where it stands in the source. */
  private int[] at;

  /** For each letter: the word it belongs to. */
  private int[] wordOf;

  /** For each word: its first letter, and what stands before it. */
  private int[] start = new int[8];

  private int[] gap = new int[8];
  private int words;
  private int gapNow;
  private boolean inWord;

  static FoldedText of(String source) {
    FoldedText folded = new FoldedText(source);
    for (int i = 0; i < source.length(); ) {
      int c = source.codePointAt(i);
      folded.add(c, i);
      i += Character.charCount(c);
    }
    return folded;
  }

  private FoldedText(String source) {
    this.source = source;
    this.at = new int[source.length() + 1];
    this.wordOf = new int[source.length() + 1];
  }

  private void add(int c, int index) {
    if (c < 128) {
      addAscii((char) c, index);
    } else if (isLetter(c)) {
      addFolded(c, index);
    } else if (isMark(c)) {
      addMark((char) c, index);
    } else if (Character.getType(c) != Character.FORMAT) {
      part(separator(c));
    }
  }

  private void addAscii(char c, int index) {
    if (c >= 'A' && c <= 'Z') {
      letter((char) (c + 32), index);
    } else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      letter(c, index);
    } else {
      part(separator(c));
    }
  }

  private void addFolded(int c, int index) {
    switch (c) {
      case 'ä', 'Ä', 'æ', 'Æ' -> letters("ae", index);
      case 'ö', 'Ö', 'œ', 'Œ' -> letters("oe", index);
      case 'ü', 'Ü' -> letters("ue", index);
      case 'ß', 'ẞ' -> letters("ss", index);
      case 'ı' -> letter('i', index);
      case 'ø', 'Ø' -> letter('o', index);
      default ->
          addDecomposed(Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKD), index);
    }
  }

  private void addDecomposed(String parts, int index) {
    for (int i = 0; i < parts.length(); ) {
      int c = parts.codePointAt(i);
      if (isMark(c)) {
        addMark((char) c, index);
      } else if (isLetter(c)) {
        letters(Character.toString(Character.toLowerCase(c)), index);
      }
      i += Character.charCount(c);
    }
  }

  /** Letters, digits, and what is a digit in another place, as in "K₂CrO₄". */
  private static boolean isLetter(int c) {
    return Character.isLetterOrDigit(c) || Character.getType(c) == Character.OTHER_NUMBER;
  }

  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }

  /** Two dots over a, o, u make an umlaut; all other marks say nothing. */
  private void addMark(char mark, int index) {
    if (mark == DIAERESIS && inWord && "aou".indexOf(letters.charAt(letters.length() - 1)) >= 0) {
      letter('e', index);
    }
  }

  private void letters(String folded, int index) {
    for (int i = 0; i < folded.length(); i++) {
      letter(folded.charAt(i), index);
    }
  }

  private void letter(char c, int index) {
    if (!inWord) {
      startWord();
    }
    if (letters.length() == at.length) {
      at = Arrays.copyOf(at, 2 * at.length);
      wordOf = Arrays.copyOf(wordOf, at.length);
    }
    at[letters.length()] = index;
    wordOf[letters.length()] = words - 1;
    letters.append(c);
  }

  private void startWord() {
    if (words == start.length) {
      start = Arrays.copyOf(start, 2 * words);
      gap = Arrays.copyOf(gap, 2 * words);
    }
    start[words] = letters.length();
    gap[words] = gapNow;
    words++;
    gapNow = 0;
    inWord = true;
  }

  private void part(int separator) {
    gapNow |= separator;
    inWord = false;
  }

  private static int separator(int c) {
    return switch (c) {
      case ',', ';', '/', '&', '+', '|', '\n', '、', '，' -> COMMA;
      case ':' -> COLON;
      case '-', '‐', '‑', '‒', '–', '—', '−' -> HYPHEN;
      default -> Character.isSpaceChar(c) || Character.isWhitespace(c) ? BLANK : OTHER;
    };
  }

  /** The number of letters and digits. */
  int length() {
    return letters.length();
  }

  char letter(int i) {
    return letters.charAt(i);
  }

  /** The number of words. */
  int words() {
    return words;
  }

  String word(int word) {
    return letters.substring(start(word), end(word));
  }

  /** The word that a letter belongs to. */
  int wordOf(int i) {
    return wordOf[i];
  }

  /** The first letter of a word. */
  int start(int word) {
    return start[word];
  }

  /** The letter behind the last of a word. */
  int end(int word) {
    return word + 1 < words ? start[word + 1] : letters.length();
  }

  boolean isStart(int i) {
    return i < letters.length() && start[wordOf[i]] == i;
  }

  /** Whether a word ends before a letter. */
  boolean isEnd(int i) {
    return i == letters.length() || (i > 0 && start[wordOf[i]] == i);
  }

  /** Whether only a hyphen parts a word from the one before it. */
  boolean isHyphenated(int word) {
    return word < words && word > 0 && gap[word] == HYPHEN;
  }

  /** Whether a hyphen and a blank part a word from the one before it, as in "blei- und". */
  boolean hangs(int word) {
    return word < words && word > 0 && (gap[word] & HYPHEN) != 0 && gap[word] != HYPHEN;
  }

  /** Whether only a colon parts a word from the one before it. */
  boolean isAfterColon(int word) {
    return word < words && word > 0 && gap[word] == COLON;
  }

  /** Whether nothing but blanks and hyphens parts a word from the one before it. */
  boolean isDirect(int word) {
    return word < words && word > 0 && (gap[word] & ~(BLANK | HYPHEN)) == 0;
  }

  /** Whether a comma, or a sign like it, parts a word from the one before it. */
  boolean isAfterComma(int word) {
    return (gap[word] & COMMA) != 0;
  }

  /** Whether a word begins with a capital letter in the source. */
  boolean isCapital(int word) {
    return Character.isUpperCase(source.codePointAt(at[start[word]]));
  }

  /** The letters from one to the one before another. */
  String part(int from, int to) {
    return letters.substring(from, to);
  }

  /** What was written, from a letter to the one before another. */
  String written(int from, int to) {
    int last = at[to - 1];
    return source.substring(at[from], last + Character.charCount(source.codePointAt(last)));
  }
}
