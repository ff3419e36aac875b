// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads mixing ratios: "1:8 resin:wax", "resin to wax 1:8", "1 part resin to 8 parts wax". */
final class RatioReader {

  private static final String DIGITS =
      "[+\u2212-]?[\\d.,'½¼¾⅓⅔⅛⅜⅝⅞/\u2044]+" + "(?: [\\d/\u2044½¼¾]+|[eE][+-]?\\d+)?";
  private static final String NUMBER = "(" + DIGITS + ")";
  private static final String NUMBER_OR_WORD = "(" + DIGITS + "|\\p{L}+)";
  private static final String NUMBERS = NUMBER + "\\s*:\\s*" + NUMBER;
  private static final String PARTS = "(?:\\s+(?:parts?|Teile?n?))?(?:\\s+of)?\\s+";
  private static final String BETWEEN = "\\s+(?:to|zu|auf)\\s+";

  private static final Pattern NUMBERS_FIRST =
      Pattern.compile(NUMBERS + "\\s+(.+)", Pattern.DOTALL);
  private static final Pattern SIDES_FIRST = Pattern.compile("(\\p{L}.*?)\\s*=?\\s+" + NUMBERS);
  private static final Pattern IN_PARTS =
      Pattern.compile(NUMBER_OR_WORD + PARTS + "(.+?)" + BETWEEN + NUMBER_OR_WORD + PARTS + "(.+)");
  private static final Pattern EQUAL =
      Pattern.compile("(?:equal parts(?: of)?|gleiche Teile)\\s+(.+)\\s+(?:and|und)\\s+(.+)");
  private static final Pattern BARE =
      Pattern.compile(NUMBER + "(?:\\s*:\\s*|" + BETWEEN + ")" + NUMBER);
  private static final Pattern SIDES = Pattern.compile("(.+)" + BETWEEN + "(.+)");

  private final String text;
  private final QuantityParser parser;

  RatioReader(CharSequence text, QuantityParser parser) {
    this.text = parser.read(text, QuantityText.LONGEST_RATIO).rest();
    this.parser = parser;
  }

  /** A ratio that names its sides. */
  MixingRatio named() {
    Matcher m = NUMBERS_FIRST.matcher(text);
    if (m.matches()) {
      return of(m.group(1), m.group(2), m.group(3));
    }
    m = SIDES_FIRST.matcher(text);
    if (m.matches()) {
      return of(m.group(2), m.group(3), m.group(1));
    }
    m = IN_PARTS.matcher(text);
    if (m.matches()) {
      return of(m.group(1), m.group(3), m.group(2), m.group(4));
    }
    m = EQUAL.matcher(text);
    if (m.matches()) {
      return of("1", "1", m.group(1), m.group(2));
    }
    throw BARE.matcher(text).matches()
        ? new ProblemException(Problem.of(UnitsProblem.RATIO_BARE, Shown.text(text)))
        : malformed();
  }

  /** Two numbers whose sides the question names. */
  MixingRatio of(String firstSide, String secondSide) {
    Matcher m = BARE.matcher(text);
    if (!m.matches()) {
      throw malformed();
    }
    return new MixingRatio(number(m.group(1)), number(m.group(2)), firstSide, secondSide);
  }

  /** Sides parted by a colon, or by a word where there is none; in parentheses or not. */
  private MixingRatio of(String first, String second, String sides) {
    boolean bracketed = sides.startsWith("(") && sides.endsWith(")");
    String bare = bracketed ? sides.substring(1, sides.length() - 1) : sides;
    String[] named = bare.split(":", 3);
    if (named.length == 2) {
      return of(first, second, named[0], named[1]);
    }
    Matcher m = SIDES.matcher(bare);
    if (named.length > 2 || !m.matches()) {
      throw malformed();
    }
    return of(first, second, m.group(1), m.group(2));
  }

  private MixingRatio of(String first, String second, String firstSide, String secondSide) {
    String one = firstSide.strip();
    String other = secondSide.strip();
    if (!MixingRatio.isSide(one) || !MixingRatio.isSide(other) || one.equals(other)) {
      throw malformed();
    }
    return new MixingRatio(number(first), number(second), one, other);
  }

  private double number(String number) {
    Double word = NumberWords.value(number);
    if (word != null) {
      return word;
    }
    QuantityText reader = parser.read(number);
    reader.readNumber();
    if (!reader.isAtEnd()) {
      throw malformed();
    }
    return reader.value();
  }

  private ProblemException malformed() {
    return new ProblemException(Problem.of(UnitsProblem.RATIO_MALFORMED, Shown.text(text)));
  }
}
