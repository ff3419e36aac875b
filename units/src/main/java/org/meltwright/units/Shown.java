// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

/** Texts of others, made fit to stand in a message: short, on one line, no control characters. */
final class Shown {

  private static final int LONGEST = 60;

  private Shown() {}

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
