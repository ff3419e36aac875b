// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A text on its way to becoming a value: reads numbers and words from left to right.
 *
 * <p>One short-lived object for each text; its work is bounded by {@link #LONGEST} characters,
 * {@link #LONGEST_RATIO} for a ratio with its sides.
 */
final class QuantityText {

  static final int LONGEST = 100;

  /** Two numbers of at most 32 characters and two sides of at most 60. */
  static final int LONGEST_RATIO = 200;

  private static final int EXACT_DIGITS = ManyDigits.DIGITS_OF_EVERY_DOUBLE;
  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒";
  private static final int[] NUMERATORS = {1, 1, 2, 1, 3, 1, 2, 3, 4, 1, 5, 1, 1, 3, 5, 7, 1, 1};
  private static final int[] DENOMINATORS = {2, 3, 3, 4, 4, 5, 5, 5, 5, 6, 6, 7, 8, 8, 8, 8, 9, 10};
  private static final double[] TENS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17,
    1e18, 1e19, 1e20, 1e21, 1e22
  };

  private final String text;
  private final char decimalSign;
  private final int end;
  private int at;

  private double value;
  private @Nullable BigDecimal precise;
  private boolean whole;
  private boolean signed;

  QuantityText(CharSequence text, char decimalSign) {
    this(text, decimalSign, LONGEST);
  }

  QuantityText(CharSequence text, char decimalSign, int longest) {
    if (text.length() > longest) {
      throw new ProblemException(
          Problem.of(UnitsProblem.TEXT_TOO_LONG, Shown.text(text))
              .with("length", Integer.toString(text.length()))
              .with("most", Integer.toString(longest)));
    }
    this.text = text.toString();
    this.decimalSign = decimalSign;
    int last = this.text.length();
    while (last > 0 && isSpace(this.text.charAt(last - 1))) {
      last--;
    }
    this.end = last;
    skipSpaces();
    if (at == end) {
      throw new ProblemException(Problem.of(UnitsProblem.TEXT_EMPTY, Shown.text(text)));
    }
    if (this.text.indexOf('±') >= 0) {
      throw new ProblemException(Problem.of(UnitsProblem.PLUS_MINUS, Shown.text(text)));
    }
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f' || c == '\u2009';
  }

  /** The whole text as a problem shows it. */
  String shown() {
    return Shown.text(text);
  }

  /** The last number read, rounded to the nearest double. */
  double value() {
    return value;
  }

  /** The last number read, with all its digits if a double cannot hold them. */
  Number number() {
    return precise != null ? precise : (Number) value;
  }

  /** All digits of a number too long for a double; null for all others. */
  @Nullable BigDecimal precise() {
    return precise;
  }

  /** Whether the last number was one of digits alone. */
  boolean isWhole() {
    return whole;
  }

  /** Whether the last number carried a sign. */
  boolean isSigned() {
    return signed;
  }

  boolean isAtEnd() {
    return at == end;
  }

  boolean startsWithDigit() {
    return startsNumber(at);
  }

  void skipSpaces() {
    while (at < end && isSpace(text.charAt(at))) {
      at++;
    }
  }

  /** Moves past a character, spaces around it allowed; tells whether it was there. */
  boolean skip(char expected) {
    int before = at;
    skipSpaces();
    if (at < end && text.charAt(at) == expected) {
      at++;
      skipSpaces();
      return true;
    }
    at = before;
    return false;
  }

  /** Moves past a word and the space behind it; tells whether it was there. */
  boolean skipWord(String word) {
    int after = at + word.length();
    if (text.startsWith(word, at) && after < end && isSpace(text.charAt(after))) {
      at = after;
      skipSpaces();
      return true;
    }
    return false;
  }

  /** The rest of the text. */
  String rest() {
    String rest = text.substring(at, end);
    at = end;
    return rest;
  }

  /** The words up to the next number behind a space, or to the end. */
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
    return text.substring(from, to);
  }

  /** The words up to one of the dashes, " to " or " bis ", or to the end. */
  String wordsBeforeRange() {
    int from = at;
    while (at < end && !atRangeSign()) {
      at++;
    }
    return text.substring(from, at);
  }

  private boolean atRangeSign() {
    char c = text.charAt(at);
    return c == '-'
        || c == '–'
        || c == '—'
        || c == '\u2212'
        || (isSpace(c) && (text.startsWith("to ", at + 1) || text.startsWith("bis ", at + 1)));
  }

  /** Moves past a dash, "to" or "bis"; tells whether one was there. */
  boolean skipRangeSign() {
    skipSpaces();
    return skip('–')
        || skip('-')
        || skip('—')
        || skip('\u2212')
        || skipWord("to")
        || skipWord("bis");
  }

  /** Reads a number: "12", "1.5", "1.2e3", "1/2", "1 1/2", "½" or "1½", with a sign or without. */
  void readNumber() {
    precise = null;
    boolean negative = readSign();
    int vulgar = vulgar(at);
    if (vulgar >= 0) {
      at++;
      whole = false;
      value = fraction(vulgar);
    } else {
      readDigits();
    }
    refuseNumberBehind();
    if (negative) {
      value = 0.0 - value;
      precise = precise == null ? null : precise.negate();
    }
  }

  private boolean readSign() {
    char c = peek(at);
    signed = c == '+' || c == '-' || c == '\u2212';
    if (signed) {
      at++;
    }
    return signed && c != '+';
  }

  private void readDigits() {
    int from = at;
    int point = -1;
    while (isDigit(peek(at)) || (point < 0 && peek(at) == decimalSign && isDigit(peek(at + 1)))) {
      if (peek(at) == decimalSign) {
        point = at;
      }
      at++;
    }
    if (at == from) {
      throw malformed();
    }
    int digitsEnd = at;
    int exponent = readExponent();
    whole = point < 0 && at == digitsEnd;
    compute(from, digitsEnd, point, exponent);
    if (whole) {
      readFractionBehind();
    }
  }

  private int readExponent() {
    char c = peek(at);
    int digits = at + 1;
    boolean negative = peek(digits) == '-' || peek(digits) == '\u2212';
    if (negative || peek(digits) == '+') {
      digits++;
    }
    if ((c != 'e' && c != 'E') || !isDigit(peek(digits))) {
      return 0;
    }
    int exponent = 0;
    int i = digits;
    for (; isDigit(peek(i)); i++) {
      exponent = Math.min(9999, exponent * 10 + (text.charAt(i) - '0'));
    }
    at = i;
    return negative ? -exponent : exponent;
  }

  private void compute(int from, int to, int point, int exponent) {
    long mantissa = 0;
    int digits = 0;
    for (int i = from; i < to; i++) {
      if (i != point && (digits > 0 || text.charAt(i) != '0')) {
        digits++;
        mantissa = digits <= EXACT_DIGITS ? mantissa * 10 + (text.charAt(i) - '0') : mantissa;
      }
    }
    int scale = exponent - (point < 0 ? 0 : to - point - 1);
    if (digits <= EXACT_DIGITS && Math.abs(scale) < TENS.length) {
      value = scale < 0 ? mantissa / TENS[-scale] : mantissa * TENS[scale];
      if (value <= ManyDigits.MOST_WHOLE) {
        return;
      }
    }
    computeSlowly(from, to, point, exponent, digits);
  }

  /**
   * Exact arithmetic has no answer in doubles here: more than 15 digits, a value beyond 2^53, or a
   * scale beyond 10^22.
   */
  private void computeSlowly(int from, int to, int point, int exponent, int digits) {
    String plain =
        point < 0
            ? text.substring(from, to)
            : text.substring(from, point) + '.' + text.substring(point + 1, to);
    value = Double.parseDouble(plain + 'e' + exponent);
    if (Double.isInfinite(value) || (value == 0 && digits > 0)) {
      throw new ProblemException(Problem.of(UnitsProblem.NUMBER_OUT_OF_REACH, shown()));
    }
    if (digits > EXACT_DIGITS || value > ManyDigits.MOST_WHOLE) {
      precise = ManyDigits.of(new BigDecimal(plain + 'e' + exponent));
    }
  }

  /** Behind a whole number: "/2", "½", " ½" or " 1/2". */
  private void readFractionBehind() {
    double integer = value;
    int spaced = at;
    while (isSpace(peek(spaced))) {
      spaced++;
    }
    int vulgar = vulgar(spaced);
    if (isSlash(peek(at))) {
      refuseLong(integer);
      at++;
      value = integer / readDenominator();
      whole = false;
    } else if (vulgar >= 0) {
      refuseLong(integer);
      at = spaced + 1;
      value = integer + fraction(vulgar);
      whole = false;
    } else if (spaced > at && isDigit(peek(spaced))) {
      readProperFraction(integer, spaced);
    }
  }

  private void readProperFraction(double integer, int from) {
    int slash = from;
    while (isDigit(peek(slash))) {
      slash++;
    }
    if (!isSlash(peek(slash))) {
      throw malformed();
    }
    refuseLong(integer);
    double numerator = small(from, slash);
    at = slash + 1;
    double denominator = readDenominator();
    if (numerator >= denominator) {
      throw malformed();
    }
    value = (integer * denominator + numerator) / denominator;
    whole = false;
  }

  private double readDenominator() {
    int from = at;
    while (isDigit(peek(at))) {
      at++;
    }
    double denominator = small(from, at);
    if (denominator == 0) {
      throw malformed();
    }
    return denominator;
  }

  private void refuseLong(double integer) {
    if (integer >= 1e9) {
      throw malformed();
    }
  }

  /** Up to nine digits; no one writes fractions of more. */
  private double small(int from, int to) {
    if (to == from || to - from > 9) {
      throw malformed();
    }
    return Integer.parseInt(text, from, to, 10);
  }

  /** A number must not run on: "1/4/2", "1.2.3", "1,5". */
  private void refuseNumberBehind() {
    char c = peek(at);
    if ((c == ',' || c == '.') && isDigit(peek(at + 1)) && c != decimalSign) {
      UnitsProblem code = c == ',' ? UnitsProblem.DECIMAL_COMMA : UnitsProblem.DECIMAL_POINT;
      throw new ProblemException(Problem.of(code, shown()));
    }
    if (c == ',' || c == '.' || c == '\'' || c == '\u2019' || isSlash(c) || startsNumber(at)) {
      throw malformed();
    }
  }

  ProblemException malformed() {
    return new ProblemException(Problem.of(UnitsProblem.NUMBER_MALFORMED, shown()));
  }

  private boolean startsNumber(int i) {
    return isDigit(peek(i)) || vulgar(i) >= 0;
  }

  private int vulgar(int i) {
    char c = peek(i);
    return c < '¼' ? -1 : VULGAR.indexOf(c);
  }

  private static double fraction(int vulgar) {
    return (double) NUMERATORS[vulgar] / DENOMINATORS[vulgar];
  }

  private char peek(int i) {
    return i < end ? text.charAt(i) : 0;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isSlash(char c) {
    return c == '/' || c == '\u2044';
  }
}
