// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.safety.hazard.SheetWords.Match;
import org.meltwright.safety.hazard.SheetWords.Meaning;
import org.meltwright.safety.hazard.SheetWords.Sort;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Goes through the tokens of a copied text once and hands what it finds to its entries. */
final class SheetReader {

  /** How far the reader looks ahead for what a run of words leads to. */
  private static final int AHEAD = 60;

  private static final Set<String> ROUTES =
      Set.of("oral", "dermal", "inhalation", "vapour", "dust", "gas");

  /** In which part of the form the reader is. */
  private enum Part {
    /** Classes and substances. */
    ENTRIES,
    /** The elements of the label, which repeat statements. */
    LABEL,
    /** The text of precautions. */
    PRECAUTIONS,
    /** Other hazards, in prose. */
    PROSE
  }

  private final String text;
  private final List<SheetToken> tokens;
  private final boolean limitsOnly;
  private final SheetFindings findings;
  private final List<SheetEntry> entries = new ArrayList<>();
  private final Map<String, SheetEntry> byCas = new HashMap<>();
  private SheetEntry entry;
  private boolean remarksAreLost;
  private Part part = Part.ENTRIES;
  private int at;
  private int depth;

  /** Whether a statement's code stands before, on the same line and in the same cell. */
  private boolean afterCode;

  /** Whether nothing but marks stands before in the line or cell. */
  private boolean startOfCell = true;

  private boolean startOfLine = true;

  SheetReader(String copied, boolean limitsOnly) {
    if (copied.length() > CopiedSheet.LONGEST) {
      throw new ProblemException(
          Problem.of(SheetProblem.TOO_LONG, String.valueOf(copied.length()))
              .with("longest", String.valueOf(CopiedSheet.LONGEST))
              .with("line", "1")
              .with("column", "1"));
    }
    this.text = SheetLexer.plain(copied);
    this.tokens = SheetLexer.tokens(text);
    this.limitsOnly = limitsOnly;
    this.findings = new SheetFindings(text);
    this.entry = newEntry();
  }

  private SheetEntry newEntry() {
    SheetEntry fresh = new SheetEntry(findings);
    entries.add(fresh);
    return fresh;
  }

  CopiedSheet read() {
    List<CopiedSheet.Line> lines = new ArrayList<>();
    for (SheetEntry e : entries()) {
      e.toLine().ifPresent(lines::add);
    }
    return new CopiedSheet(lines, findings.problems(), findings.remarks());
  }

  /** Adds to a sheet what the text says of its substance: one alone, without a share. */
  void into(SubstanceSheet sheet) {
    remarksAreLost = true;
    List<SheetEntry> said = entries().stream().filter(e -> !e.isEmpty()).toList();
    if (said.isEmpty() && !text.isBlank()) {
      sheet.openFor(HazardClass.values());
    }
    for (SheetEntry e : said) {
      if (e == said.get(0)) {
        e.into(sheet);
      } else {
        e.reportSecond();
      }
    }
  }

  /** The entries, each with what was read, before they are made into substances. */
  List<SheetEntry> entries() {
    while (at < tokens.size()) {
      step(tokens.get(at));
    }
    return entries;
  }

  SheetFindings findings() {
    return findings;
  }

  private void step(SheetToken token) {
    switch (token.kind()) {
      case NEWLINE -> endOfLine();
      case SEPARATOR -> endOfCell();
      case HAZARD_CODE -> hazardCode(token);
      case SUPPLEMENT_CODE -> supplement(token);
      case PRECAUTION_CODE -> precaution(token);
      case OLD_PHRASE -> problem(SheetProblem.OLD_LAW, at, at + 1);
      case CAS, EC, INDEX, REGISTRATION -> identifier(token);
      case STARS -> stars(token);
      case WORD -> word();
      case NUMBER, RANK -> orHeading(() -> number(token));
      case BELOW, ABOVE -> comparison();
      case OPEN -> bracket(1);
      case CLOSE -> bracket(-1);
      case OTHER -> stray();
      case PERCENT -> orHeading(this::stray);
      case DASH -> dash();
      case PICTOGRAM, EQUALS, COMMA, COLON, DOT, SLASH, PLUS -> at++;
    }
  }

  /** Headings may begin with a number or a sign: "2.1", "% w/w". */
  private void orHeading(Runnable other) {
    Optional<Match> match = headingAt(at).or(() -> headingAt(behindNumber()));
    if (match.isEmpty() || !heading(match.get())) {
      other.run();
    }
  }

