// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.safety.hazard.SheetWords.Match;
import org.meltwright.safety.hazard.SheetWords.Meaning;
import org.meltwright.safety.hazard.SheetWords.Sort;

/** Looks ahead from a place of a copied text, never further than a bounded number of tokens. */
final class SheetAhead {

  /** How far the reader looks for what words lead to. */
  private static final int AHEAD = 60;

  static final Set<String> ROUTES = Set.of("oral", "dermal", "inhalation", "vapour", "dust", "gas");

  private final List<SheetToken> tokens;

  SheetAhead(List<SheetToken> tokens) {
    this.tokens = tokens;
  }

  /** A name of a class counts where a category, a code or "no data" follows; else it is prose. */
  boolean leadsToClass(Match match) {
    int lines = 0;
    int i = match.end();
    while (i < tokens.size() && i < match.end() + AHEAD) {
      SheetToken token = tokens.get(i);
      Optional<Match> word = SheetWords.match(tokens, i);
      if (token.is(Kind.HAZARD_CODE) || token.is(Kind.SUPPLEMENT_CODE) || token.is(Kind.RANK)) {
        return true;
      }
      if (token.is(Kind.NUMBER)) {
        boolean division = match.meaning().sort() == Sort.PHYSICAL && codeFollows(i + 1);
        return division
            || (token.text().length() == 1 && SheetRange.at(tokens, i, false).isEmpty());
      }
      if (word.isPresent() && isOfClaim(word.get().meaning())) {
        boolean decides = !ROUTES.contains(word.get().meaning().target());
        if (decides) {
          return true;
        }
        i = word.get().end();
      } else if (token.isPunctuation() || token.is(Kind.STARS)) {
        lines += token.is(Kind.NEWLINE) ? 1 : 0;
        if (lines > 1) {
          return false;
        }
        i++;
      } else if (match.meaning().sort() == Sort.PHYSICAL && token.is(Kind.WORD) && lines == 0) {
        i++;
      } else {
        return false;
      }
    }
    return false;
  }

  private static boolean isOfClaim(Meaning meaning) {
    return meaning.is("category")
        || meaning.is("unknown")
        || meaning.is("not classified")
        || (meaning.sort() == Sort.WORD && ROUTES.contains(meaning.target()));
  }

  boolean estimateFollows(int from) {
    int i = from;
    while (i < tokens.size() && i < from + AHEAD / 4 && !tokens.get(i).is(Kind.NEWLINE)) {
      if (SheetEstimate.at(tokens, i).isPresent()) {
        return true;
      }
      i++;
    }
    return false;
  }

  int endOfRun(int at) {
    int open = 0;
    int i = at + 1;
    while (i < tokens.size()) {
      SheetToken token = tokens.get(i);
      open += token.is(Kind.OPEN) ? 1 : token.is(Kind.CLOSE) ? -1 : 0;
      if (open < 0 || endsRun(token, i)) {
        break;
      }
      i++;
    }
    int end = i;
    while (end > at + 1
        && tokens.get(end - 1).isPunctuation()
        && !tokens.get(end - 1).is(Kind.CLOSE)) {
      end--;
    }
    return end;
  }

  private boolean endsRun(SheetToken token, int i) {
    return switch (token.kind()) {
      case NEWLINE, SEPARATOR -> true;
      case WORD -> isKnownInRun(i);
      case NUMBER, BELOW, ABOVE ->
          SheetRange.at(tokens, i, false).filter(r -> !isOfName(r)).isPresent()
              || SheetEstimate.at(tokens, i).isPresent();
      default -> token.isIdentifier() || token.isCode();
    };
  }

  /** "Hydrocarbons, &lt; 2 % aromatics" is a name. */
  boolean isOfName(SheetRange range) {
    return SheetWords.match(tokens, range.end())
        .filter(m -> m.meaning().is("part of a name"))
        .isPresent();
  }

