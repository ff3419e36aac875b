// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.safety.hazard.SheetWords.Match;
import org.meltwright.safety.hazard.SheetWords.Meaning;
import org.meltwright.safety.hazard.SheetWords.Sort;

/** Goes through the tokens of a copied text once and hands what it finds to its entries. */
final class SheetReader {

  private final List<SheetToken> tokens;
  private final SheetAhead ahead;
  private final boolean limitsOnly;
  private final SheetFindings findings;
  private final SheetEntries entries;
  private SheetPart part = SheetPart.ENTRIES;
  private int at;
  private int depth;

  /** Whether a statement's code stands before, on the same line and in the same cell. */
  private boolean afterCode;

  /** Whether nothing but marks stands before in the line or cell. */
  private boolean startOfCell = true;

  private boolean startOfLine = true;

  /** Whether a heading has said that shares are in per cent. */
  private boolean inPercent;

  SheetReader(String copied, boolean limitsOnly) {
    String text = SheetLexer.plain(copied);
    this.tokens = SheetLexer.tokens(text);
    this.ahead = new SheetAhead(tokens);
    this.limitsOnly = limitsOnly;
    this.findings = new SheetFindings(text);
    this.entries = new SheetEntries(findings);
  }

  CopiedSheet read() {
    readAll();
    return entries.toSheet();
  }

  /** Adds to a sheet what the text says of its substance: one alone, without a share. */
  void into(SubstanceSheet sheet) {
    findings.loseRemarks();
    readAll();
    entries.into(sheet);
  }

  private void readAll() {
    while (at < tokens.size()) {
      int before = at;
      step(tokens.get(at));
      if (at == before) {
        problem(SheetProblem.NOT_UNDERSTOOD, at, at + 1);
      }
    }
  }

  SheetFindings findings() {
    return findings;
  }