  private Optional<Match> headingAt(int place) {
    return SheetWords.match(tokens, place).filter(m -> m.meaning().sort() == Sort.HEADING);
  }

  /** "2. Hazards identification": the place behind the number and its point. */
  private int behindNumber() {
    boolean numbered =
        startOfLine
            && at + 1 < tokens.size()
            && tokens.get(at + 1).is(Kind.DOT)
            && isDigit(tokens.get(at));
    return numbered ? at + 2 : at;
  }

  private void endOfLine() {
    at++;
    afterCode = false;
    startOfLine = true;
    startOfCell = true;
    depth = 0;
  }

  private void endOfCell() {
    at++;
    afterCode = false;
    startOfCell = true;
  }

  /** A dash alone in its cell says that nothing is said. */
  private void dash() {
    boolean alone = startOfCell && (at + 1 == tokens.size() || tokens.get(at + 1).endsCell());
    if (alone) {
      entry.unknown();
    }
    at++;
  }

  private void bracket(int step) {
    at++;
    depth = Math.max(0, depth + step);
  }

  private void inCell() {
    startOfCell = false;
    startOfLine = false;
  }

  private void stray() {
    boolean header = startOfCell && tokens.get(at).is(Kind.PERCENT);
    if (part == Part.ENTRIES && !header) {
      problem(SheetProblem.NOT_UNDERSTOOD, at, at + 1);
    } else {
      at++;
    }
  }

  private void problem(SheetProblem code, int from, int to) {
    findings.problem(code, tokens.get(from), tokens.get(to - 1));
    entry.flaw();
    at = to;
    inCell();
  }

  private void remark(CopiedSheet.Remark.Kind kind, int from, int to) {
    findings.remark(kind, tokens.get(from), tokens.get(to - 1));
    at = to;
    inCell();
  }

