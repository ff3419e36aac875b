// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;

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

  /** The line of an estimate that has every input at the end that makes it small. */
  public static final Bilingual LOW = EstimateInput.CHECK.name("low");

  /** The line of an estimate that has every input at the middle of its range. */
  public static final Bilingual CENTRAL = EstimateInput.CHECK.name("central");

  /** The line of an estimate that has every input at the end that makes it large. */
  public static final Bilingual HIGH = EstimateInput.CHECK.name("high");

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
   * Returns the three numbers of an estimate, as lines of their own.
   *
   * @param symbol what is estimated, in the SI unit of the estimate
   * @param estimate the estimate
   * @return {@link #LOW}, {@link #CENTRAL} and {@link #HIGH}; what has no end is left out
   */
  public static List<Figure> ends(Symbol symbol, Estimate<?> estimate) {
    Map<Bilingual, Double> ends = new LinkedHashMap<>();
    ends.put(LOW, estimate.lowSi());
    ends.put(CENTRAL, estimate.centralSi());
    ends.put(HIGH, estimate.highSi());
    ends.values().removeIf(end -> end.isInfinite());
    return ends.entrySet().stream().map(e -> of(symbol.of(e.getKey()), e.getValue())).toList();
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
