// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import java.math.BigDecimal;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A number, a range or a bound at the head of a text, and what follows it.
 *
 * <p>Read from "62 to 65 °C", "62–65 °C", "0.9 g/ml", "&gt;= 250 °C", "&lt;= 20 g I2/100 g" and
 * "831 ± 4 kg/m³". Numbers stay decimal until their unit has scaled them, so that 0.958 g/ml
 * becomes 958 kg/m³ and not a neighbour of it.
 */
record Span(BigDecimal low, BigDecimal high, boolean openAbove, String rest) {

  static final String AT_MOST = "<=";

  private static final String RANGE_WORD = "to ";
  private static final String PLUS_MINUS = "±";
  private static final double SMALLEST = 1e-30;
  private static final double LARGEST = 1e30;

  static Span parse(String written) {
    String text = withRangeWord(written);
    if (text.startsWith(">=")) {
      Span one = number(text.substring(2).strip());
      return new Span(one.low, one.low, true, one.rest);
    }
    if (text.startsWith(AT_MOST)) {
      Span one = number(text.substring(AT_MOST.length()).strip());
      return new Span(BigDecimal.ZERO, one.high, false, one.rest);
    }
    Span first = number(text);
    if (first.rest.startsWith(PLUS_MINUS)) {
      return around(first.low, number(first.rest.substring(PLUS_MINUS.length()).strip()));
    }
    if (!first.rest.startsWith(RANGE_WORD)) {
      return first;
    }
    Span second = number(first.rest.substring(RANGE_WORD.length()));
    return new Span(first.low, second.high, false, second.rest);
  }

  /** "831 ± 4" is "827 to 835": what was measured and its expanded uncertainty. */
  private static Span around(BigDecimal value, Span doubt) {
    return new Span(value.subtract(doubt.low), value.add(doubt.low), false, doubt.rest);
  }

  /** "62–65" is "62 to 65"; a hyphen may be a minus, so it is none. */
  private static String withRangeWord(String text) {
    int dash = text.indexOf('–');
    return dash <= 0
        ? text
        : text.substring(0, dash).stripTrailing()
            + " "
            + RANGE_WORD
            + text.substring(dash + 1).stripLeading();
  }

  private static Span number(String text) {
    int space = text.indexOf(' ');
    String head = space < 0 ? text : text.substring(0, space);
    try {
      BigDecimal number = inReach(new BigDecimal(head));
      return new Span(number, number, false, space < 0 ? "" : text.substring(space + 1).strip());
    } catch (NumberFormatException e) {
      throw new ProblemException(Problem.of(MaterialProblem.VALUE, text));
    }
  }

  /** An endless number would read as "no upper bound". */
  private static BigDecimal inReach(BigDecimal number) {
    double size = Math.abs(number.doubleValue());
    if (number.signum() != 0 && !(size >= SMALLEST && size <= LARGEST)) {
      throw new NumberFormatException();
    }
    return number;
  }

  /** The low end times ten to a power. */
  double low(int power) {
    return low.scaleByPowerOfTen(power).doubleValue();
  }

  /** The high end times ten to a power. */
  double high(int power) {
    return high.scaleByPowerOfTen(power).doubleValue();
  }

  /** Writes the ends of a range without a unit; {@link #parse} reads them back. */
  static String format(double low, double high, int power) {
    return low == high
        ? plain(low, power)
        : high == Double.POSITIVE_INFINITY
            ? ">= " + plain(low, power)
            : plain(low, power) + " to " + plain(high, power);
  }

  /** Fifteen digits: what a decimal keeps on its way through a double and a power of ten. */
  static String plain(double value, int power) {
    BigDecimal digits =
        BigDecimal.valueOf(value)
            .scaleByPowerOfTen(-power)
            .round(new java.math.MathContext(15))
            .stripTrailingZeros();
    return digits.toPlainString();
  }
}
