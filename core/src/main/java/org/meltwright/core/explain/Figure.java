// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Locale;

/**
 * A symbol and its number. For example:
 *
 * <pre>{@code
 * Figure film = Figure.of(Symbol.beside(Figure.class, "film", "m"), 0.000125);
 * film.number(Locale.GERMAN); // 0,125 mm
 * film.text(Locale.ENGLISH); // film: 0.125 mm
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param symbol what the number stands for
 * @param value the number in the unit
 * @param unit the unit: that of the symbol, but for money, whose currency is stated here
 */
public record Figure(Symbol symbol, double value, String unit) {

  /** Draws a problem if the number is not finite. */
  public Figure {
    EstimateInput.CHECK.finite(value, symbol.toString());
  }

  /**
   * Returns a number in the unit of its symbol.
   *
   * @param symbol what the number stands for
   * @param value the number in the unit of the symbol
   * @return the figure
   * @throws org.meltwright.units.ProblemException if the number is not finite
   */
  public static Figure of(Symbol symbol, double value) {
    return new Figure(symbol, value, symbol.unit());
  }

  /**
   * Returns the number in a unit that a maker reads, with the digits of the symbol.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return for example "0.125 mm"; zeros at the end of decimals are left out
   */
  public String number(Locale reader) {
    return Written.number(value, symbol.digits(), unit, reader);
  }

  /**
   * Returns name and number.
   *
   * @param reader the reader's language: German for {@code de}, English for all others
   * @return for example "film: 0.125 mm"
   */
  public String text(Locale reader) {
    return symbol.name().in(reader) + ": " + number(reader);
  }

  @Override
  public String toString() {
    return text(Locale.ENGLISH);
  }
}
