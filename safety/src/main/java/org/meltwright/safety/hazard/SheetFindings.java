// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemCode;
import org.meltwright.units.ProblemException;

/** What a reader has to say of a text beside what it read: each with the words and their place. */
final class SheetFindings {

  private static final int LONGEST = 400;

  private final String text;
  private final List<Placed> problems = new ArrayList<>();
  private final List<CopiedSheet.Remark> remarks = new ArrayList<>();

  private record Placed(Problem problem, int line, int column) {}

  private boolean remarksAreLost;

  SheetFindings(String text) {
    this.text = text;
  }

  /** Nobody will read the remarks: words that would be passed over are problems. */
  void loseRemarks() {
    remarksAreLost = true;
  }

  /** Passes over words that say nothing of a class. */
  void passOver(SheetToken first, SheetToken last) {
    if (remarksAreLost) {
      problem(SheetProblem.NOT_UNDERSTOOD, first, last);
    } else {
      remark(CopiedSheet.Remark.Kind.TEXT, first, last);
    }
  }

  /** The words of the sheet from a token to another, on one line; the end of many is left out. */
  String words(SheetToken first, SheetToken last) {
    int end = Math.max(first.end(), last.end());
    int shown = Math.min(end, first.start() + LONGEST);
    String words = text.substring(first.start(), shown).replaceAll("\\s+", " ").strip();
    return shown < end ? words + " …" : words;
  }

  /** Whether nothing but marks and blanks stands between two tokens. */
  boolean isPunctuation(SheetToken before, SheetToken behind) {
    return text.substring(before.end(), behind.start())
        .chars()
        .noneMatch(Character::isLetterOrDigit);
  }

  /** Whether one follows the other in a line with nothing between but blanks and brackets. */
  boolean areInOneCell(SheetToken before, SheetToken behind) {
    return before.end() <= behind.start()
        && text.substring(before.end(), behind.start()).matches("[ (:,–-]*");
  }

  Problem problem(ProblemCode code, SheetToken first, SheetToken last) {
    return problem(Problem.of(code, words(first, last)), first);
  }

  /** A problem of a value, at its place. */
  Problem problem(Problem problem, SheetToken first) {
    Problem placed =
        problem
            .with("line", String.valueOf(first.line()))
            .with("column", String.valueOf(first.column()))
            .under("/" + first.line() + "/" + first.column());
    problems.add(new Placed(placed, first.line(), first.column()));
    return placed;
  }

  void remark(CopiedSheet.Remark.Kind kind, SheetToken first, SheetToken last) {
    remarks.add(new CopiedSheet.Remark(kind, words(first, last), first.line(), first.column()));
  }

  List<Problem> problems() {
    return problems.stream()
        .sorted(Comparator.comparingInt(Placed::line).thenComparingInt(Placed::column))
        .map(Placed::problem)
        .toList();
  }

  void throwIfAny() {
    if (!problems.isEmpty()) {
      throw new ProblemException(problems());
    }
  }

  List<CopiedSheet.Remark> remarks() {
    return remarks.stream()
        .sorted(
            Comparator.comparingInt(CopiedSheet.Remark::line)
                .thenComparingInt(CopiedSheet.Remark::column))
        .toList();
  }
}
