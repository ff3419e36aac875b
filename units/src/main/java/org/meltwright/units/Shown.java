// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * What {@code toString} and messages show: numbers without the dust of binary arithmetic, and texts
 * of others made short, on one line, without control characters.
 */
final class Shown {

  private static final int LONGEST = 60;

  /** Keeps a value within 5e-13 of itself, and drops what sums and factors leave behind it. */
  private static final MathContext DIGITS = new MathContext(13);

  private Shown() {}

  /** The shortest text of a number in thirteen digits: -3.7 for -3.700000000000003. */
  static String number(double value) {
    return Double.isFinite(value)
        ? Double.toString(BigDecimal.valueOf(value).round(DIGITS).doubleValue())
        : Double.toString(value);
  }

  static String text(CharSequence text) {
    int length = Math.min(text.length(), LONGEST);
    StringBuilder shown = new StringBuilder(length + 1);
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      boolean unfit = Character.isISOControl(c) || Character.isSurrogate(c) || isInvisible(c);
      shown.append(unfit ? '\ufffd' : c);
    }
    return text.length() > length ? shown.append('…').toString() : shown.toString();
  }

  /** Line separators, and marks that turn the direction of the text around them. */
  private static boolean isInvisible(char c) {
    int type = Character.getType(c);
    return type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
