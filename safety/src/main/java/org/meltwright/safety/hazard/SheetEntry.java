// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetToken.Kind;
import org.meltwright.units.Problem;

/** What a sheet says of one substance, as it is being read. */
final class SheetEntry {

  private static final int MOST_CLAIMS = 200;

  /** An M-factor with the class behind which it stands. */
  record Factor(SheetFactor factor, @Nullable SheetClaim claim, boolean attached) {}

  /** Words with their first and their last token. */
  private record Words(SheetToken first, SheetToken last) {}

  private final SheetFindings findings;
  final List<SheetClaim> claims = new ArrayList<>();
  final Map<String, List<LoneCode>> alone = new LinkedHashMap<>();
  final List<Factor> factors = new ArrayList<>();
  final SheetEstimates estimates;
  final List<SheetToken> supplements = new ArrayList<>();
  final List<String> notes = new ArrayList<>();
  final SheetNumbers numbers = new SheetNumbers();
  private final SheetName name;
  private final SheetLimits limits = new SheetLimits();
  private @Nullable Words notClassified;
  private final List<Words> saidNone = new ArrayList<>();
  private final List<Words> passedOver = new ArrayList<>();
  private @Nullable SheetRange share;
  private @Nullable Words shareWords;
  private boolean classFirst;
  private boolean saidSinceNumber;
  private boolean unknown;
  private boolean noData;
  private boolean doubted;
  private boolean workplaceLimit;
  private boolean flawed;

  SheetEntry(SheetFindings findings) {
    this.findings = findings;
    this.name = new SheetName(findings);
    this.estimates = new SheetEstimates(findings);
  }

  // What the reader asks

  boolean isEmpty() {
    return !hasContent() && name.isEmpty() && !flawed;
  }

  boolean hasContent() {
    return hasIdentifier()
        || share != null
        || !claims.isEmpty()
        || !alone.isEmpty()
        || !supplements.isEmpty()
        || !factors.isEmpty()
        || !estimates.all().isEmpty()
        || !notes.isEmpty()
        || unknown
        || notClassified != null;
  }

  /** Whether a further name is that of a further substance. */
  boolean isComplete(SheetToken next) {
    boolean nameGoesOn = name.mayGoOnWith(next) && share == null && claims.isEmpty();
    return (hasIdentifier() && !nameGoesOn)
        || (!claims.isEmpty() && !beginsLineOf(next))
        || (share != null && !name.isEmpty());
  }

  /** Whether its classes stand in front of its name in the line, in the first column. */
  private boolean beginsLineOf(SheetToken token) {
    return claims.get(0).first.line() == token.line() && name.isEmpty() && share == null;
  }

  /** Before any class, the concentration of a substance is its share. */
  boolean expectsShare() {
    return hasIdentifier() && share == null && claims.isEmpty() && !limits.follow();
  }

  /** Whether its classes stand in the first column, in front of name and number. */
  boolean isClassFirst() {
    return classFirst;
  }

  /** Whether words that follow are neither its name nor that of a further substance. */
  boolean isNamedAndMeasured() {
    return hasIdentifier() && share != null && !name.isEmpty();
  }

  /** A class that only a test can tell has kinds: "Org. Perox. D", "Press. Gas (Comp.)". */
  boolean takesKind(boolean codeFollows) {
    SheetClaim claim = claim();
    return codeFollows && claim != null && claim.isPhysical() && claim.codes.isEmpty();
  }

  /** No substance is in so many classes. */
  boolean isFull() {
    return claims.size() >= MOST_CLAIMS;
  }

  boolean hasIdentifier() {
    return !numbers.areNone();
  }

  boolean hasShare() {
    return share != null;
  }

  boolean hasShare(SheetRange range) {
    return share != null
        && share.lowPercent() == range.lowPercent()
        && share.highPercent() == range.highPercent();
  }

