// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import org.jspecify.annotations.Nullable;

/**
 * A number whose thousands are parted in a way that leaves one reading: "1 500", "1'500", "12
 * 345,67", "1,234.5", "1,000,000".
 *
 * <p>One group behind a point or a comma, as in "1,500", is none: that may be decimals.
 *
 * @param plain the number without what parts its thousands, with a decimal point
 * @param whole whether it has no decimals
 * @param end where it ends in the text
 */
record GroupedNumber(String plain, boolean whole, int end) {

  private static final int GROUP = 3;

  /**
   * Finds such a number.
   *
   * @param from where its digits begin
   * @param decimalSign the decimal sign that was declared; zero if either is read
   * @return the number; null if there is none
   */
  static @Nullable GroupedNumber find(TextCursor text, int from, char decimalSign) {
    int first = text.behindDigits(from);
    char separator = text.peek(first);
    boolean sign = separator == '.' || separator == ',';
    boolean mayLead = first > from && first - from <= GROUP && text.peek(from) != '0';
    if (!mayLead || !(sign || isPlainSeparator(separator)) || separator == decimalSign) {
      return null;
    }
    int behind = behindGroups(text, first, separator);
    int groups = (behind - first) / (GROUP + 1);
    int decimals = behindDecimals(text, behind, separator, decimalSign);
    boolean unclear = groups == 0 || (sign && groups == 1 && decimals == behind);
    return unclear || runsOn(text, decimals, separator) ? null : of(text, from, behind, decimals);
  }

  private static boolean isPlainSeparator(char c) {
    return c == '\'' || c == '\u2019' || TextCursor.isSpace(c);
  }

  private static int behindGroups(TextCursor text, int first, char separator) {
    int i = first;
    while (text.peek(i) == separator && text.behindDigits(i + 1) == i + 1 + GROUP) {
      i += GROUP + 1;
    }
    return i;
  }

  /** Where the decimals end; where they would begin if there are none. */
  private static int behindDecimals(TextCursor text, int from, char separator, char decimalSign) {
    char c = text.peek(from);
    boolean sign = (c == '.' || c == ',') && c != separator;
    boolean declared = decimalSign == 0 || c == decimalSign;
    return sign && declared && TextCursor.isDigit(text.peek(from + 1))
        ? text.behindDigits(from + 1)
        : from;
  }

  private static boolean runsOn(TextCursor text, int end, char separator) {
    char c = text.peek(end);
    char next = text.peek(end + 1);
    return TextCursor.isSlash(c)
        || ((c == '.' || c == ',' || c == separator) && TextCursor.isDigit(next));
  }

  private static GroupedNumber of(TextCursor text, int from, int behind, int end) {
    StringBuilder plain = new StringBuilder();
    for (int i = from; i < end; i++) {
      char c = text.peek(i);
      if (TextCursor.isDigit(c)) {
        plain.append(c);
      } else if (i == behind) {
        plain.append('.');
      }
    }
    return new GroupedNumber(plain.toString(), end == behind, end);
  }
}
