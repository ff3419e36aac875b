// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

/**
 * A mixing ratio of two named sides, such as 1 : 8 resin : wax.
 *
 * <p>1 : 8 is one part in nine: its first side has a share of 1/9, not 1/8. The ratio does not say
 * whether parts are by mass or by volume; who uses it does.
 *
 * <p>For example:
 *
 * <pre>{@code
 * // one part of resin to eight of wax, in 900 g
 * MixingRatio ratio = MixingRatio.parse("1:8 resin:wax");
 * ratio; // 1.0:8.0 resin:wax
 * double resin = 900 * ratio.firstShare(); // 100.00 g
 * double wax = 900 * ratio.secondShare(); // 800.00 g
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param firstParts parts of the first side, at least 0
 * @param secondParts parts of the second side, at least 0, not both 0
 * @param firstSide the name of the first side, for example "resin"; starts with a letter, ends
 *     without a space, at most 60 characters, without ':', '±' and line breaks
 * @param secondSide the name of the second side, for example "wax"; as the first, and not the same
 */
public record MixingRatio(
    double firstParts, double secondParts, String firstSide, String secondSide) {

  private static final double MOST = 1e12;
  private static final int LONGEST_SIDE = 60;

  /**
   * Draws a problem if a part is negative or not finite, or both are zero; if the sides are equal,
   * or one is not a name as stated.
   */
  public MixingRatio {
    UnitsProblem.CHECK.between(firstParts, 0, MOST, "part of the ratio");
    UnitsProblem.CHECK.between(secondParts, 0, MOST, "part of the ratio");
    UnitsProblem.CHECK.between(
        firstParts + secondParts, Double.MIN_NORMAL, 2 * MOST, "part of the ratio");
    firstParts += 0.0;
    secondParts += 0.0;
    if (!isSide(firstSide) || !isSide(secondSide) || firstSide.equals(secondSide)) {
      String found = Shown.text(firstSide + ":" + secondSide);
      throw new ProblemException(Problem.of(UnitsProblem.RATIO_SIDES, found));
    }
  }

  /**
   * Reads a ratio that names its sides, with a decimal point.
   *
   * <p>A bare "1:8" is refused: of 1:8 and 8:1 nobody can tell which is meant. {@link
   * QuantityParser#parseMixingRatio(CharSequence, String, String)} reads it where the question
   * names the sides.
   *
   * @param text for example "1:8 resin:wax"
   * @return the ratio
   * @throws ProblemException if the text is not a ratio with two different sides
   */
  public static MixingRatio parse(CharSequence text) {
    return QuantityParser.localeFree().parseMixingRatio(text);
  }

  /** A name that a text can hold in front of or behind a colon. */
  static boolean isSide(String side) {
    return !side.isEmpty()
        && side.length() <= LONGEST_SIDE
        && Character.isLetter(side.codePointAt(0))
        && !isBlank(side.codePointBefore(side.length()))
        && side.codePoints().noneMatch(MixingRatio::breaksName);
  }

  private static boolean isBlank(int character) {
    return Character.isWhitespace(character) || Character.isSpaceChar(character);
  }

  private static boolean breaksName(int character) {
    int type = Character.getType(character);
    return character == ':'
        || character == '±'
        || Character.isISOControl(character)
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  /**
   * Returns the share of the first side in the whole.
   *
   * @return first / (first + second); 1/9 for 1 : 8
   */
  public double firstShare() {
    return firstParts / (firstParts + secondParts);
  }

  /**
   * Returns the share of the second side in the whole.
   *
   * @return second / (first + second); 8/9 for 1 : 8
   */
  public double secondShare() {
    return secondParts / (firstParts + secondParts);
  }

  /**
   * Returns the ratio with its sides, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "1.0:8.0 resin:wax"
   */
  @Override
  public String toString() {
    return String.join(
        ":", Shown.number(firstParts), Shown.number(secondParts) + " " + firstSide, secondSide);
  }
}