  /** Whether a share or a class was said behind its last number. */
  boolean saysMoreThanNumbers() {
    return saidSinceNumber;
  }

  /** Whether all is said of it but a number of a register. */
  boolean lacksNumberAlone() {
    return numbers.areNone() && saidSinceNumber && !claims.isEmpty() && !name.isEmpty();
  }

  /** Whether its classes alone stand above a number: they are those of the whole mixture. */
  boolean isClassesAbove(SheetToken number) {
    return !claims.isEmpty()
        && numbers.areNone()
        && share == null
        && name.isEmpty()
        && !beginsLineOf(number);
  }

  /** Tables whose lines begin with the share. */
  boolean startsNewWithShare(boolean startOfLine) {
    return startOfLine && share != null && (hasIdentifier() || !claims.isEmpty());
  }

  private @Nullable SheetClaim claim() {
    return claims.isEmpty() ? null : claims.get(claims.size() - 1);
  }

  boolean expectsCategory() {
    SheetClaim claim = claim();
    return claim != null && claim.lacksCategory() && claim.codes.isEmpty();
  }

  boolean limitsFollow(int behindWord) {
    limits.follow(hasIdentifier() || !claims.isEmpty(), behindWord);
    return true;
  }

  boolean expectsLimit(List<SheetToken> tokens, int at, boolean inBrackets, boolean ofNext) {
    return limits.areExpected(claim(), tokens, at, inBrackets, ofNext);
  }

  // What the reader finds

  void flaw() {
    flawed = true;
  }

  void claim(SheetClaim claim) {
    limits.giveTo(claim);
    estimates.areOver();
    saidSinceNumber = true;
    claims.add(claim);
  }

  void category(SheetToken token) {
    SheetClaim claim = claim();
    if (claim != null) {
      claim.category(token);
    }
  }

  boolean stars(SheetToken token) {
    SheetClaim claim = claim();
    boolean ofCategory =
        claim != null && claim.hasCategory() && claim.codes.isEmpty() && token.text().length() == 1;
    if (claim != null && ofCategory) {
      claim.minimum = true;
    }
    return ofCategory;
  }

  void code(SheetToken token) {
    SheetClaim claim = claim();
    if (claim == null
        || claim.limitApart
        || !claim.mayHave(token.text())
        || claim.leaves(token.text(), claims)) {
      codeAlone(token, claim);
    } else {
      claim.code(token);
    }
  }

  void codeAlone(SheetToken token, @Nullable SheetClaim claim) {
    LoneCode code = new LoneCode(token, claim);
    alone.computeIfAbsent(token.text(), t -> new ArrayList<>()).add(code);
    if (claim != null) {
      claim.notOwn.add(code);
    }
  }

  void supplement(SheetToken token) {
    supplements.add(token);
  }

  void identifier(SheetToken token) {
    if (numbers.areNone()) {
      name.standsBehindNumber(name.isEmpty());
      classFirst = !claims.isEmpty() && claims.get(0).first.line() == token.line();
      name.passOverWordsFarAbove(token, claims.isEmpty());
    }
    saidSinceNumber &= token.is(Kind.REGISTRATION);
    if (!numbers.hold(token)) {
      SheetNumbers.problem(token).ifPresent(p -> flaw(p, token));
      numbers.add(token);
    }
  }

  /** Of two shares that contradict each other the higher is kept. */
  void shareIsAtLeast(SheetRange range) {
    share = share == null || share.highPercent() < range.highPercent() ? range : share;
  }

  void share(SheetRange range, SheetToken first, SheetToken last) {
    share = range;
    saidSinceNumber = true;
    shareWords = new Words(first, last);
  }

  void limit(
      SheetRange said, SheetToken first, SheetToken last, boolean ofNext, boolean startOfCell) {
    SheetRange range = said.asLimit();
    SheetClaim claim = claim();
    if (ofNext || claim == null) {
      reportWaitingLimit();
      limits.waits(range, first, last);
    } else if (claim.limit == null) {
      claim.limit = range;
      claim.limitApart = startOfCell;
    } else {
      flawed = true;
      findings.problem(SheetProblem.LIMIT_WITHOUT_CLASS, first, last);
    }
  }

