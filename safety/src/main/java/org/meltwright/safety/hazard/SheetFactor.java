// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.safety.hazard.SheetWords.Match;

/**
 * An M-factor as a sheet writes it.
 *
 * @param first where it starts
 * @param last its number
 * @param value the factor
 * @param acute whether "acute" stands with it
 * @param chronic whether "chronic" stands with it
 * @param end the token behind it
 */
record SheetFactor(
    SheetToken first, SheetToken last, double value, boolean acute, boolean chronic, int end) {

  private static final int LONGEST = 16;

  /** "M" before an equals sign, a bracket or a colon. */
  static boolean isFactor(List<SheetToken> tokens, int at) {
    return tokens.get(at).is(Kind.WORD)
        && tokens.get(at).text().equals("M")
        && at(tokens, at, at + 1).isPresent();
  }

  /** Finds the number behind the word, with "acute" or "chronic" before or behind it. */
  static Optional<SheetFactor> at(List<SheetToken> tokens, int first, int from) {
    boolean acute = false;
    boolean chronic = false;
    int i = from;
    while (i < tokens.size() && i < from + LONGEST && !tokens.get(i).is(Kind.NUMBER)) {
      Optional<Match> word = SheetWords.match(tokens, i);
      boolean minus = SheetAhead.isMinus(tokens, i);
      boolean mark = !minus && (tokens.get(i).isMark() || tokens.get(i).is(Kind.EQUALS));
      if (word.isPresent() && isOfFactor(word.get())) {
        acute |= word.get().meaning().is("acute") || isClass(word.get(), "Aquatic Acute");
        chronic |= word.get().meaning().is("chronic") || isClass(word.get(), "Aquatic Chronic");
        i = word.get().end();
      } else if (mark && !tokens.get(i).is(Kind.NEWLINE)) {
        i++;
      } else {
        return Optional.empty();
      }
    }
    OptionalDouble value =
        i < tokens.size() && tokens.get(i).is(Kind.NUMBER)
            ? SheetRange.number(tokens.get(i).text())
            : OptionalDouble.empty();
    if (value.isEmpty() || SheetRange.at(tokens, i, false).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(withSuffix(tokens, first, i, value.getAsDouble(), acute, chronic));
  }

  private static boolean isOfFactor(Match word) {
    return word.meaning().is("factor")
        || word.meaning().is("acute")
        || word.meaning().is("chronic")
        || word.meaning().is("aquatic")
        || isClass(word, "Aquatic Acute")
        || isClass(word, "Aquatic Chronic");
  }

  private static boolean isClass(Match word, String name) {
    return word.meaning().sort() == SheetWords.Sort.CLASS && word.meaning().target().equals(name);
  }

  /** "M = 10 (acute)": the word may stand behind in brackets. */
  private static SheetFactor withSuffix(
      List<SheetToken> tokens,
      int first,
      int number,
      double value,
      boolean acute,
      boolean chronic) {
    int end = number + 1;
    boolean open = end + 1 < tokens.size() && tokens.get(end).is(Kind.OPEN);
    Optional<Match> word = open ? SheetWords.match(tokens, end + 1) : Optional.empty();
    boolean suffix = !acute && !chronic && word.filter(SheetFactor::isOfFactor).isPresent();
    if (!suffix) {
      return new SheetFactor(tokens.get(first), tokens.get(number), value, acute, chronic, end);
    }
    Match found = word.orElseThrow();
    return new SheetFactor(
        tokens.get(first),
        tokens.get(number),
        value,
        found.meaning().is("acute") || isClass(found, "Aquatic Acute"),
        found.meaning().is("chronic") || isClass(found, "Aquatic Chronic"),
        found.end());
  }
}
