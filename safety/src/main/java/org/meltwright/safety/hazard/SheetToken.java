// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * One word, number, code or mark of a copied data sheet, with its place.
 *
 * @param kind what it is
 * @param text what it says: codes with capital letters in front, all others as written
 * @param start where it starts in the text
 * @param end where it ends
 * @param line its line, from 1
 * @param column its column, from 1
 */
record SheetToken(Kind kind, String text, int start, int end, int line, int column) {

  /** What a token can be. */
  enum Kind {
    /** Letters, perhaps with digits. */
    WORD,
    /** Digits, perhaps with a decimal point or comma. */
    NUMBER,
    /** A digit and a letter, such as 1B. */
    RANK,
    /** The code of a hazard statement, such as H360Df. */
    HAZARD_CODE,
    /** The code of a supplement, such as EUH066. */
    SUPPLEMENT_CODE,
    /** The code of a precautionary statement. */
    PRECAUTION_CODE,
    /** A risk phrase of the old law, such as R43. */
    OLD_PHRASE,
    /** The code of a pictogram. */
    PICTOGRAM,
    /** A CAS registry number. */
    CAS,
    /** A number of the European list. */
    EC,
    /** An index number of a harmonised entry. */
    INDEX,
    /** A registration number. */
    REGISTRATION,
    /** Less than, or less than or equal. */
    BELOW,
    /** Greater than, or greater than or equal. */
    ABOVE,
    /** An equals sign. */
    EQUALS,
    /** One or more stars. */
    STARS,
    /** A hyphen or dash, or several. */
    DASH,
    /** A per cent sign. */
    PERCENT,
    /** A comma. */
    COMMA,
    /** A colon. */
    COLON,
    /** A full stop, or several. */
    DOT,
    /** A stroke. */
    SLASH,
    /** A plus sign. */
    PLUS,
    /** An opening bracket. */
    OPEN,
    /** A closing bracket. */
    CLOSE,
    /** A semicolon, bar, bullet or tab. */
    SEPARATOR,
    /** The end of a line. */
    NEWLINE,
    /** Anything else. */
    OTHER
  }

  boolean is(Kind one) {
    return kind == one;
  }

  /** Whether it may stand inside a name of the word list without being part of it. */
  boolean isMark() {
    return switch (kind) {
      case DASH, DOT, SLASH, OPEN, CLOSE, COMMA, COLON, NEWLINE -> true;
      default -> false;
    };
  }

  /** Whether it can carry no meaning by itself. */
  boolean isPunctuation() {
    return isMark() || kind == Kind.SEPARATOR || kind == Kind.PLUS;
  }

  boolean endsCell() {
    return kind == Kind.NEWLINE || kind == Kind.SEPARATOR;
  }

  boolean isIdentifier() {
    return switch (kind) {
      case CAS, EC, INDEX, REGISTRATION -> true;
      default -> false;
    };
  }

  boolean isCode() {
    return switch (kind) {
      case HAZARD_CODE, SUPPLEMENT_CODE, PRECAUTION_CODE, OLD_PHRASE -> true;
      default -> false;
    };
  }
}
