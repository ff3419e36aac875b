// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.meltwright.safety.hazard.SheetToken.Kind;

/**
 * A share or a range of shares as a sheet writes it, in per cent.
 *
 * @param low the low end; empty if only the high end is said
 * @param high the high end; empty if it is open above
 * @param ofConcentration whether it speaks of a concentration C, as a limit does
 * @param end the token behind it
 */
record SheetRange(OptionalDouble low, OptionalDouble high, boolean ofConcentration, int end) {

  private static final double PER_MILLION = 1e-4;

  boolean isTurnedRound() {
    return low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble();
  }

  boolean isPossible() {
    return low.orElse(0) <= 100 && high.orElse(0) <= 100;
  }

  /** A number alone is where a limit begins. */
  SheetRange asLimit() {
    return low.equals(high)
        ? new SheetRange(low, OptionalDouble.empty(), ofConcentration, end)
        : this;
  }

  double lowPercent() {
    return low.orElse(0);
  }

  double highPercent() {
    return high.orElse(100);
  }

  /**
   * Finds a range at a place: with a unit or a sign of comparison, or two numbers and a dash. Words
   * such as "max." and "ca." may stand before it.
   */
  static Optional<SheetRange> at(List<SheetToken> tokens, int from, boolean bareRange) {
    return new Parser(tokens, from).range(bareRange);
  }

  /** "0.1 to 1", as the tables here write a limit: without a unit; empty if it is none. */
  static Optional<SheetRange> bare(List<SheetToken> tokens, int at) {
    OptionalDouble from = number(tokens.get(at).text());
    boolean to =
        at + 2 < tokens.size()
            && SheetWords.key(tokens.get(at + 1)).equals("to")
            && tokens.get(at + 2).is(Kind.NUMBER);
    OptionalDouble below = to ? number(tokens.get(at + 2).text()) : OptionalDouble.empty();
    int end = at + (to ? 3 : 1);
    boolean sign = end < tokens.size() && tokens.get(end).is(Kind.PERCENT);
    return from.isEmpty() || (to && below.isEmpty())
        ? Optional.empty()
        : Optional.of(new SheetRange(from, below, true, sign ? end + 1 : end));
  }

  /** A number with a decimal point or comma; empty if it is neither. */
  static OptionalDouble number(String text) {
    long marks = text.chars().filter(c -> c == '.' || c == ',').count();
    return marks > 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
  }

  /** Reads one range, left to right. */
  private static final class Parser {
    private final List<SheetToken> tokens;
    private int at;
    private boolean unit;
    private boolean perMillion;
    private boolean compared;
    private boolean concentration;

    Parser(List<SheetToken> tokens, int from) {
      this.tokens = tokens;
      this.at = from;
    }

    Optional<SheetRange> range(boolean bareRange) {
      concentration = takeConcentration();
      takeWord("about");
      Optional<Kind> sign = comparison().or(this::comparisonInWords);
      OptionalDouble first = value();
      if (first.isEmpty()) {
        return Optional.empty();
      }
      return takeConcentrationBetween() ? between(first) : rest(sign, first, bareRange);
    }

    /** "2 % ≤ C &lt; 5 %": the concentration stands between its ends. */
    private Optional<SheetRange> between(OptionalDouble first) {
      boolean below = peek(Kind.BELOW);
      comparison();
      OptionalDouble second = value();
      return below && second.isPresent() ? of(first, second) : Optional.empty();
    }

    private Optional<SheetRange> rest(
        Optional<Kind> sign, OptionalDouble first, boolean bareRange) {
      int afterFirst = at;
      if (takeDash()) {
        Optional<Kind> second = comparison();
        OptionalDouble last = value();
        boolean complete = last.isPresent() && (unit || compared || bareRange);
        if (complete && second.map(k -> k == Kind.BELOW).orElse(true)) {
          return of(first, last);
        }
        at = afterFirst;
      }
      if (!unit && !compared) {
        return Optional.empty();
      }
      return switch (sign.orElse(Kind.EQUALS)) {
        case BELOW -> of(OptionalDouble.empty(), first);
        case ABOVE -> of(first, OptionalDouble.empty());
        default -> of(first, first);
      };
    }