  private void reportWaitingLimit() {
    flawed |= limits.reportWaiting(findings);
  }

  OptionalInt bareLimit(List<SheetToken> tokens, int at) {
    return SheetLimits.bare(claim(), tokens, at);
  }

  /** A cell without anything: no word of harmlessness if nothing else is said. */
  void emptyCell() {
    unknown = true;
  }

  boolean unknown() {
    SheetClaim claim = claim();
    if (claim != null && claim.lacksCategory() && claim.codes.isEmpty()) {
      claim.unknown = true;
    } else {
      unknown = true;
      noData = true;
    }
    return true;
  }

  boolean notClassified(SheetToken first, SheetToken last) {
    saidNone.add(new Words(first, last));
    SheetClaim claim = claim();
    if (claim != null && claim.lacksCategory() && claim.codes.isEmpty()) {
      claim.none = true;
    } else {
      notClassified = new Words(first, last);
    }
    return true;
  }

  boolean route(String word, boolean estimateFollows, boolean beforeBracket) {
    SheetClaim claim = claim();
    if (estimates.isExpected() || estimateFollows) {
      estimates.route(word, beforeBracket);
      return true;
    }
    if (claim != null) {
      claim.routes.add(word);
    }
    return claim != null;
  }

  /** The words in brackets or cells beside a class that names organs. */
  boolean organ(List<SheetToken> run, boolean inBrackets, boolean afterCode, boolean codeFollows) {
    SheetClaim claim = claim();
    if (claim == null || !claim.hasCategory() || !claim.namesOrgans()) {
      return false;
    }
    String words = findings.words(run.get(0), run.get(run.size() - 1));
    boolean known = OrganNames.english(words).isPresent();
    boolean organ = inBrackets || (known && claim.limit == null) || (codeFollows && !afterCode);
    if (organ) {
      TextTable.items(words, ",").forEach(o -> claim.organs.add(OrganNames.english(o).orElse(o)));
    }
    return organ;
  }

  /** A heading without a colon is one of a column. */
  void heading(SheetToken first, @Nullable SheetToken next) {
    if (next == null || !next.is(Kind.COLON)) {
      name.heading(first.line());
    }
  }

  void passOver(SheetToken first, SheetToken last) {
    findings.passOver(first, last);
    passedOver.add(new Words(first, last));
  }

  void words(SheetToken first, SheetToken last) {
    name.add(first, last);
  }

  void factor(SheetFactor factor, boolean inBrackets) {
    factors.add(new Factor(factor, claim(), inBrackets));
  }

  void estimate(SheetEstimate estimate) {
    estimates.add(estimate, claim());
  }

  boolean workplaceLimit() {
    workplaceLimit = true;
    return true;
  }

  void notes(List<String> marks) {
    notes.addAll(marks);
  }

  // What comes of it

  private void flaw(Problem problem, SheetToken token) {
    flawed = true;
    findings.problem(problem, token);
  }

  /** The substance with its share; empty if the text says nothing of any. */
  Optional<CopiedSheet.Line> toLine() {
    reportWaitingLimit();
    reportWordsThatAreNoName();
    if (!hasContent() && !flawed) {
      return Optional.empty();
    }
    return Optional.of(
        new CopiedSheet.Line(
            addTo(SubstanceHazards.builder(name())).build(),
            end(SheetRange::lowPercent),
            end(SheetRange::highPercent)));
  }

  /** Adds what was read to a sheet of a substance that is named elsewhere. */
  void into(SubstanceSheet sheet) {
    reportWaitingLimit();
    reportWordsThatAreNoName();
    if (shareWords != null) {
      findings.problem(SheetProblem.ONE_SUBSTANCE, shareWords.first(), shareWords.last());
    }
    addTo(sheet);
  }

