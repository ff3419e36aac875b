// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Locale;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Check;
import org.meltwright.units.Estimate;
import org.meltwright.units.ProblemException;

/**
 * A named input of an estimate: its range, and which way it moves the result.
 *
 * <p>The central value of an estimate has every input at the middle of its range; the low value has
 * every input at the end that makes the result small, the high value at the other.
 *
 * <p>A cake of 20 to 30 mm; the thicker it is, the longer it takes:
 *
 * <pre>{@code
 * Symbol thickness = Symbol.beside(EstimateInput.class, "thickness of the cake", "m");
 * EstimateInput cake =
 *     EstimateInput.of(thickness, 0.020, 0.030, EstimateInput.Direction.RAISES);
 * cake.central(); // 0.025 m
 * cake.forHigh(); // 0.030 m
 * cake; // thickness of the cake 20–30 mm
 * }</pre>
 *
 * <p>Two inputs are the same unknown if all of this is equal: what enters a result twice is varied
 * once. Immutable and thread-safe.
 *
 * @param symbol what it is, with its unit
 * @param low the low end, in the unit
 * @param central the value of the central estimate, within the ends
 * @param high the high end, in the unit, not below the low end
 * @param direction which way more of it moves the result
 * @param spread where in its range it is likely to lie
 */
public record EstimateInput(
    Symbol symbol, double low, double central, double high, Direction direction, Spread spread) {

  /** The guards of this package. */
  static final Check CHECK = Check.beside(EstimateInput.class);

  /** Which way more of an input moves a result. */
  public enum Direction {
    /** More of it makes the result larger. */
    RAISES,
    /** More of it makes the result smaller. */
    LOWERS;

    Direction opposite() {
      return this == RAISES ? LOWERS : RAISES;
    }
  }

  /** Draws a problem if an end is not finite or the three are not in order. */
  public EstimateInput {
    CHECK.finite(low, symbol.toString());
    CHECK.finite(high, symbol.toString());
    if (!(low <= central && central <= high)) {
      throw CHECK.reversed(
          Bilingual.list(Bilingual.of(low), Bilingual.of(central), Bilingual.of(high))
              .plus(" " + symbol.unit()),
          symbol.toString());
    }
  }

  /**
   * Returns an input that lies evenly anywhere within its range.
   *
   * @param symbol what it is
   * @param low the low end, in the unit of the symbol
   * @param high the high end
   * @param direction which way more of it moves the result
   * @return the input, central at the middle
   * @throws ProblemException if an end is not finite or the ends are reversed
   */
  public static EstimateInput of(Symbol symbol, double low, double high, Direction direction) {
    double middle = low + (high - low) / 2;
    return new EstimateInput(symbol, low, middle, high, direction, Spread.EVEN);
  }

  /**
   * Returns an input that was itself estimated, evenly spread.
   *
   * @param symbol what it is, in the SI unit of the estimate
   * @param estimate the three values
   * @param direction which way more of it moves the result
   * @return the input
   * @throws ProblemException if an end is not finite
   */
  public static EstimateInput of(Symbol symbol, Estimate<?> estimate, Direction direction) {
    return new EstimateInput(
        symbol, estimate.lowSi(), estimate.centralSi(), estimate.highSi(), direction, Spread.EVEN);
  }

  /**
   * Returns a copy of which it is stated where in its range it is likely to lie.
   *
   * @param stated the spread
   * @return the new input
   */
  public EstimateInput withSpread(Spread stated) {
    return new EstimateInput(symbol, low, central, high, direction, stated);
  }

  /** The same unknown for a result that it moves the other way. */
  EstimateInput turned() {
    return new EstimateInput(symbol, low, central, high, direction.opposite(), spread);
  }

  /** The same input of which more is known: within a distance of its central value. */
  EstimateInput within(double halfWidth) {
    return new EstimateInput(
        symbol,
        Math.max(low, central - halfWidth),
        central,
        Math.min(high, central + halfWidth),
        direction,
        spread);
  }

  /**
   * Tells whether it is known to a point.
   *
   * @return whether its range has no width
   */
  public boolean isExact() {
    return low == high;
  }

  /**
   * Returns the end that makes the result small.
   *
   * @return the low end of what raises the result, else the high end
   */
  public double forLow() {
    return direction == Direction.RAISES ? low : high;
  }

  /**
   * Returns the end that makes the result large.
   *
   * @return the high end of what raises the result, else the low end
   */
  public double forHigh() {
    return direction == Direction.RAISES ? high : low;
  }

  /** The value at a place in the range, from −1 at the low end to 1 at the high one. */
  double at(double position) {
    return low + (high - low) * (1 + position) / 2;
  }

  /**
   * Returns the input for a reader.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return name, range and unit, with three significant figures, two where the high end is twice
   *     the low one or more
   */
  public String text(Locale reader) {
    return symbol.name().in(reader) + " " + rangeText(reader);
  }

  /**
   * Returns the range for a reader.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return both ends with their unit
   */
  public String rangeText(Locale reader) {
    return Written.range(low, high, symbol.unit(), reader);
  }

  /**
   * Returns the input on one line.
   *
   * @return name, range and unit, with three significant figures
   */
  @Override
  public String toString() {
    return symbol + " " + Written.range(low, high, symbol.unit(), Locale.ROOT);
  }
}
