// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.meltwright.safety.hazard.SheetToken.Kind;

/** The substances of a copied text, the one that is being read last. */
final class SheetEntries {

  /** How far a row's next number may stand behind the one before. */
  private static final int CLOSE_BEHIND = 12;

  private final SheetFindings findings;
  private final List<SheetEntry> all = new ArrayList<>();
  private final Map<String, SheetEntry> byNumber = new HashMap<>();

  /** The kind of number that stands first in the sheet, and so in each of its rows. */
  private @Nullable Kind leading;

  private SheetEntry now;

  SheetEntries(SheetFindings findings) {
    this.findings = findings;
    this.now = new SheetEntry(findings);
    all.add(now);
  }

  SheetEntry now() {
    return now;
  }

  void startNew() {
    now = new SheetEntry(findings);
    all.add(now);
  }

  /**
   * Turns to the substance of a number: a new one, the one at hand, or one further up whose number
   * comes again, as in a table of limits below that of the substances.
   */
  void turnTo(SheetToken number, List<SheetToken> tokens, int at) {
    if (number.is(Kind.REGISTRATION) || now.numbers.hold(number)) {
      return;
    }
    leading = leading == null ? number.kind() : leading;
    if (!now.numbers.goOnWith(tokens, at) && !isFurtherNumber(number)) {
      SheetEntry before = byNumber.get(number.text());
      if (before != null) {
        now = before;
      } else if (startsNew(number) || leadsToAnother(tokens, at) || isNextRow(tokens, at)) {
        startNew();
      }
    }
    byNumber.putIfAbsent(number.text(), now);
  }

  /** Whether a number stands beside one of another kind, before anything is said. */
  private boolean isFurtherNumber(SheetToken number) {
    return !now.numbers.areNone()
        && now.numbers.areNone(number.kind())
        && !now.saysMoreThanNumbers();
  }

  /** A second number of its kind, or the number that begins a row after all that was said. */
  private boolean startsNew(SheetToken number) {
    boolean second = !now.numbers.areNone(number.kind());
    boolean nextRow =
        number.kind() == leading && !now.numbers.areNone() && now.saysMoreThanNumbers();
    return second || nextRow || now.isClassesAbove(number);
  }

  /** Behind a substance without any number: whether a name stands behind this one in its line. */
  private boolean isNextRow(List<SheetToken> tokens, int at) {
    return now.lacksNumberAlone() && new SheetAhead(tokens).nameFollows(at + 1);
  }

  /** Whether the next number, close behind, can only be that of a further substance. */
  private boolean leadsToAnother(List<SheetToken> tokens, int at) {
    if (!now.saysMoreThanNumbers()) {
      return false;
    }
    int end = Math.min(tokens.size(), at + CLOSE_BEHIND);
    return tokens.subList(at + 1, end).stream()
        .takeWhile(t -> t.isIdentifier() || t.isPunctuation() || t.is(Kind.WORD))
        .filter(t -> t.is(Kind.CAS) || t.is(Kind.EC))
        .anyMatch(t -> !now.numbers.areNone(t.kind()) && !now.numbers.hold(t));
  }

  /** In a table whose first column is the class, a class at the start of a line begins an entry. */
  void claim(SheetClaim claim, boolean startOfLine) {
    if (startOfLine && now.isClassFirst()) {
      startNew();
    }
    now.claim(claim);
  }

  CopiedSheet toSheet() {
    List<CopiedSheet.Line> lines = new ArrayList<>();
    all.forEach(e -> e.toLine().ifPresent(lines::add));
    return new CopiedSheet(lines, findings.problems(), findings.remarks());
  }

  /** Adds the one substance to a sheet; a text that says nothing leaves all open. */
  void into(SubstanceSheet sheet) {
    List<SheetEntry> said = all.stream().filter(e -> !e.isEmpty()).toList();
    if (said.isEmpty()) {
      sheet.openFor(HazardClass.values());
      return;
    }
    said.get(0).into(sheet);
    said.subList(1, said.size()).forEach(SheetEntry::reportSecond);
  }
}