    private Optional<SheetRange> of(OptionalDouble low, OptionalDouble high) {
      double factor = perMillion ? PER_MILLION : 1;
      return Optional.of(
          new SheetRange(times(low, factor), times(high, factor), concentration, at));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
      return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    private boolean peek(Kind kind) {
      return at < tokens.size() && tokens.get(at).is(kind);
    }

    private boolean isWord(int place, String... words) {
      boolean word = place < tokens.size() && tokens.get(place).is(Kind.WORD);
      return word && List.of(words).contains(SheetWords.key(tokens.get(place)));
    }

    /** "C", "Conc." or "Konz." before a sign of comparison. */
    private boolean takeConcentration() {
      int next = at + 1;
      while (next < tokens.size() && tokens.get(next).is(Kind.DOT)) {
        next++;
      }
      boolean compares =
          next < tokens.size()
              && (tokens.get(next).is(Kind.BELOW) || tokens.get(next).is(Kind.ABOVE));
      boolean takes = compares && isWord(at, "c", "conc", "konz", "concentration", "konzentration");
      at = takes ? next : at;
      return takes;
    }

    private boolean takeConcentrationBetween() {
      int before = at;
      if (comparison().filter(k -> k == Kind.BELOW).isPresent()
          && isWord(at, "c", "conc", "konz", "x")) {
        concentration = !isWord(at, "x");
        at++;
        while (peek(Kind.DOT) || peek(Kind.PERCENT)) {
          at++;
        }
        return true;
      }
      at = before;
      return false;
    }

    private Optional<Kind> comparison() {
      if (!peek(Kind.BELOW) && !peek(Kind.ABOVE)) {
        return Optional.empty();
      }
      compared = true;
      return Optional.of(tokens.get(at++).kind());
    }

    /** "max. 5 %", "up to 5 %", "at least 5 %": without a unit they are no share. */
    private Optional<Kind> comparisonInWords() {
      if (takeWord("below") || (!isWord(at, "to") && takeWord("to"))) {
        return Optional.of(Kind.BELOW);
      }
      return takeWord("above") ? Optional.of(Kind.ABOVE) : Optional.empty();
    }

    /** Takes a word of the list, and the point of its abbreviation. */
    private boolean takeWord(String meaning) {
      Optional<SheetWords.Match> word =
          SheetWords.match(tokens, at).filter(m -> m.meaning().is(meaning));
      at = word.map(SheetWords.Match::end).orElse(at);
      while (word.isPresent() && peek(Kind.DOT)) {
        at++;
      }
      return word.isPresent();
    }

    private OptionalDouble value() {
      if (!peek(Kind.NUMBER)) {
        return OptionalDouble.empty();
      }
      OptionalDouble value = number(tokens.get(at).text());
      at++;
      takeUnit();
      return value;
    }

    /** "%", "Gew.-%", "% w/w", "wt%", "ppm"; a per cent sign is the least that makes a unit. */
    private void takeUnit() {
      int next = afterWeight(at);
      if (next < tokens.size() && tokens.get(next).is(Kind.PERCENT)) {
        unit = true;
        at = afterWeight(next + 1);
      } else if (unitAsHeading().isPresent()) {
        unit = true;
        at = unitAsHeading().getAsInt();
      } else if (isWord(at, "ppm")) {
        unit = true;
        perMillion = true;
        at++;
      }
    }

    /** "Gew.-%" and "weight-%" are headings of columns as well. */
    private OptionalInt unitAsHeading() {
      return SheetWords.match(tokens, at)
          .filter(m -> m.meaning().sort() == SheetWords.Sort.HEADING)
          .filter(m -> tokens.get(m.end() - 1).is(Kind.PERCENT))
          .map(m -> OptionalInt.of(m.end()))
          .orElse(OptionalInt.empty());
    }

    /** Behind words such as "by weight", with their dots, hyphens and brackets. */
    private int afterWeight(int from) {
      int next = from;
      while (next < tokens.size() && tokens.get(next).is(Kind.OPEN)) {
        next++;
      }
      Optional<SheetWords.Match> match =
          SheetWords.match(tokens, next).filter(m -> m.meaning().is("by weight"));
      if (match.isEmpty()) {
        return from;
      }
      next = match.get().end();
      while (next < tokens.size() && isInUnit(tokens.get(next))) {
        next++;
      }
      return next;
    }

    private static boolean isInUnit(SheetToken token) {
      return token.is(Kind.DOT) || token.is(Kind.DASH) || token.is(Kind.CLOSE);
    }

    private boolean takeDash() {
      int before = at;
      if (peek(Kind.DASH)) {
        at++;
        return true;
      }
      boolean to = takeWord("to");
      boolean signs = !to && compared && (peek(Kind.BELOW) || peek(Kind.COMMA));
      return at > before || signs;
    }
  }
}
