// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.meltwright.safety.hazard.SheetToken.Kind;

/** The substances of a copied text, the one that is being read last. */
final class SheetEntries {

  private final SheetFindings findings;
  private final List<SheetEntry> all = new ArrayList<>();
  private final Map<String, SheetEntry> byCas = new HashMap<>();
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
  void turnTo(SheetToken identifier, List<SheetToken> tokens, int at) {
    if (!identifier.is(Kind.CAS)) {
      return;
    }
    SheetEntry before = byCas.get(identifier.text());
    if (before != null) {
      now = before;
      return;
    }
    if (now.startsNewWithCas(tokens, at)) {
      startNew();
    }
    byCas.put(identifier.text(), now);
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