  /** Says that a second substance stands where one is meant. */
  void reportSecond() {
    numbers
        .first()
        .or(() -> claims.stream().map(c -> c.first).findFirst())
        .or(() -> Optional.ofNullable(shareWords).map(Words::first))
        .ifPresent(first -> findings.problem(SheetProblem.ONE_SUBSTANCE, first, first));
    reportWordsThatAreNoName();
  }

  private SubstanceSheet addTo(SubstanceSheet sheet) {
    numbers.addTo(sheet);
    if (workplaceLimit) {
      sheet.unionWorkplaceLimit();
    }
    SheetResolver resolver = new SheetResolver(this, findings);
    resolver.resolve(sheet);
    boolean saysNone = holdsNotClassified(resolver.saysAnything());
    if (saysNone) {
      sheet.notClassified();
    }
    boolean silent = !saysNone && !resolver.saysAnything();
    if (flawed || resolver.isFlawed() || silent) {
      resolver.openAllBut(sheet);
    }
    return sheet;
  }

  /** Whether it says "not classified" without "no data"; beside a class that contradicts. */
  private boolean holdsNotClassified(boolean saysAnything) {
    if (notClassified != null && saysAnything) {
      flawed = true;
      findings.problem(SheetProblem.CONTRADICTION, notClassified.first(), notClassified.last());
    }
    return notClassified != null && !noData;
  }

  boolean isDoubted() {
    return doubted;
  }

  private boolean mayBeNamed() {
    return hasIdentifier() || share != null;
  }

  private void reportWordsThatAreNoName() {
    boolean isDoubted = saysNone() && (name.isDoubted() || saysOfWhat() || isQualified());
    boolean hasOthers = name.reportOthers(mayBeNamed(), firstClaim());
    doubted = saysNone() && (isDoubted || hasOthers);
    flawed |= hasOthers || isDoubted;
  }

  /** "Not classified for acute toxicity": words behind it that are no name. */
  private boolean saysOfWhat() {
    Words none = notClassified;
    return none != null && !isNumberedBehind(none) && name.goesOnFrom(none.last());
  }

  /** "not classified", name and number: a table whose first column is the class. */
  private boolean isNumberedBehind(Words none) {
    return numbers.first().filter(n -> n.start() > none.last().start()).isPresent();
  }

  /** Whether words that were passed over in its line go on from "not classified", or doubt it. */
  private boolean isQualified() {
    List<Words> qualifying = passedOver.stream().filter(this::qualifies).toList();
    qualifying.forEach(w -> findings.problem(SheetProblem.NOT_UNDERSTOOD, w.first(), w.last()));
    return !qualifying.isEmpty();
  }

  private boolean qualifies(Words words) {
    boolean doubt = SheetName.doubts(findings.words(words.first(), words.last()));
    return saidNone.stream()
        .filter(none -> none.last().line() == words.first().line())
        .anyMatch(none -> doubt || findings.areInOneCell(none.last(), words.first()));
  }

  /** "Not classified" holds only where no other word goes with it: it may say of what, or why. */
  private boolean saysNone() {
    return notClassified != null || claims.stream().anyMatch(claim -> claim.none);
  }

  private int firstClaim() {
    int claim = claims.isEmpty() || classFirst ? Integer.MAX_VALUE : claims.get(0).first.start();
    return notClassified != null && name.beginsBefore(notClassified.first())
        ? Math.min(claim, notClassified.first().start())
        : claim;
  }

  private String name() {
    String unnamed = numbers.inPlaceOfName().orElse("copied sheet");
    return mayBeNamed() ? name.text(firstClaim()).orElse(unnamed) : unnamed;
  }

  private OptionalDouble end(ToDoubleFunction<SheetRange> which) {
    return share == null ? OptionalDouble.empty() : OptionalDouble.of(which.applyAsDouble(share));
  }
}