  private SheetEntry entry() {
    return entries.now();
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
      case OPEN -> open();
      case CLOSE -> bracket(-1);
      case OTHER -> stray();
      case PERCENT -> orHeading(this::stray);
      case DASH -> dash();
      case PICTOGRAM, EQUALS, COMMA, COLON, DOT, SLASH, PLUS -> at++;
    }
  }

  /** Headings may begin with a number or a sign: "2.1", "% w/w". */
  private void orHeading(Runnable other) {
    Optional<Match> match = ahead.headingAt(at, startOfLine);
    if (match.isEmpty() || !heading(match.get())) {
      other.run();
    }
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

  /** A dash alone in its cell says that nothing is said; before a number it is a minus. */
  private void dash() {
    if (ahead.isMinus(at)) {
      problem(SheetProblem.NEGATIVE, at, ahead.endOfQuantity(at + 1));
      return;
    }
    if (startOfCell && ahead.endsCell(at + 1)) {
      entry().emptyCell();
    }
    at++;
  }

  /** "[1]" points to a footnote. */
  private void open() {
    if (ahead.isFootnote(at) && !entry().expectsCategory()) {
      passOver(at, at + 3);
    } else {
      bracket(1);
    }
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
    boolean strange = Character.isLetterOrDigit(tokens.get(at).text().codePointAt(0));
    if ((part == SheetPart.ENTRIES && !header) || strange) {
      problem(SheetProblem.NOT_UNDERSTOOD, at, at + 1);
      return;
    }
    inPercent |= header;
    at++;
  }

  private void problem(SheetProblem code, int from, int to) {
    findings.problem(code, tokens.get(from), tokens.get(to - 1));
    entry().flaw();
    at = to;
    inCell();
  }

  private void remark(CopiedSheet.Remark.Kind kind, int from, int to) {
    findings.remark(kind, tokens.get(from), tokens.get(to - 1));
    at = to;
    inCell();
  }

  private void passOver(int from, int to) {
    entry().passOver(tokens.get(from), tokens.get(to - 1));
    at = to;
    inCell();
  }

  // Codes

  private void hazardCode(SheetToken token) {
    if (part == SheetPart.LABEL || part == SheetPart.PRECAUTIONS) {
      part = SheetPart.LABEL;
      entry().codeAlone(token, null);
    } else {
      entry().code(token);
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
      entry().supplement(token);
      afterText(token.text());
    }
  }

  private void precaution(SheetToken token) {
    part = SheetPart.PRECAUTIONS;
    afterText(token.text());
  }

  private void stars(SheetToken token) {
    if (entry().stars(token)) {
      at++;
    } else {
      remark(CopiedSheet.Remark.Kind.STARS, at, at + 1);
    }
  }

  // Substances and shares

  private void identifier(SheetToken token) {
    part = SheetPart.ENTRIES;
    entries.turnTo(token, tokens, at);
    entry().identifier(token);
    at++;
    afterCode = false;
    inCell();
  }

  private void comparison() {
    Optional<SheetEstimate> estimate = SheetEstimate.at(tokens, at);
    if (estimate.isPresent()) {
      estimate(estimate.get());
      return;
    }
    SheetRange.at(tokens, at, false).ifPresentOrElse(this::range, this::stray);
  }

  private void range(SheetRange range) {
    int from = at;
    boolean ofNext = ahead.isLimitOfNext(range.end(), startOfCell);
    boolean limit =
        (range.ofConcentration() && (ofNext || !entry().expectsShare()))
            || entry().expectsLimit(tokens, at, depth > 0, ofNext && !startOfLine);
    int volume = ahead.endOfVolume(range.end());
    if (part == SheetPart.PRECAUTIONS) {
      at = range.end();
    } else if (volume > range.end()) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, volume);
    } else if (range.isTurnedRound() || !range.isPossible()) {
      problem(SheetProblem.SHARE, from, range.end());
    } else if (limit) {
      entry().limit(range, tokens.get(from), tokens.get(range.end() - 1), ofNext, startOfCell);
      at = range.end();
    } else {
      share(range);
    }
    inCell();
  }

  private void share(SheetRange range) {
    if (entry().startsNewWithShare(startOfLine)) {
      entries.startNew();
    }
    if (entry().hasShare() && !entry().hasShare(range)) {
      entry().shareIsAtLeast(range);
      problem(SheetProblem.TWO_SHARES, at, range.end());
    } else {
      entry().share(range, tokens.get(at), tokens.get(range.end() - 1));
      at = range.end();
    }
    afterCode = false;
  }

  private void number(SheetToken token) {
    Optional<SheetEstimate> estimate = SheetEstimate.at(tokens, at);
    if (estimate.isPresent()) {
      estimate(estimate.get());
    } else if (entry().expectsCategory() && SheetAhead.isRankOrDigit(token)) {
      entry().category(token);
      at++;
      inCell();
    } else if (entry().estimates.isExpected() && ahead.isFourHours(at)) {
      at += 2;
    } else if (limitsOnly && entry().bareLimit(tokens, at).isPresent()) {
      at = entry().bareLimit(tokens, at).getAsInt();
    } else {
      SheetRange.at(tokens, at, entry().hasIdentifier())
          .or(this::shareWithoutUnit)
          .ifPresentOrElse(this::range, this::run);
    }
  }

  /** Where a heading says per cent, the numbers below it need no sign. */
  private Optional<SheetRange> shareWithoutUnit() {
    boolean expected =
        inPercent && part == SheetPart.ENTRIES && entry().hasIdentifier() && !entry().hasShare();
    return expected ? ahead.shareWithoutUnit(at, startOfLine) : Optional.empty();
  }

  private void estimate(SheetEstimate estimate) {
    entry().estimate(estimate);
    at = estimate.end();
    inCell();
  }

  private void word() {
    Optional<SheetRange> range = SheetRange.at(tokens, at, false);
    Optional<Match> match = SheetWords.match(tokens, at);
    if (range.isPresent()) {
      range(range.get());
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
      case DOUBT -> false;
    };
  }

  private boolean claim(Match match) {
    Optional<String> route = match.meaning().route();
    if (!ahead.leadsToClass(match)) {
      return route.isPresent()
          && ahead.estimateFollows(match.end())
          && estimateOf(route.get(), match);
    }
    if (entry().isFull()) {
      problem(SheetProblem.NOT_UNDERSTOOD, at, match.end());
      return true;
    }
    part = part == SheetPart.LABEL || part == SheetPart.PRECAUTIONS ? SheetPart.ENTRIES : part;
    entries.claim(
        new SheetClaim(tokens.get(at), tokens.get(match.end() - 1), match.meaning()), startOfLine);
    at = match.end();
    afterCode = false;
    inCell();
    return true;
  }

  /** "Acute oral toxicity: 450 mg/kg" names no class, but what the number is of. */
  private boolean estimateOf(String route, Match match) {
    take(match, entry().estimates.follow());
    return entry().route(route, true, false);
  }

  private boolean heading(Match match) {
    if (!startOfCell && !ahead.isHeading(match)) {
      return false;
    }
    String target = match.meaning().target();
    if (target.equals("page")) {
      return page();
    }
    begin(SheetPart.of(target), match);
    return true;
  }

  private void begin(SheetPart next, Match heading) {
    int end = heading.end();
    part = next;
    entry().heading(tokens.get(at), end < tokens.size() ? tokens.get(end) : null);
    inPercent |= tokens.subList(at, end).stream().anyMatch(t -> t.is(Kind.PERCENT));
    if (heading.meaning().target().equals("section") && !entry().isEmpty()) {
      entries.startNew();
    }
    at = end;
  }

  /** The head or foot of a page says nothing of a substance. */
  private boolean page() {
    int end = ahead.endOfPageLine(at);
    boolean whole = startOfLine && end > at;
    if (whole) {
      passOver(at, end);
    }
    return whole;
  }

  private boolean word(Match match) {
    String target = match.meaning().target();
    if (SheetAhead.ROUTES.contains(target)) {
      return route(match, target);
    }
    return switch (target) {
      case "category" -> take(match, entry().expectsCategory());
      case "unknown" -> take(match, entry().unknown());
      case "not classified" ->
          take(match, entry().notClassified(tokens.get(at), tokens.get(match.end() - 1)));
      case "factor" -> factor(match.end());
      case "acute", "chronic", "aquatic" -> ahead.leadsToFactor(match) && factor(at);
      case "estimate" -> take(match, entry().estimates.follow());
      case "limit" -> take(match, entry().limitsFollow(match.end()));
      case "note" -> note(match.end());
      case "workplace limit" -> take(match, entry().workplaceLimit());
      case "of" -> take(match, entry().estimates.isExpected());
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
    boolean closes = ahead.is(Kind.CLOSE, match.end());
    boolean text = afterCode && depth == 0 && !ahead.is(Kind.COLON, match.end());
    boolean prose = part != SheetPart.ENTRIES || (text && !entry().estimates.isExpected());
    return !prose && take(match, entry().route(target, ahead.estimateFollows(match.end()), closes));
  }

  private boolean factor(int from) {
    Optional<SheetFactor> factor = SheetFactor.at(tokens, at, from);
    if (factor.isEmpty()) {
      return take(new Match(new Meaning(Sort.WORD, "factor"), from), from > at);
    }
    entry().factor(factor.get(), depth > 0);
    at = factor.get().end();
    inCell();
    return true;
  }

  /** The heading of a column, or letters and numbers behind it. */
  private boolean note(int from) {
    int end = ahead.endOfNotes(from);
    List<String> notes =
        tokens.subList(from, end).stream()
            .filter(SheetAhead::isNote)
            .map(SheetToken::text)
            .toList();
    entry().notes(notes);
    return take(new Match(new Meaning(Sort.WORD, "note"), end), !notes.isEmpty() || startOfCell);
  }

  // What no word of the list names

  /** Takes the words up to the next thing that is known, and asks what they can be. */
  private void run() {
    int from = at;
    int end = ahead.endOfRun(at);
    if (part == SheetPart.PRECAUTIONS || entry().takesKind(ahead.codeFollows(end))) {
      at = end;
    } else if (!isLoneNote() && ahead.leadsToUnknownClass(from, end) >= 0) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, ahead.leadsToUnknownClass(from, end));
    } else if (isOfEntry(from, end)) {
      at = end;
      inCell();
    } else if (part != SheetPart.ENTRIES || (afterCode && !ahead.holdsNumber(from, end))) {
      passOver(from, end);
    } else if (afterCode) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, end);
    } else {
      name(from, end);
    }
  }

  /** A note or an organ of the substance at hand. */
  private boolean isOfEntry(int from, int end) {
    if (isLoneNote()) {
      entry().notes(List.of(tokens.get(from).text()));
      return true;
    }
    return entry().organ(tokens.subList(from, end), depth > 0, afterCode, ahead.codeFollows(end));
  }

  private boolean isLoneNote() {
    return ahead.isLoneNote(at, startOfCell) && !entry().isEmpty();
  }

  private void name(int from, int end) {
    if (entry().isComplete(tokens.get(from)) && ahead.identifierFollows(end)) {
      entries.startNew();
    }
    boolean numbers = !ahead.holdsWord(from, end);
    boolean ofRow = numbers && ahead.isNumberOfRow(end, startOfLine);
    if (ofRow || (!numbers && entry().isNamedAndMeasured())) {
      passOver(from, end);
    } else if (numbers) {
      problem(SheetProblem.NOT_UNDERSTOOD, from, end);
    } else {
      entry().words(tokens.get(from), tokens.get(end - 1));
      at = end;
      inCell();
    }
  }
}
