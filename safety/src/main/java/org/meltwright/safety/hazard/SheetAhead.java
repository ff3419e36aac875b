// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.safety.hazard.SheetWords.Match;
import org.meltwright.safety.hazard.SheetWords.Meaning;
import org.meltwright.safety.hazard.SheetWords.Sort;

/** Looks ahead from a place of a copied text, never further than a bounded number of tokens. */
final class SheetAhead {

  /** How far the reader looks for what words lead to. */
  private static final int AHEAD = 60;

  static final Set<String> ROUTES = Set.of("oral", "dermal", "inhalation", "vapour", "dust", "gas");

  private static final Set<String> END_A_RUN =
      Set.of("not classified", "estimate", "factor", "limit", "workplace limit");

  private static final Set<String> VOLUME = Set.of("vol", "volume", "volumen");

  private final List<SheetToken> tokens;

  SheetAhead(List<SheetToken> tokens) {
    this.tokens = tokens;
  }

  /** A name of a class counts where a category, a code or "no data" follows; else it is prose. */
  boolean leadsToClass(Match name) {
    boolean physical = name.meaning().sort() == Sort.PHYSICAL;
    int lines = 0;
    int i = name.end();
    int limit = Math.min(tokens.size(), i + AHEAD);
    while (i >= 0 && i < limit && lines <= 1) {
      if (isOfClass(i, physical)) {
        return true;
      }
      lines += tokens.get(i).is(Kind.NEWLINE) ? 1 : 0;
      i = behindFiller(i, physical && lines == 0);
    }
    return false;
  }

  /** A code, a category, or the word that there is none. */
  private boolean isOfClass(int i, boolean physical) {
    return switch (tokens.get(i).kind()) {
      case HAZARD_CODE, SUPPLEMENT_CODE, RANK -> true;
      case NUMBER -> isCategory(i) || (physical && codeFollows(i + 1));
      case WORD -> SheetWords.match(tokens, i).filter(m -> isOfClaim(m.meaning())).isPresent();
      default -> false;
    };
  }

  private boolean isCategory(int i) {
    return isDigit(tokens.get(i))
        && SheetRange.at(tokens, i, false).isEmpty()
        && SheetEstimate.at(tokens, i).isEmpty();
  }

  private static boolean isOfClaim(Meaning meaning) {
    return meaning.is("category") || meaning.is("unknown") || meaning.is("not classified");
  }

  /** Behind what may stand between name and category: marks, routes, the kind of a gas; else -1. */
  private int behindFiller(int i, boolean words) {
    SheetToken token = tokens.get(i);
    Optional<Match> route =
        SheetWords.match(tokens, i)
            .filter(m -> m.meaning().sort() == Sort.WORD && ROUTES.contains(m.meaning().target()));
    if (route.isPresent()) {
      return route.get().end();
    }
    boolean filler = token.isPunctuation() || token.is(Kind.STARS);
    return filler || (words && token.is(Kind.WORD)) ? i + 1 : -1;
  }

  /** "Acute M-factor": the word of the hazard stands in front. */
  boolean leadsToFactor(Match ofHazard) {
    Optional<Match> word = SheetWords.match(tokens, ofHazard.end());
    return word.filter(m -> m.meaning().is("factor")).isPresent()
        || word.filter(m -> m.meaning().is("aquatic") && leadsToFactor(m)).isPresent();
  }

  /** A heading at a place or, at the start of a line, behind the number of its section. */
  Optional<Match> headingAt(int at, boolean startOfLine) {
    return headingAt(at).or(() -> startOfLine ? headingAt(behindNumber(at)) : Optional.empty());
  }

  private Optional<Match> headingAt(int place) {
    return SheetWords.match(tokens, place).filter(m -> m.meaning().sort() == Sort.HEADING);
  }

  /** "2. Hazards identification": the place behind the number and its point. */
  private int behindNumber(int at) {
    boolean numbered =
        at + 1 < tokens.size() && tokens.get(at + 1).is(Kind.DOT) && isDigit(tokens.get(at));
    return numbered ? at + 2 : at;
  }

  /** Within a line a heading stands before a colon, a number of a register or its end. */
  boolean isHeading(Match match) {
    int next = match.end();
    while (next < tokens.size() && tokens.get(next).is(Kind.DOT)) {
      next++;
    }
    return match.end() >= tokens.size()
        || (next < tokens.size()
            && (tokens.get(next).is(Kind.COLON)
                || tokens.get(next).isIdentifier()
                || tokens.get(next).is(Kind.NEWLINE)
                || tokens.get(next).is(Kind.CLOSE)));
  }

  /** A limit in front of its class: "C ≥ 5 %: Skin Corr. 1A", or a cell before the class's. */
  boolean isLimitOfNext(int from, boolean startOfCell) {
    int i = from;
    while (i < tokens.size() && tokens.get(i).is(Kind.CLOSE)) {
      i++;
    }
    boolean colon = i < tokens.size() && tokens.get(i).is(Kind.COLON);
    return colon
        || (startOfCell
            && SheetWords.match(tokens, i).filter(m -> m.meaning().isClass()).isPresent());
  }

