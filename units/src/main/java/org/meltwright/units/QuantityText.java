// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A text on its way to becoming a value: reads numbers and words from left to right.
 *
 * <p>Its work is bounded by {@link #LONGEST} characters, {@link #LONGEST_RATIO} for a ratio with
 * its sides.
 */
final class QuantityText extends TextCursor {

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

  /** Words that say that a number is not exact, which no measured one is. */
  static final String[] ABOUT = {
    "about",
    "approx.",
    "approx",
    "approximately",
    "around",
    "roughly",
    "ca.",
    "ca",
    "circa",
    "etwa",
    "ungefähr",
    "rund",
    "~",
    "≈"
  };

  private final boolean either;
  private final boolean other;
  private final char decimalSign;

  private double value;
  private @Nullable BigDecimal precise;
  private boolean whole;
  private boolean signed;

  QuantityText(CharSequence text, DecimalSign sign, boolean strict, int longest) {
    super(bounded(text, longest));
    if (at == end) {
      throw new ProblemException(Problem.of(UnitsProblem.TEXT_EMPTY, shown()));
    }
    boolean declared = sign != DecimalSign.EITHER;
    this.decimalSign = declared && strict ? sign.character() : firstSign(sign.character());
    this.other = declared && decimalSign != sign.character();
    this.either = !declared || other;
  }

  private static String bounded(CharSequence text, int longest) {
    if (text.length() > longest) {
      throw new ProblemException(
          Problem.of(UnitsProblem.TEXT_TOO_LONG, Shown.text(text))
              .with("length", Integer.toString(text.length()))
              .with("most", Integer.toString(longest)));
    }
    return text.toString();
  }

  /** The sign that the first number with one has; the usual one if none has. */
  private char firstSign(char usual) {
    for (int i = at; i < end; i++) {
      if (isSign(peek(i))
          && isDigit(peek(i + 1))
          && (i == at || !Character.isLetter(text.charAt(i - 1)))) {
        return peek(i);
      }
    }
    return usual;
  }

  /** Refuses a value with its deviation, which is a range where one is asked for. */
  void refuseDeviation() {
    if (text.indexOf('±') >= 0 || text.contains("+/-")) {
      throw new ProblemException(Problem.of(UnitsProblem.PLUS_MINUS, shown()));
    }
  }

  /** Refuses a sign that was not declared, where it may part hours from minutes: "1.30 h". */
  void refuseOtherSign() {
    if (other) {
      throw notDeclared(decimalSign);
    }
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

  /**
   * Reads a number: "12", "1.5", "1.2e3", "1 500", "1/2", "1 1/2", "1-1/2", "½", "1½" or "half a",
   * with a sign or without, and the hyphen that may join it to its unit.
   */
  void readNumber() {
    precise = null;
    skipAbout();
    boolean negative = readSign();
    int vulgar = vulgar(at);
    if (vulgar >= 0) {
      at++;
      whole = false;
      value = fraction(vulgar);
    } else if (Character.isLetter(peek(at))) {
      readWords();
      return;
    } else {
      readDigits();
    }
    refuseNumberBehind();
    if (isHyphen(peek(at)) && Character.isLetter(peek(at + 1))) {
      at++;
    }
    if (negative) {
      value = 0.0 - value;
      precise = precise == null ? null : precise.negate();
    }
  }

  /** Reads a number without a unit, with the decimals that were written; no fraction. */
  BigDecimal readDecimal() {
    int from = at;
    GroupedNumber grouped = GroupedNumber.find(this, at, either ? 0 : decimalSign);
    readNumber();
    if (!isAtEnd()) {
      throw malformed();
    }
    String written =
        grouped == null
            ? text.substring(from, at).replace(decimalSign, '.').replace('\u2212', '-')
            : grouped.plain();
    try {
      return new BigDecimal(written);
    } catch (NumberFormatException e) {
      throw malformed();
    }
  }

  private void skipAbout() {
    for (String word : ABOUT) {
      if (skipWord(word) || (word.length() == 1 && skip(word.charAt(0)))) {
        return;
      }
    }
  }

  private boolean readSign() {
    char c = peek(at);
    signed = c == '+' || c == '-' || c == '\u2212';
    if (signed) {
      at++;
      return c != '+';
    }
    signed = skipWord("minus");
    return signed;
  }

  private void readWords() {
    Double words = NumberWords.skip(this);
    if (words == null || signed) {
      throw malformed();
    }
    value = words;
    whole = false;
  }

  private void readDigits() {
    GroupedNumber grouped = GroupedNumber.find(this, at, either ? 0 : decimalSign);
    if (grouped != null) {
      readGrouped(grouped);
      return;
    }
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
    if (either && at == digitsEnd && mayGroup(from, point)) {
      throw decimalOrThousands(from, point);
    }
    compute(from, digitsEnd, point, exponent);
    if (whole) {
      readFractionBehind();
    }
  }

  private void readGrouped(GroupedNumber grouped) {
    at = grouped.end();
    whole = grouped.whole();
    value = Double.parseDouble(grouped.plain());
    BigDecimal exact = new BigDecimal(grouped.plain());
    precise = exact.precision() > EXACT_DIGITS ? ManyDigits.of(exact) : null;
  }

  /**
   * Whether the sign may stand before thousands: one to three digits, not zero first, then three.
   */
  private boolean mayGroup(int from, int point) {
    return point > from && point - from <= 3 && peek(from) != '0' && at - point == 4;
  }

  private ProblemException decimalOrThousands(int from, int point) {
    String before = text.substring(from, point);
    String behind = text.substring(point + 1, at);
    return new ProblemException(
        Problem.of(UnitsProblem.DECIMAL_OR_THOUSANDS, shown())
            .with("number", text.substring(from, at))
            .with("decimal", Bilingual.of(Double.parseDouble(before + '.' + behind)))
            .with("thousands", Bilingual.of(Double.parseDouble(before + behind))));
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

  /** Behind a whole number: "/2", "½", " ½", " 1/2" or "-1/2". */
  private void readFractionBehind() {
    double integer = value;
    int spaced = behindSpaces(at);
    int joined = behindHyphen(integer);
    int vulgar = vulgar(spaced);
    if (isSlash(peek(at))) {
      readQuotient(integer);
    } else if (vulgar >= 0) {
      refuseLong(integer);
      at = spaced + 1;
      value = integer + fraction(vulgar);
      whole = false;
    } else if (joined > at) {
      readProperFraction(integer, joined);
    } else if (spaced > at && isDigit(peek(spaced))) {
      readProperFraction(integer, spaced);
    }
  }

  /** "11/2" is refused: it may be 5.5, or 1 1/2 with its blank lost. */
  private void readQuotient(double integer) {
    refuseLong(integer);
    at++;
    double denominator = readDenominator();
    double lastDigit = integer % 10;
    if (integer > 10 && lastDigit > 0 && lastDigit < denominator) {
      throw new ProblemException(
          Problem.of(UnitsProblem.FRACTION_OR_MIXED, shown())
              .with("quotient", Bilingual.of(integer / denominator))
              .with("mixed", Bilingual.of(Math.floor(integer / 10) + lastDigit / denominator)));
    }
    value = integer / denominator;
    whole = false;
  }

  /**
   * Where the fraction of "1-1/2" begins; where it stands if there is none. "0-1/2" is a range, and
   * so is "1-3/2".
   */
  private int behindHyphen(double integer) {
    int slash = behindDigits(at + 1);
    boolean fraction =
        integer >= 1
            && isHyphen(peek(at))
            && isSlash(peek(slash))
            && isProper(at + 1, slash, slash + 1);
    return fraction ? at + 1 : at;
  }

  private boolean isProper(int from, int slash, int denominator) {
    int to = behindDigits(denominator);
    return slash > from
        && to > denominator
        && slash - from <= 9
        && to - denominator <= 9
        && small(from, slash) < small(denominator, to);
  }

  private void readProperFraction(double integer, int from) {
    int slash = behindDigits(from);
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
    at = behindDigits(at);
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

  /** A number must not run on: "1/4/2", "1.2.3", "1,5", "1,23,456". */
  private void refuseNumberBehind() {
    char c = peek(at);
    boolean sign = isSign(c) && isDigit(peek(at + 1));
    if (sign && (isGrouped(at) || isSign(peek(behindDigits(at + 1))))) {
      throw grouped();
    }
    if (sign && c != decimalSign && !either) {
      throw notDeclared(c);
    }
    boolean stray = isSign(c) && (at + 1 >= end || isSpace(peek(at + 1)));
    if (sign || stray || isSlash(c) || startsNumber(at)) {
      throw malformed();
    }
  }

  private ProblemException notDeclared(char c) {
    UnitsProblem code = c == ',' ? UnitsProblem.DECIMAL_COMMA : UnitsProblem.DECIMAL_POINT;
    return new ProblemException(Problem.of(code, shown()));
  }

  /** Whether three digits follow a second sign, as in "1.000.000" where the point is declared. */
  private boolean isGrouped(int sign) {
    return peek(sign) == decimalSign && behindDigits(sign + 1) == sign + 4;
  }

  private ProblemException grouped() {
    return new ProblemException(Problem.of(UnitsProblem.NUMBER_GROUPED, shown()));
  }

  @Override
  ProblemException malformed() {
    return new ProblemException(
        Problem.of(UnitsProblem.NUMBER_MALFORMED, shown())
            .with("sign", Character.toString(decimalSign)));
  }

  @Override
  boolean startsNumber(int i) {
    return isDigit(peek(i)) || vulgar(i) >= 0;
  }

  private int vulgar(int i) {
    char c = peek(i);
    return c < '¼' ? -1 : VULGAR.indexOf(c);
  }

  private static double fraction(int vulgar) {
    return (double) NUMERATORS[vulgar] / DENOMINATORS[vulgar];
  }

  private static boolean isSign(char c) {
    return c == ',' || c == '.';
  }
}
