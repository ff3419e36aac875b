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

  /** Which of the two hazards to water the words beside the number name. */
  private record Named(boolean acute, boolean chronic) {

    static final Named NEITHER = new Named(false, false);

    Named with(Match word) {
      return new Named(
          acute || word.meaning().is("acute") || isClass(word, "Aquatic Acute"),
          chronic || word.meaning().is("chronic") || isClass(word, "Aquatic Chronic"));
    }
  }

  /** Finds the number behind the word, with "acute" or "chronic" before or behind it. */
  static Optional<SheetFactor> at(List<SheetToken> tokens, int first, int from) {
    Named named = Named.NEITHER;
    int i = from;
    while (i < tokens.size() && i < from + LONGEST && !tokens.get(i).is(Kind.NUMBER)) {
      Optional<Match> word = SheetWords.match(tokens, i).filter(SheetFactor::isOfFactor);
      if (word.isEmpty() && !isFiller(tokens, i)) {
        return Optional.empty();
      }
      named = word.map(named::with).orElse(named);
      i = word.map(Match::end).orElse(i + 1);
    }
    boolean number = i < tokens.size() && tokens.get(i).is(Kind.NUMBER);
    return number ? of(tokens, first, i, named) : Optional.empty();
  }

  private static boolean isFiller(List<SheetToken> tokens, int at) {
    SheetToken token = tokens.get(at);
    boolean mark = token.isMark() && !token.is(Kind.NEWLINE);
    return (mark || token.is(Kind.EQUALS)) && !SheetAhead.isMinus(tokens, at);
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

  /** "M = 10 (acute)": the word may stand behind in brackets. A share is no factor. */
  private static Optional<SheetFactor> of(
      List<SheetToken> tokens, int first, int number, Named before) {
    OptionalDouble value = SheetRange.number(tokens.get(number).text());
    if (value.isEmpty() || SheetRange.at(tokens, number, false).isPresent()) {
      return Optional.empty();
    }
    Optional<Match> suffix =
        before.equals(Named.NEITHER) ? suffix(tokens, number + 1) : Optional.empty();
    Named named = suffix.map(before::with).orElse(before);
    int end = suffix.map(Match::end).orElse(number + 1);
    return Optional.of(
        new SheetFactor(
            tokens.get(first),
            tokens.get(number),
            value.getAsDouble(),
            named.acute(),
            named.chronic(),
            end));
  }

  private static Optional<Match> suffix(List<SheetToken> tokens, int at) {
    boolean open = at + 1 < tokens.size() && tokens.get(at).is(Kind.OPEN);
    return open
        ? SheetWords.match(tokens, at + 1).filter(SheetFactor::isOfFactor)
        : Optional.empty();
  }
}
