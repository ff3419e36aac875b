// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The words of an entry that may be the name of its substance. */
final class SheetName {

  private record Words(SheetToken first, SheetToken last) {}

  private static final Pattern DOUBT =
      Pattern.compile(
          "\\b(?:"
              + SheetWords.doubts().stream().map(Pattern::quote).collect(joining("|"))
              + ")\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

  private final SheetFindings findings;
  private final List<Words> words = new ArrayList<>();
  private final Map<Integer, Integer> headings = new HashMap<>();

  private boolean behindNumber;

  SheetName(SheetFindings findings) {
    this.findings = findings;
  }

  boolean isEmpty() {
    return words.isEmpty();
  }

  void heading(int line) {
    headings.merge(line, 1, Integer::sum);
  }

  void standsBehindNumber(boolean behind) {
    behindNumber = behind;
  }

  /** Behind a number of a register the name may have several parts, all in one line. */
  boolean mayGoOnWith(SheetToken next) {
    return behindNumber
        && (words.isEmpty() || words.get(words.size() - 1).last().line() == next.line());
  }

  void add(SheetToken first, SheetToken last) {
    words.add(new Words(first, last));
  }

  /** What stands some lines above the first number of a register describes the whole. */
  void passOverWordsFarAbove(SheetToken identifier, boolean noClassYet) {
    words.removeIf(w -> isOfHeader(w, identifier));
    boolean far =
        !words.isEmpty() && words.get(words.size() - 1).last().line() < identifier.line() - 1;
    if (far && noClassYet) {
      words.forEach(w -> findings.passOver(w.first(), w.last()));
      words.clear();
    }
  }

  /** What else stands in a row of headings is a heading. */
  private boolean isOfHeader(Words w, SheetToken identifier) {
    boolean header =
        w.last().line() < identifier.line() && headings.getOrDefault(w.first().line(), 0) > 1;
    if (header) {
      findings.passOver(w.first(), w.last());
    }
    return header;
  }

  /** The name: the first words, and those of the next lines before a class; empty if none are. */
  Optional<String> text(int firstClass) {
    int leading = leading(firstClass);
    return leading == 0 ? Optional.empty() : Optional.of(joined(words.subList(0, leading)));
  }

  /** Numbers, shares and classes that stand between the words of a name are not part of it. */
  private String joined(List<Words> parts) {
    StringBuilder name = new StringBuilder();
    SheetToken first = parts.get(0).first();
    SheetToken last = parts.get(0).last();
    for (Words part : parts.subList(1, parts.size())) {
      if (!findings.isPunctuation(last, part.first())) {
        name.append(findings.words(first, last)).append(' ');
        first = part.first();
      }
      last = part.last();
    }
    return name.append(findings.words(first, last)).toString();
  }

  /** Shows back the words that are no name; tells whether there are any. */
  boolean reportOthers(boolean named, int firstClass) {
    List<Words> others = words.subList(named ? leading(firstClass) : 0, words.size());
    others.forEach(w -> findings.problem(SheetProblem.NOT_UNDERSTOOD, w.first(), w.last()));
    return !others.isEmpty();
  }

  boolean beginsBefore(SheetToken other) {
    return !words.isEmpty() && words.get(0).first().start() < other.start();
  }

  /** Whether words doubt what is said of classes, or say for what law it holds. */
  static boolean doubts(String words) {
    return DOUBT.matcher(words).find();
  }

  /** Whether a word of the name doubts what is said of classes, or says for what law it holds. */
  boolean isDoubted() {
    for (Words w : words) {
      if (doubts(findings.words(w.first(), w.last()))) {
        findings.problem(SheetProblem.NOT_UNDERSTOOD, w.first(), w.last());
        return true;
      }
    }
    return false;
  }

  /** Whether it begins in the same cell, right behind another word; shows it back if so. */
  boolean goesOnFrom(SheetToken other) {
    boolean goesOn = !words.isEmpty() && findings.areInOneCell(other, words.get(0).first());
    if (goesOn) {
      findings.problem(SheetProblem.NOT_UNDERSTOOD, words.get(0).first(), words.get(0).last());
    }
    return goesOn;
  }

  private int leading(int firstClass) {
    int i = 0;
    while (i < words.size() && isNextLine(i) && words.get(i).first().start() < firstClass) {
      i++;
    }
    return i;
  }

  private boolean isNextLine(int i) {
    return i == 0 || words.get(i).first().line() <= words.get(i - 1).last().line() + 1;
  }
}