  boolean is(Kind kind, int at) {
    return at < tokens.size() && tokens.get(at).is(kind);
  }

  boolean endsCell(int at) {
    return at >= tokens.size() || tokens.get(at).endsCell();
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

  /** The place behind words that the list does not have, up to the next thing that is known. */
  int endOfRun(int at) {
    int open = 0;
    int end = at + 1;
    for (int i = at + 1; i < tokens.size(); i++) {
      SheetToken token = tokens.get(i);
      open += token.is(Kind.OPEN) ? 1 : token.is(Kind.CLOSE) ? -1 : 0;
      if (open < 0 || endsRun(token, i)) {
        return end;
      }
      if (!token.isPunctuation() || token.is(Kind.CLOSE)) {
        end = i + 1;
      }
    }
    return end;
  }

  private boolean endsRun(SheetToken token, int i) {
    return switch (token.kind()) {
      case NEWLINE, SEPARATOR -> true;
      case WORD -> isKnownInRun(i);
      case OPEN -> headingAt(i + 1).filter(this::isHeadingInRun).isPresent();
      case NUMBER, BELOW, ABOVE -> isShare(token, i) || SheetEstimate.at(tokens, i).isPresent();
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
    return SheetWords.match(tokens, i).filter(m -> endsRun(m, i)).isPresent()
        || SheetFactor.isFactor(tokens, i)
        || SheetRange.at(tokens, i, false).filter(r -> !isOfName(r)).isPresent();
  }

  private boolean endsRun(Match match, int i) {
    Meaning meaning = match.meaning();
    return switch (meaning.sort()) {
      case CLASS, PHYSICAL -> leadsToClass(match);
      case HEADING -> isHeadingInRun(match);
      case DOUBT -> false;
      case WORD ->
          END_A_RUN.contains(meaning.target()) || (meaning.is("unknown") && match.end() > i + 1);
    };
  }

  private boolean isHeadingInRun(Match match) {
    int next = match.end();
    while (is(Kind.DOT, next) || is(Kind.COLON, next) || is(Kind.CLOSE, next)) {
      next++;
    }
    return next < tokens.size() && tokens.get(next).isIdentifier();
  }

  /** Behind words, a category and perhaps a code: a class that the list does not have; else -1. */
  int leadsToUnknownClass(int from, int end) {
    for (int i = from; i < end; i++) {
      int code = i > from && isRankOrDigit(tokens.get(i)) ? codeAfter(i + 1) : -1;
      if (code >= 0) {
        return code + 1;
      }
      if (isCategoryWithWord(i)) {
        return Math.max(end, codeAfter(i + 2) + 1);
      }
    }
    return -1;
  }

  private boolean isCategoryWithWord(int i) {
    return SheetWords.match(tokens, i)
        .filter(m -> m.meaning().is("category"))
        .filter(m -> m.end() < tokens.size() && isRankOrDigit(tokens.get(m.end())))
        .isPresent();
  }

  static boolean isDigit(SheetToken token) {
    return token.is(Kind.NUMBER) && token.text().length() == 1;
  }

  static boolean isRankOrDigit(SheetToken token) {
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

  /** The end of a line that holds no code and no number of a register; else the same place. */
  int endOfPageLine(int from) {
    int i = from;
    while (i < tokens.size() && !tokens.get(i).is(Kind.NEWLINE)) {
      if (tokens.get(i).isCode() || tokens.get(i).isIdentifier()) {
        return from;
      }
      i++;
    }
    return i;
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
      if (token.isCode() || isClass(i)) {
        return false;
      }
      if (isShare(token, i)) {
        return true;
      }
    }
    return false;
  }

  /** Whether words that the list does not have are the next in the line, behind other numbers. */
  boolean nameFollows(int from) {
    int i = from;
    while (i < tokens.size() && isBeforeName(tokens.get(i))) {
      i++;
    }
    return i < tokens.size()
        && tokens.get(i).is(Kind.WORD)
        && SheetWords.match(tokens, i).isEmpty();
  }

  private static boolean isBeforeName(SheetToken token) {
    return token.isIdentifier()
        || (token.isPunctuation() && !token.is(Kind.NEWLINE))
        || token.is(Kind.SEPARATOR);
  }

  /** "5 % v/v", "5 Vol.-%": a share by volume is none by mass. The place behind its words. */
  int endOfVolume(int from) {
    int i = from;
    while (is(Kind.OPEN, i) || is(Kind.PERCENT, i)) {
      i++;
    }
    if (!isVolume(i)) {
      return from;
    }
    i = is(Kind.SLASH, i + 1) ? i + 3 : i + 1;
    while (is(Kind.DOT, i) || is(Kind.DASH, i) || is(Kind.PERCENT, i) || is(Kind.CLOSE, i)) {
      i++;
    }
    return Math.min(i, tokens.size());
  }

  private boolean isVolume(int at) {
    String word = is(Kind.WORD, at) ? SheetWords.key(tokens.get(at)) : "";
    return VOLUME.contains(word) || (word.equals("v") && is(Kind.SLASH, at + 1));
  }

  private boolean isClass(int i) {
    return SheetWords.match(tokens, i)
        .filter(m -> m.meaning().isClass() && leadsToClass(m))
        .isPresent();
  }

  private boolean isShare(SheetToken token, int i) {
    return (token.is(Kind.NUMBER) || token.is(Kind.BELOW) || token.is(Kind.ABOVE))
        && SheetRange.at(tokens, i, false).filter(r -> !isOfName(r)).isPresent();
  }

  /** A number in front of a cell, of a point or of a number of a register counts rows. */
  boolean isNumberOfRow(int next, boolean startOfLine) {
    return next < tokens.size()
        && (tokens.get(next).isIdentifier()
            || tokens.get(next).is(Kind.DOT)
            || (startOfLine && tokens.get(next).endsCell()));
  }

  boolean holdsWord(int from, int end) {
    return tokens.subList(from, end).stream().anyMatch(t -> t.is(Kind.WORD));
  }

  boolean holdsNumber(int from, int end) {
    return tokens.subList(from, end).stream().anyMatch(t -> t.is(Kind.NUMBER) || t.is(Kind.RANK));
  }

  /** The time that estimates of the law are for; another time is another figure. */
  boolean isFourHours(int at) {
    return tokens.get(at).text().equals("4")
        && at + 1 < tokens.size()
        && Set.of("h", "hours", "hour", "std", "stunden")
            .contains(SheetWords.key(tokens.get(at + 1)));
  }

  /** A small number alone in its brackets. */
  boolean isFootnote(int open) {
    return open + 2 < tokens.size()
        && tokens.get(open + 1).is(Kind.NUMBER)
        && tokens.get(open + 1).text().matches("\\d{1,2}")
        && tokens.get(open + 2).is(Kind.CLOSE);
  }

  /** A number alone in its cell or line, or before a class; the number of a row stands first. */
  Optional<SheetRange> shareWithoutUnit(int at, boolean startOfLine) {
    OptionalDouble value = SheetRange.number(tokens.get(at).text());
    int next = at + 1;
    boolean ofRow = startOfLine && next < tokens.size() && tokens.get(next).is(Kind.SEPARATOR);
    boolean alone = endsCell(next) || isClass(next);
    return value.isPresent() && alone && !ofRow
        ? Optional.of(new SheetRange(value, value, false, next))
        : Optional.empty();
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

  /** A capital letter alone in its cell: a note of Annex VI. */
  boolean isLoneNote(int at, boolean startOfCell) {
    return startOfCell
        && tokens.get(at).is(Kind.WORD)
        && isNote(tokens.get(at))
        && endsCell(at + 1);
  }

  /** A capital letter, or a number of at most two digits. */
  static boolean isNote(SheetToken token) {
    return switch (token.kind()) {
      case WORD -> token.text().length() == 1 && Character.isUpperCase(token.text().charAt(0));
      case NUMBER -> token.text().length() <= 2;
      default -> false;
    };
  }

  /** Where a number with its unit ends. */
  int endOfQuantity(int from) {
    return SheetEstimate.at(tokens, from)
        .map(SheetEstimate::end)
        .or(() -> SheetRange.at(tokens, from, false).map(SheetRange::end))
        .orElse(from + 1);
  }

  boolean isMinus(int at) {
    return isMinus(tokens, at);
  }

  /**
   * Whether a dash makes the number behind it one below zero: it touches the number and nothing
   * before it, and neither goes a range on nor begins a name such as "-1,2-propanediol".
   */
  static boolean isMinus(List<SheetToken> tokens, int at) {
    if (!tokens.get(at).is(Kind.DASH) || at + 1 >= tokens.size()) {
      return false;
    }
    SheetToken number = tokens.get(at + 1);
    boolean touches =
        (number.is(Kind.NUMBER) || number.is(Kind.RANK)) && number.start() == tokens.get(at).end();
    return touches && !goesOn(tokens, at) && !beginsName(tokens, at + 1);
  }

  private static boolean goesOn(List<SheetToken> tokens, int at) {
    if (at == 0) {
      return false;
    }
    SheetToken before = tokens.get(at - 1);
    boolean number = before.is(Kind.NUMBER) || before.is(Kind.PERCENT) || before.is(Kind.RANK);
    boolean touchesWord =
        before.end() == tokens.get(at).start()
            && (before.is(Kind.WORD) || before.is(Kind.CLOSE) || before.is(Kind.DOT));
    return number || touchesWord;
  }

  private static boolean beginsName(List<SheetToken> tokens, int number) {
    return number + 2 < tokens.size()
        && tokens.get(number + 1).is(Kind.DASH)
        && tokens.get(number + 1).start() == tokens.get(number).end()
        && tokens.get(number + 2).is(Kind.WORD);
  }
}
