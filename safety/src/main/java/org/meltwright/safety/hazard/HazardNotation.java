// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Reads classifications, limits and estimates in the notation of the law. */
final class HazardNotation {

  private HazardNotation() {}

  /** Reads one category and nothing else. */
  static HazardCategory category(String text) {
    SubstanceSheet sheet = new SubstanceSheet(text, HazardEvidence.DATA_SHEET);
    SheetReader reader = new SheetReader(text, false);
    reader.into(sheet);
    List<HazardCategory> categories = sheet.facts.categories;
    boolean one = categories.size() == 1 && sheet.saysCategoriesAlone();
    if (!sheet.facts.classesByTest.isEmpty()) {
      throw kindsNotHeld(text, sheet.facts.classesByTest.iterator().next());
    }
    if (!one || !reader.findings().problems().isEmpty()) {
      throw refused(text, reader);
    }
    return categories.get(0);
  }

  private static ProblemException kindsNotHeld(String text, HazardClass c) {
    return new ProblemException(
        Problem.of(HazardProblem.KINDS_NOT_HELD, text).with("class", Bilingual.of(c::name)));
  }

  /** Reads one limit and nothing else. */
  static SpecificLimit limit(String text) {
    SubstanceSheet sheet = new SubstanceSheet(text, HazardEvidence.DATA_SHEET);
    SheetReader reader = new SheetReader(text, true);
    reader.into(sheet);
    if (sheet.facts.specificLimits.size() != 1 || !reader.findings().problems().isEmpty()) {
      throw refused(text, reader);
    }
    return sheet.facts.specificLimits.get(0);
  }

  /** What was wrong with a text of one category or limit, with all of it shown. */
  private static ProblemException refused(String text, SheetReader reader) {
    for (Problem p : reader.findings().problems()) {
      if (p.code() == HazardProblem.CATEGORY) {
        return mismatch(text, p.details().getOrDefault("pairs", ""));
      }
      if (p.code() == HazardProblem.LIMIT) {
        return new ProblemException(Problem.of(HazardProblem.LIMIT, p.found()));
      }
    }
    return unreadable(text);
  }

  /** Refuses what does not belong together. */
  static void requireBelonging(HazardClass hazardClass, Category category, String statement) {
    String own = LabelElements.statement(hazardClass, category);
    if (own.isEmpty() || !(statement.equals(own) || Statements.isForm(statement, own))) {
      throw mismatch(
          hazardClass.id() + " " + category.id() + " " + statement, ClassName.allowed(hazardClass));
    }
  }

  private static ProblemException mismatch(String text, String pairs) {
    return new ProblemException(Problem.of(HazardProblem.CATEGORY, text).with("pairs", pairs));
  }

  static ProblemException unreadable(String text) {
    return new ProblemException(Problem.of(HazardProblem.NOTATION, text));
  }
}
