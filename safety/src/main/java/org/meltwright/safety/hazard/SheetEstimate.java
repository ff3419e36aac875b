// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.safety.hazard.SheetToken.Kind;

/**
 * An acute toxicity estimate as a sheet writes it: a number with a unit of dose or of air.
 *
 * @param first where it starts
 * @param last its unit
 * @param value the number
 * @param unit what it counts
 * @param point whether it is a point, and not "more than" or "less than" a dose
 * @param end the token behind it
 */
record SheetEstimate(
    SheetToken first, SheetToken last, double value, Unit unit, boolean point, int end) {

  /** The units of estimates. */
  enum Unit {
    /** Milligrams per kilogram of body weight. */
    PER_KILOGRAM,
    /** Milligrams per litre of air. */
    PER_LITRE,
    /** Parts per million by volume. */
    PER_MILLION
  }

  /** Finds a number with such a unit at a place; a blank may part thousands. */
  static Optional<SheetEstimate> at(List<SheetToken> tokens, int from) {
    boolean point = !isComparison(tokens, from);
    int number = point ? from : from + 1;
    String digits = digits(tokens, number);
    int after = digits.isEmpty() ? number : number + (isGrouped(tokens, number) ? 2 : 1);
    OptionalDouble value = digits.isEmpty() ? OptionalDouble.empty() : SheetRange.number(digits);
    Optional<Unit> unit = unit(tokens, after);
    if (value.isEmpty() || unit.isEmpty()) {
      return Optional.empty();
    }
    int end = after + (unit.get() == Unit.PER_MILLION ? 1 : 3);
    return Optional.of(
        new SheetEstimate(
            tokens.get(from),
            tokens.get(end - 1),
            value.getAsDouble(),
            unit.get(),
            point,
            afterDuration(tokens, end)));
  }

  private static boolean isComparison(List<SheetToken> tokens, int at) {
    return at < tokens.size() && (tokens.get(at).is(Kind.BELOW) || tokens.get(at).is(Kind.ABOVE));
  }

  /** "1.100 mg/kg" or "1,100 mg/kg": a point or a comma may part thousands. */
  boolean mayBeThousands() {
    return first.text().matches("\\d{1,3}[.,]\\d{3}");
  }

  private static String digits(List<SheetToken> tokens, int at) {
    if (at >= tokens.size() || !tokens.get(at).is(Kind.NUMBER)) {
      return "";
    }
    String first = tokens.get(at).text();
    return isGrouped(tokens, at) ? first + tokens.get(at + 1).text() : first;
  }

  /** "2 000": three digits behind a single blank. */
  private static boolean isGrouped(List<SheetToken> tokens, int at) {
    return at + 1 < tokens.size()
        && tokens.get(at + 1).is(Kind.NUMBER)
        && tokens.get(at).text().matches("\\d{1,3}")
        && tokens.get(at + 1).text().matches("\\d{3}")
        && tokens.get(at + 1).start() == tokens.get(at).end() + 1;
  }

  private static Optional<Unit> unit(List<SheetToken> tokens, int at) {
    String first = word(tokens, at);
    if (first.equals("ppmv") || (first.equals("ppm") && word(tokens, at + 1).equals("v"))) {
      return Optional.of(Unit.PER_MILLION);
    }
    boolean stroke = at + 1 < tokens.size() && tokens.get(at + 1).is(Kind.SLASH);
    if (!first.equals("mg") || !stroke) {
      return Optional.empty();
    }
    return switch (word(tokens, at + 2)) {
      case "kg" -> Optional.of(Unit.PER_KILOGRAM);
      case "l" -> Optional.of(Unit.PER_LITRE);
      default -> Optional.empty();
    };
  }

  private static String word(List<SheetToken> tokens, int at) {
    return at < tokens.size() && tokens.get(at).is(Kind.WORD)
        ? tokens.get(at).text().toLowerCase(Locale.ROOT)
        : "";
  }

  /** "/4h" and "(4 h)": the estimates of the law are for four hours. */
  private static int afterDuration(List<SheetToken> tokens, int end) {
    int i = end;
    while (i < tokens.size() && (tokens.get(i).is(Kind.SLASH) || tokens.get(i).is(Kind.OPEN))) {
      i++;
    }
    boolean four = i < tokens.size() && i > end && tokens.get(i).text().equals("4");
    return four && word(tokens, i + 1).equals("h") ? i + 2 : end;
  }
}
