// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import org.meltwright.examples.studio.page.Lettering;
import org.meltwright.examples.studio.page.Svg;

/** What all pictures share: the width, and words that stand below each other. */
final class Paper {

  /** So wide that words of twelve units are more than 11 pixels high on a phone of 390. */
  static final double WIDTH = 348;

  private Paper() {}

  /** Writes the heading and returns the line that it ends on. */
  static double heading(Svg.Builder svg, String text) {
    return strong(svg, 0, text);
  }

  /** Writes words in a column below a line, and returns the line that they end on. */
  static double lines(Svg.Builder svg, String look, double x, double y, double width, String text) {
    double line = y;
    for (String words : Lettering.wrap(text, width)) {
      line += Lettering.LINE;
      svg.text(look, x, line, words);
    }
    return line;
  }

  /**
   * Writes a name on the left and a value on the right of the same line, or below it if there is no
   * room for both; returns the line that they end on.
   */
  static double nameAndValue(Svg.Builder svg, double y, String name, String value) {
    if (Lettering.boldWidth(name) + Lettering.width(value) + Lettering.SIZE <= WIDTH) {
      svg.text("strong start", 0, y + Lettering.LINE, name);
      svg.text("end", WIDTH, y + Lettering.LINE, value);
      return y + Lettering.LINE;
    }
    return lines(svg, "start", 0, strong(svg, y, name), WIDTH, value);
  }

  private static double strong(Svg.Builder svg, double y, String text) {
    double plainWidth = WIDTH * Lettering.width(text) / Lettering.boldWidth(text);
    return lines(svg, "strong start", 0, y, plainWidth, text);
  }
}
