// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Reads classifications, limits and estimates in the notation of the law. */
final class HazardNotation {

  private static final Pattern CATEGORY =
      Pattern.compile(
          "(?<name>\\p{Alpha}[\\p{Alpha}. -]*?)"
              + "(?:[ ,]*(?:(?i:category|cat\\.?) ?)?(?<category>\\d+[A-Za-z]?))?(?<star> ?\\*{1,4})?"
              + "[ ,:]*(?<statement>(?i:(?:EU)?H)\\d{3}[A-Za-z]*)(?: ?\\*{2,4})?(?<details>(?: ?\\([^)]*\\))*)");

  private static final Pattern LIMIT =
      Pattern.compile(
          "(?<category>.*[Hh]\\d{3}[A-Za-z]*) (?<from>\\d+(?:\\.\\d+)?)"
              + "(?: to (?<below>\\d+(?:\\.\\d+)?))?(?: ?%)?");

  private static final Pattern DETAIL = Pattern.compile("\\(([^)]*)\\)");

  private HazardNotation() {}

  static HazardCategory category(String text) {
    Matcher m = CATEGORY.matcher(oneSpaced(text));
    if (!m.matches()) {
      throw unreadable(text);
    }
    ClassName name = ClassName.find(m.group("name")).orElseThrow(() -> unreadable(text));
    String stated = m.group("category") == null ? "" : m.group("category").toUpperCase(Locale.ROOT);
    boolean undivided = isUndivided(name, stated);
    Category category =
        Category.find(undivided ? "1A" : stated).orElseThrow(() -> mismatch(text, name.allowed()));
    String statement = statement(m.group("statement"));
    HazardClass hazardClass =
        name.hazardClass(category, statement).orElseThrow(() -> mismatch(text, name.allowed()));
    return new HazardCategory(
        hazardClass,
        category,
        statement,
        details(m.group("details")),
        m.group("star") != null && m.group("star").strip().equals("*"),
        undivided);
  }

  private static String oneSpaced(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** Sheets from outside Europe write category 1 where the European law has 1A and 1B. */
  private static boolean isUndivided(ClassName name, String stated) {
    return stated.equals("1")
        && !name.hasCategory(Category.ONE)
        && name.hasCategory(Category.ONE_A);
  }

  /** The code with a capital H; letters of an effect stay as they are: H360Fd is not H360FD. */
  private static String statement(String code) {
    int h = code.toUpperCase(Locale.ROOT).indexOf('H') + 1;
    return code.substring(0, h).toUpperCase(Locale.ROOT) + code.substring(h);
  }

  static SpecificLimit limit(String text) {
    Matcher m = LIMIT.matcher(oneSpaced(text));
    if (!m.matches()) {
      throw unreadable(text);
    }
    HazardCategory c = category(m.group("category"));
    String below = m.group("below");
    return new SpecificLimit(
        c.hazardClass(),
        c.category(),
        c.statement(),
        Double.parseDouble(m.group("from")),
        below == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(below)));
  }

  private static List<String> details(String text) {
    List<String> details = new ArrayList<>();
    Matcher m = DETAIL.matcher(text);
    while (m.find()) {
      details.addAll(TextTable.items(m.group(1), ","));
    }
    return details;
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