  private boolean isKnownInRun(int i) {
    Optional<Match> match = SheetWords.match(tokens, i);
    boolean known =
        match
            .filter(
                m ->
                    m.meaning().isClass()
                        ? leadsToClass(m)
                        : m.meaning().is("not classified")
                            || m.meaning().is("estimate")
                            || m.meaning().is("factor")
                            || m.meaning().is("limit")
                            || m.meaning().is("workplace limit")
                            || (m.meaning().is("unknown") && m.end() > i + 1)
                            || isHeadingInRun(m))
            .isPresent();
    return known
        || SheetFactor.isFactor(tokens, i)
        || SheetRange.at(tokens, i, false).filter(SheetRange::ofConcentration).isPresent();
  }

  private boolean isHeadingInRun(Match match) {
    int next = match.end();
    while (next < tokens.size()
        && (tokens.get(next).is(Kind.DOT) || tokens.get(next).is(Kind.COLON))) {
      next++;
    }
    return match.meaning().sort() == Sort.HEADING
        && next < tokens.size()
        && tokens.get(next).isIdentifier();
  }

  /** Words, then a category, then a code: a class that the list does not have. */
  int leadsToUnknownClass(int from, int end) {
    for (int i = from; i < end; i++) {
      SheetToken token = tokens.get(i);
      boolean number = i > from && (token.is(Kind.RANK) || isDigit(token));
      boolean named =
          SheetWords.match(tokens, i)
              .filter(m -> m.meaning().is("category"))
              .filter(m -> m.end() < tokens.size() && isRankOrDigit(tokens.get(m.end())))
              .isPresent();
      int code = number ? codeAfter(i + 1) : -1;
      if (code >= 0) {
        return code + 1;
      }
      if (named) {
        return Math.max(end, codeAfter(i + 2) + 1);
      }
    }
    return -1;
  }

  static boolean isDigit(SheetToken token) {
    return token.is(Kind.NUMBER) && token.text().length() == 1;
  }

  private static boolean isRankOrDigit(SheetToken token) {
    return token.is(Kind.RANK) || isDigit(token);
  }

  /** The place of a code behind marks and stars; -1 if something else stands there. */
  private int codeAfter(int from) {
    int i = from;
    while (i < tokens.size()
        && i < from + AHEAD / 4
        && (tokens.get(i).isPunctuation() || tokens.get(i).is(Kind.STARS))) {
      i++;
    }
    return i < tokens.size() && tokens.get(i).is(Kind.HAZARD_CODE) ? i : -1;
  }

  boolean codeFollows(int from) {
    return codeAfter(from) >= 0;
  }

  /** Whether a name leads to a number of a register or a share, before any class. */
  boolean identifierFollows(int from) {
    for (int i = from; i < tokens.size() && i < from + AHEAD; i++) {
      SheetToken token = tokens.get(i);
      if (token.isIdentifier()) {
        return true;
      }
      @Nullable Match match = SheetWords.match(tokens, i).orElse(null);
      boolean claim = match != null && match.meaning().isClass() && leadsToClass(match);
      if (claim || token.isCode()) {
        return false;
      }
      boolean range =
          (token.is(Kind.NUMBER) || token.is(Kind.BELOW) || token.is(Kind.ABOVE))
              && SheetRange.at(tokens, i, false).filter(r -> !isOfName(r)).isPresent();
      if (range) {
        return true;
      }
    }
    return false;
  }

  boolean holdsNumber(int from, int end) {
    return tokens.subList(from, end).stream().anyMatch(t -> t.is(Kind.NUMBER) || t.is(Kind.RANK));
  }

  /** The place behind the letters and numbers of notes. */
  int endOfNotes(int from) {
    int end = from;
    int i = from;
    while (i < tokens.size() && i < from + AHEAD && !tokens.get(i).is(Kind.NEWLINE)) {
      if (isNote(tokens.get(i))) {
        end = i + 1;
      } else if (!tokens.get(i).isMark()) {
        break;
      }
      i++;
    }
    return end;
  }

  /** A capital letter, or a number of at most two digits. */
  static boolean isNote(SheetToken token) {
    return switch (token.kind()) {
      case WORD -> token.text().length() == 1 && Character.isUpperCase(token.text().charAt(0));
      case NUMBER -> token.text().length() <= 2;
      default -> false;
    };
  }
}