  /** Passes over words where remarks are kept; else they would be dropped unseen. */
  private void passOver(int from, int to) {
    if (remarksAreLost) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, to);
    } else {
      remark(CopiedSheet.Remark.Kind.TEXT, from, to);
    }
  }

  // Codes

  private void hazardCode(SheetToken token) {
    if (part == Part.LABEL || part == Part.PRECAUTIONS) {
      part = Part.LABEL;
      entry.codeAlone(token, null);
    } else {
      entry.code(token);
    }
    afterText(token.text());
  }

  /** The law's own text behind a code says nothing that the code does not. */
  private void afterText(String code) {
    at = SheetText.end(tokens, at + 1, code);
    afterCode = true;
    inCell();
  }

  private void supplement(SheetToken token) {
    boolean ofClass =
        LabelElements.all().stream().anyMatch(c -> c.statement().equals(token.text()));
    if (ofClass) {
      hazardCode(token);
    } else {
      entry.supplement(token);
      afterText(token.text());
    }
  }

  private void precaution(SheetToken token) {
    part = Part.PRECAUTIONS;
    afterText(token.text());
  }

  private void stars(SheetToken token) {
    if (entry.stars(token)) {
      at++;
    } else {
      remark(CopiedSheet.Remark.Kind.STARS, at, at + 1);
    }
  }

  // Substances and shares

  private void identifier(SheetToken token) {
    part = Part.ENTRIES;
    Optional<SheetEntry> before = earlier(token);
    if (before.isPresent()) {
      entry = before.get();
    } else if (token.is(Kind.CAS) && entry.startsNewWithCas(tokens, at)) {
      entry = newEntry();
    }
    entry.identifier(token);
    at++;
    afterCode = false;
    inCell();
  }

  /** The substance again, as in a table of limits below that of the substances. */
  private Optional<SheetEntry> earlier(SheetToken token) {
    SheetEntry now = entry;
    return token.is(Kind.CAS)
        ? Optional.ofNullable(byCas.putIfAbsent(token.text(), now)).filter(e -> e != now)
        : Optional.empty();
  }

  private void comparison() {
    Optional<SheetEstimate> estimate = SheetEstimate.at(tokens, at);
    if (estimate.isPresent()) {
      estimate(estimate.get());
      return;
    }
    Optional<SheetRange> range = SheetRange.at(tokens, at, false);
    if (range.isEmpty()) {
      stray();
    } else {
      range(range.get());
    }
  }

  private void range(SheetRange range) {
    int from = at;
    boolean ofNext = isOfNext(range.end());
    boolean limit =
        range.ofConcentration()
            || entry.expectsLimit(tokens, at, depth > 0, ofNext && !startOfLine);
    if (part == Part.PRECAUTIONS) {
      at = range.end();
    } else if (range.isTurnedRound() || !range.isPossible()) {
      problem(SheetProblem.SHARE, from, range.end());
    } else if (limit) {
      entry.limit(range, tokens.get(from), tokens.get(range.end() - 1), ofNext, startOfCell);
      at = range.end();
    } else {
      share(range);
    }
    inCell();
  }

  /** A limit in front of its class: "C ≥ 5 %: Skin Corr. 1A", or a cell before the class's. */
  private boolean isOfNext(int from) {
    int i = from;
    while (i < tokens.size() && tokens.get(i).is(Kind.CLOSE)) {
      i++;
    }
    if (i >= tokens.size() || tokens.get(i).is(Kind.COLON)) {
      return i < tokens.size();
    }
    return startOfCell
        && SheetWords.match(tokens, i).filter(m -> m.meaning().isClass()).isPresent();
  }

  private void share(SheetRange range) {
    if (entry.startsNewWithShare(startOfLine)) {
      entry = newEntry();
    }
    if (entry.hasShare() && !entry.hasShare(range)) {
      problem(SheetProblem.TWO_SHARES, at, range.end());
    } else {
      entry.share(range, tokens.get(at), tokens.get(range.end() - 1));
      at = range.end();
    }
    afterCode = false;
  }

  private void number(SheetToken token) {
    Optional<SheetEstimate> estimate = SheetEstimate.at(tokens, at);
    boolean ofClaim = entry.expectsCategory();
    if (estimate.isPresent()) {
      estimate(estimate.get());
    } else if (ofClaim && isCategory(token)) {
      entry.category(token);
      at++;
      inCell();
    } else if (limitsOnly && entry.bareLimit(tokens, at).isPresent()) {
      at = entry.bareLimit(tokens, at).getAsInt();
    } else {
      SheetRange.at(tokens, at, entry.hasIdentifier()).ifPresentOrElse(this::range, this::run);
    }
  }

  private void estimate(SheetEstimate estimate) {
    entry.estimate(estimate);
    at = estimate.end();
    inCell();
  }

  private static boolean isCategory(SheetToken token) {
    return token.is(Kind.RANK) || token.text().length() == 1;
  }

  // Words

  private void word() {
    Optional<SheetRange> ofConcentration =
        SheetRange.at(tokens, at, false).filter(SheetRange::ofConcentration);
    Optional<Match> match = SheetWords.match(tokens, at);
    if (ofConcentration.isPresent()) {
      range(ofConcentration.get());
    } else if (SheetFactor.isFactor(tokens, at)) {
      factor(at + 1);
    } else if (match.isEmpty() || !known(match.get())) {
      run();
    }
  }

  private boolean known(Match match) {
    Meaning meaning = match.meaning();
    return switch (meaning.sort()) {
      case CLASS, PHYSICAL -> claim(match);
      case HEADING -> heading(match);
      case WORD -> word(match);
    };
  }

  private boolean claim(Match match) {
    if (!leadsToClass(match)) {
      return false;
    }
    if (entry.isFull()) {
      problem(SheetProblem.NOT_UNDERSTOOD, at, match.end());
      return true;
    }
    part = part == Part.LABEL || part == Part.PRECAUTIONS ? Part.ENTRIES : part;
    entry.claim(new SheetClaim(tokens.get(at), tokens.get(match.end() - 1), match.meaning()));
    at = match.end();
    afterCode = false;
    inCell();
    return true;
  }

  /** A name of a class counts where a category, a code or "no data" follows; else it is prose. */
  private boolean leadsToClass(Match match) {
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

  private boolean heading(Match match) {
    if (!isHeading(match)) {
      return false;
    }
    String target = match.meaning().target();
    part =
        switch (target) {
          case "label" -> Part.LABEL;
          case "prose" -> Part.PROSE;
          default -> Part.ENTRIES;
        };
    if (target.equals("section") && !entry.isEmpty()) {
      entry = newEntry();
    }
    at = match.end();
    return true;
  }

  /** A heading begins a line or cell, or stands before a colon or a number of a register. */
  private boolean isHeading(Match match) {
    if (startOfCell || match.end() >= tokens.size()) {
      return true;
    }
    int next = match.end();
    while (next < tokens.size() && tokens.get(next).is(Kind.DOT)) {
      next++;
    }
    return next < tokens.size()
        && (tokens.get(next).is(Kind.COLON)
            || tokens.get(next).isIdentifier()
            || tokens.get(next).is(Kind.NEWLINE)
            || tokens.get(next).is(Kind.CLOSE));
  }

  private boolean word(Match match) {
    String target = match.meaning().target();
    if (ROUTES.contains(target)) {
      return route(match, target);
    }
    return switch (target) {
      case "category" -> take(match, entry.expectsCategory());
      case "unknown" -> take(match, entry.unknown());
      case "not classified" ->
          take(match, entry.notClassified(tokens.get(at), tokens.get(match.end() - 1)));
      case "factor" -> factor(match.end());
      case "estimate" -> take(match, entry.expectsEstimate());
      case "limit" -> take(match, entry.limitsFollow());
      case "note" -> note(match.end());
      case "workplace limit" -> take(match, entry.workplaceLimit());
      case "below" -> below(match);
      case "about" -> take(match, SheetRange.at(tokens, match.end(), false).isPresent());
      case "of" -> take(match, entry.isInEstimate());
      default -> false;
    };
  }

  private boolean take(Match match, boolean taken) {
    if (taken) {
      at = match.end();
      inCell();
    }
    return taken;
  }

  private boolean route(Match match, String target) {
    boolean prose = part != Part.ENTRIES || (afterCode && depth == 0 && !entry.isInEstimate());
    return !prose && take(match, entry.route(target, estimateFollows(match.end())));
  }

  private boolean estimateFollows(int from) {
    int i = from;
    while (i < tokens.size() && i < from + AHEAD / 4 && !tokens.get(i).is(Kind.NEWLINE)) {
      if (SheetEstimate.at(tokens, i).isPresent()) {
        return true;
      }
      i++;
    }
    return false;
  }

  private boolean factor(int from) {
    Optional<SheetFactor> factor = SheetFactor.at(tokens, at, from);
    if (factor.isEmpty()) {
      return take(new Match(new Meaning(Sort.WORD, "factor"), from), entry.hasIdentifier());
    }
    entry.factor(factor.get(), startOfCell);
    at = factor.get().end();
    inCell();
    return true;
  }

  private boolean note(int from) {
    int i = from;
    List<String> notes = new ArrayList<>();
    while (i < tokens.size() && (isNote(tokens.get(i)) || tokens.get(i).isMark())) {
      if (tokens.get(i).is(Kind.NEWLINE)) {
        break;
      }
      if (isNote(tokens.get(i))) {
        notes.add(tokens.get(i).text());
      }
      i++;
    }
    if (notes.isEmpty()) {
      return false;
    }
    entry.notes(notes);
    at = i;
    inCell();
    return true;
  }

  private static boolean isNote(SheetToken token) {
    return switch (token.kind()) {
      case WORD -> token.text().length() == 1 && Character.isUpperCase(token.text().charAt(0));
      case NUMBER -> token.text().length() <= 2;
      default -> false;
    };
  }

  private boolean below(Match match) {
    Optional<SheetRange> range = SheetRange.at(tokens, match.end(), false);
    range.ifPresent(
        r -> range(new SheetRange(java.util.OptionalDouble.empty(), r.high(), false, r.end())));
    return range.isPresent();
  }

  // What no word of the list names

  /** Takes the words up to the next thing that is known, and asks what they can be. */
  private void run() {
    int from = at;
    int end = endOfRun();
    if (part == Part.PRECAUTIONS || entry.takesKind(codeFollows(end))) {
      at = end;
    } else if (leadsToUnknownClass(from, end) >= 0) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, leadsToUnknownClass(from, end));
    } else if (entry.organ(
        tokens.subList(from, end), text, depth > 0, afterCode, codeFollows(end))) {
      at = end;
      inCell();
    } else if (part != Part.ENTRIES || (afterCode && !holdsNumber(from, end))) {
      passOver(from, end);
    } else if (afterCode) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, end);
    } else {
      name(from, end);
    }
  }

  private boolean holdsNumber(int from, int end) {
    return tokens.subList(from, end).stream().anyMatch(t -> t.is(Kind.NUMBER) || t.is(Kind.RANK));
  }

  private void name(int from, int end) {
    if (entry.isComplete() && identifierFollows(end)) {
      entry = newEntry();
    }
    entry.words(tokens.get(from), tokens.get(end - 1));
    at = end;
    inCell();
  }

  private int endOfRun() {
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
  private boolean isOfName(SheetRange range) {
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
  private int leadsToUnknownClass(int from, int end) {
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

  private static boolean isDigit(SheetToken token) {
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

  private boolean codeFollows(int from) {
    return codeAfter(from) >= 0;
  }

  /** Whether a name leads to a number of a register or a share, before any class. */
  private boolean identifierFollows(int from) {
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
}
