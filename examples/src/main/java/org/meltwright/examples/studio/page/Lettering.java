// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.page;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room words take in a picture, reckoned without a font: no machine needs one.
 *
 * <p>The widths are those of a wide sans-serif, so that words rather take less room than reckoned.
 */
public final class Lettering {

  /** The size of all words in a picture, in its units. */
  public static final double SIZE = 12;

  /** From line to line. */
  public static final double LINE = 15;

  private static final String NARROW = "fijlrt.,:;'|!() []-";
  private static final String WIDE = "mwMW@%€×–—…";
  private static final double BOLD = 1.12;

  private Lettering() {}

  /**
   * Returns how wide words are at most.
   *
   * @param text the words
   * @return the width at {@link #SIZE}
   */
  public static double width(String text) {
    return text.codePoints().mapToDouble(Lettering::share).sum() * SIZE;
  }

  /**
   * Returns how wide bold words are at most.
   *
   * @param text the words
   * @return the width at {@link #SIZE}
   */
  public static double boldWidth(String text) {
    return BOLD * width(text);
  }

  private static double share(int c) {
    if (NARROW.indexOf(c) >= 0) {
      return 0.41;
    }
    if (WIDE.indexOf(c) >= 0 || c > 0x2E80) {
      return 1;
    }
    return Character.isUpperCase(c) ? 0.74 : 0.64;
  }

  /**
   * Breaks words into lines.
   *
   * @param text the words
   * @param width how wide a line may be
   * @return the lines; a word that is wider than a line is broken
   */
  public static List<String> wrap(String text, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = broken(word, width, lines);
    }
    lines.add(line);
    return lines;
  }

  /** Adds all of a word but its last line, and returns that. */
  private static String broken(String word, double width, List<String> lines) {
    StringBuilder line = new StringBuilder();
    for (int c : word.codePoints().toArray()) {
      if (line.length() > 0 && width(line + Character.toString(c)) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.appendCodePoint(c);
    }
    return line.toString();
  }
}
