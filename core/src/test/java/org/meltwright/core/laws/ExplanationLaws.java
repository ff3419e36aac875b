// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.laws;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Explanation.Step;
import org.meltwright.core.explain.Expr;
import org.meltwright.core.explain.Figure;
import org.meltwright.core.explain.Symbol;
import org.meltwright.units.Bilingual;

/**
 * What holds for the working of every result: whoever works a formula out anew finds the number
 * that the result kept, and a reader who has but the printed numbers finds the printed one.
 *
 * <p>The formulas are worked out here and nowhere else; no calculation of the library is asked.
 */
public final class ExplanationLaws {

  private static final double RELATIVE = 1e-12;

  /** How far a printed number may lie off for having been worked out in doubles. */
  private static final double SLACK = 1e-11;

  private static final List<Locale> READERS = List.of(Locale.ENGLISH, Locale.GERMAN);

  /** What one of a printed unit is in the unit that is reckoned in. */
  private static final Map<String, Double> SIZES =
      Map.ofEntries(
          Map.entry("kg g", 1e-3),
          Map.entry("m mm", 1e-3),
          Map.entry("m µm", 1e-6),
          Map.entry("s min", 60.0),
          Map.entry("s h", 3600.0),
          Map.entry("J kJ", 1e3),
          Map.entry("J/kg kJ/kg", 1e3),
          Map.entry("m³ ml", 1e-6),
          Map.entry("m³ l", 1e-3),
          Map.entry("Pa s mPa s", 1e-3),
          Map.entry("1 %", 1e-2),
          Map.entry("kg/m² g/m²", 1e-3),
          Map.entry("m/s mm/h", 1e-3 / 3600),
          Map.entry("m³/kg l/kg", 1e-3),
          Map.entry("m³/s m³/h", 1.0 / 3600),
          Map.entry("kg/s g/h", 1e-3 / 3600));

  private final Map<Symbol, Figure> known = new HashMap<>();

  private ExplanationLaws(Explanation explanation) {
    explanation.figures().forEach(figure -> known.put(figure.symbol(), figure));
  }

  /**
   * Every step, worked out anew from the numbers before rounding, is the number that the result
   * kept, to a billionth of a thousandth of its largest term; worked out from the printed numbers,
   * it is the printed one as far as their rounding lets it be told, in both languages. So are the
   * steps of what its givens lead to.
   *
   * @param explanation the working of a result
   * @throws AssertionError if it is not
   */
  public static void canBeWorkedOutAnew(Explanation explanation) {
    ExplanationLaws laws = new ExplanationLaws(explanation);
    explanation.steps().forEach(laws::exact);
    READERS.forEach(reader -> explanation.steps().forEach(step -> laws.printed(step, reader)));
    explanation.givens().forEach(g -> g.working().ifPresent(ExplanationLaws::leadsThere));
    explanation.givens().forEach(ExplanationLaws::isWhatItLeadsTo);
  }

  private static void leadsThere(Explanation working) {
    canBeWorkedOutAnew(working);
  }

  private static void isWhatItLeadsTo(Explanation.Given given) {
    given
        .working()
        .ifPresent(
            w ->
                check(
                    w.figures().stream().anyMatch(f -> f.value() == given.figure().value()),
                    given.figure() + " is not in its own working"));
  }

  /**
   * The working is written in both languages, no number in it has an exponent, and the short text
   * holds each result.
   *
   * @param explanation the working of a result
   * @throws AssertionError if it is not
   */
  public static void speaksBothLanguages(Explanation explanation) {
    check(
        !explanation.text(Locale.ENGLISH).equals(explanation.text(Locale.GERMAN)),
        "one language only: " + explanation);
    for (Locale reader : READERS) {
      String text = explanation.text(reader);
      check(!text.matches("(?s).*\\d[eE][-\\d].*"), text);
      check(!text.contains("{"), text);
      explanation
          .steps()
          .forEach(
              s -> check(explanation.shortText(reader).contains(s.result().text(reader)), text));
    }
  }

  private void exact(Step step) {
    Exact found = new Exact.Reckoner(known, step.line()).of(step.formula().tree());
    double kept = step.result().value();
    check(
        Math.abs(found.value() - kept) <= RELATIVE * Math.max(found.size(), Math.abs(kept)),
        step.formula() + " gives " + found.value() + ", kept is " + kept);
  }

  private void printed(Step step, Locale reader) {
    Ends found =
        new Ends.Reckoner(known, step.line(), figure -> read(figure, reader))
            .of(step.formula().tree());
    Ends said = read(step.result(), reader);
    double slack = SLACK * Math.max(Math.abs(said.low()), Math.abs(said.high()));
    check(
        found.low() <= said.high() + slack && said.low() - slack <= found.high(),
        step.formula() + " printed gives " + found + ", said is " + said);
  }

  /** Reads a printed number as what may have been rounded to it. */
  private static Ends read(Figure figure, Locale reader) {
    String text = figure.number(reader);
    int end = text.indexOf(' ') < 0 ? text.length() : text.indexOf(' ');
    String number = text.substring(0, end);
    check(number.indexOf(reader.equals(Locale.GERMAN) ? '.' : ',') < 0, text);
    double value = Double.parseDouble(number.replace(',', '.'));
    double half = value == 0 ? 0 : halfUnit(value, figure.symbol().digits());
    double size = size(figure.unit(), text.substring(end).strip());
    return new Ends((value - half) * size, (value + half) * size);
  }

  private static double halfUnit(double value, int digits) {
    int first = (int) Math.floor(Math.log10(Math.abs(value)));
    return 0.5 * Math.pow(10, first + 1 - digits) + Math.ulp(value);
  }

  private static double size(String reckoned, String said) {
    return reckoned.equals(said)
        ? 1
        : Optional.ofNullable(SIZES.get(reckoned + " " + said))
            .orElseThrow(() -> new AssertionError(said + " for " + reckoned));
  }

  static Figure figure(Map<Symbol, Figure> known, Symbol symbol, Optional<Bilingual> line) {
    return line.map(symbol::of)
        .map(known::get)
        .or(() -> Optional.ofNullable(known.get(symbol)))
        .orElseThrow(() -> new NoSuchElementException(symbol + " is not known"));
  }

  static List<Optional<Bilingual>> lines(Map<Symbol, Figure> known, Expr.Total total) {
    return known.keySet().stream().filter(total.over()::isOneOf).map(Symbol::whose).toList();
  }

  private static void check(boolean holds, String message) {
    if (!holds) {
      throw new AssertionError(message);
    }
  }
}
