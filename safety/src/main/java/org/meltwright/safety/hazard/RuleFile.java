// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Knowledge;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;

/** Reads a rule file; every line that says nothing a rule can use is a problem with its number. */
final class RuleFile {

  static final int LONGEST_TEXT = 1_000_000;
  private static final int LONGEST_LINE = 1_000;
  private static final int MOST_PROBLEMS = 50;

  private final Problems problems = new Problems();
  private final List<RuleRow> rows = new ArrayList<>();
  private final Map<String, List<RuleRow>> byKey = new HashMap<>();
  private @Nullable Head head;

  /** The first row of a file. */
  record Head(String id, String title, LocalDate lookedUpTo) {}

  private RuleFile() {}

  /**
   * Reads a file.
   *
   * @throws ProblemException with every line that cannot be used
   */
  static RuleFile read(String text) {
    RuleFile file = new RuleFile();
    if (text.length() > LONGEST_TEXT) {
      throw new ProblemException(Problem.of(HazardProblem.RULE_SIZE, text.length() + ""));
    }
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size() && file.problems.toList().size() < MOST_PROBLEMS; i++) {
      file.line(i + 1, lines.get(i));
    }
    file.requireHead();
    file.problems.throwIfAny();
    return file;
  }

  Head head() {
    return java.util.Objects.requireNonNull(head);
  }

  List<RuleRow> rows() {
    return List.copyOf(rows);
  }

  private void line(int number, String line) {
    if (line.isBlank() || line.startsWith("#")) {
      return;
    }
    List<String> cells = TextTable.cells(line);
    if (line.length() > LONGEST_LINE) {
      refuse(HazardProblem.RULE_SIZE, number, line.length() + "");
    } else if (cells.get(0).equals("rule-set")) {
      head(number, cells);
    } else {
      kind(cells.get(0))
          .ifPresentOrElse(
              kind -> row(number, kind, cells),
              () -> refuse(HazardProblem.RULE_WORD, number, cells.get(0)));
    }
  }

  private static Optional<RuleRow.Kind> kind(String id) {
    return Stream.of(RuleRow.Kind.values()).filter(k -> k.id().equals(id)).findFirst();
  }

  private void head(int number, List<String> cells) {
    Optional<LocalDate> last = cells.size() == 4 ? day(cells.get(3)) : Optional.empty();
    boolean named = cells.size() == 4 && !cells.get(1).isEmpty() && !cells.get(2).isEmpty();
    if (head != null) {
      refuse(HazardProblem.RULE_TWICE, number, "rule-set");
    } else if (!named || last.isEmpty()) {
      refuse(HazardProblem.RULE_COLUMNS, number, String.join(" | ", cells));
    } else {
      head = new Head(cells.get(1), cells.get(2), last.orElseThrow());
    }
  }

  private void row(int number, RuleRow.Kind kind, List<String> cells) {
    int first = 1 + kind.columns();
    if (cells.size() < first + 3 || cells.size() > first + 4 || cells.get(first).isEmpty()) {
      refuse(HazardProblem.RULE_COLUMNS, number, String.join(" | ", cells));
      return;
    }
    Optional<Knowledge> knowledge = knowledge(cells.get(first + 1));
    Optional<Days> days = days(number, cells.subList(first + 2, cells.size()));
    if (knowledge.isEmpty()) {
      refuse(HazardProblem.RULE_WORD, number, cells.get(first + 1));
    } else if (days.isPresent()) {
      List<String> says = List.copyOf(cells.subList(1, first));
      add(new RuleRow(number, kind, says, cells.get(first), knowledge.get(), days.get()));
    }
  }

  private Optional<Days> days(int number, List<String> cells) {
    String from = cells.get(0);
    String until = cells.size() > 1 ? cells.get(1) : "";
    if (isDay(from) && isDay(until) && inOrder(from, until)) {
      return Optional.of(new Days(day(from), day(until)));
    }
    refuse(HazardProblem.RULE_DATE, number, from + " | " + until);
    return Optional.empty();
  }

  private static Optional<Knowledge> knowledge(String word) {
    return Stream.of(Knowledge.values()).filter(k -> k.name().equals(word)).findFirst();
  }

  private static boolean isDay(String text) {
    return text.isEmpty() || day(text).isPresent();
  }

  private static boolean inOrder(String from, String until) {
    return from.isEmpty() || until.isEmpty() || from.compareTo(until) <= 0;
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private void add(RuleRow row) {
    if (!wordsAreKnown(row) || !numbersArePossible(row)) {
      return;
    }
    List<RuleRow> same = byKey.computeIfAbsent(row.key(), k -> new ArrayList<>());
    if (same.stream().anyMatch(row::overlaps)) {
      refuse(HazardProblem.RULE_TWICE, row.line(), row.key());
      return;
    }
    same.add(row);
    rows.add(row);
  }

  private boolean wordsAreKnown(RuleRow row) {
    Optional<String> strange = strangeWord(row);
    strange.ifPresent(word -> refuse(HazardProblem.RULE_WORD, row.line(), word));
    return strange.isEmpty();
  }

  private static Optional<String> strangeWord(RuleRow row) {
    return switch (row.kind()) {
      case BOUND -> unless(Bound.find(row.cell(0)).isPresent(), row.cell(0));
      case ACUTE ->
          unless(UptakeForm.find(row.cell(0)).isPresent(), row.cell(0))
              .or(() -> unless(Category.find(row.cell(1)).isPresent(), row.cell(1)));
      case CLASS ->
          unless(HazardClass.find(row.cell(0)).isPresent(), row.cell(0))
              .or(() -> unless(isModeOf(row.cell(0), row.cell(1)), row.cell(1)))
              .or(() -> strangeCategory(row.cell(0), TextTable.items(row.cell(2), ",")));
      default ->
          unless(HazardClass.find(row.cell(0)).isPresent(), row.cell(0))
              .or(
                  () ->
                      strangeCategory(row.cell(0), row.cells().subList(1, row.cells().size() - 1)));
    };
  }

  private static boolean isModeOf(String hazardClass, String mode) {
    return ClassRule.Mode.find(mode).filter(m -> m.fits(HazardClass.ofId(hazardClass))).isPresent();
  }

  private static Optional<String> unless(boolean known, String word) {
    return known ? Optional.empty() : Optional.of(word);
  }

  private static Optional<String> strangeCategory(String hazardClass, List<String> categories) {
    HazardClass c = HazardClass.ofId(hazardClass);
    return categories.stream()
        .filter(
            text ->
                Category.find(text).filter(x -> !LabelElements.statement(c, x).isEmpty()).isEmpty())
        .findFirst()
        .or(() -> unless(!categories.isEmpty() || hasNoCategories(c), hazardClass));
  }

  /** A class whose kinds are not held here: only a test can tell, and nothing says of which. */
  private static boolean hasNoCategories(HazardClass c) {
    return LabelElements.all().stream().noneMatch(x -> x.hazardClass() == c);
  }

  private boolean numbersArePossible(RuleRow row) {
    int first = row.kind() == RuleRow.Kind.ACUTE ? 2 : row.cells().size() - 1;
    for (String text : row.cells().subList(first, row.cells().size())) {
      if (!isPossible(row.kind(), text)) {
        refuse(HazardProblem.RULE_NUMBER, row.line(), text);
        return false;
      }
    }
    return true;
  }

  private static boolean isPossible(RuleRow.Kind kind, String text) {
    if (!text.matches("-?\\d{1,12}(\\.\\d{1,12})?")) {
      return false;
    }
    double value = Double.parseDouble(text);
    return switch (kind) {
      case BOUND -> true;
      case CLASS -> value >= 0 && value <= 100;
      case ACUTE -> value > 0;
      default -> value > 0 && value <= 100;
    };
  }

  private void requireHead() {
    if (head == null) {
      problems.add(Problem.of(HazardProblem.RULE_MISSING, "rule-set"));
    }
    Set<String> classes = ids(rows.stream().filter(r -> r.kind() == RuleRow.Kind.CLASS));
    rows.stream()
        .filter(r -> r.kind().isLimit() && !classes.contains(r.cell(0)))
        .limit(MOST_PROBLEMS)
        .map(r -> "class | " + r.cell(0))
        .distinct()
        .map(missing -> Problem.of(HazardProblem.RULE_MISSING, missing).under("/" + missing))
        .forEach(problems::add);
  }

  private static Set<String> ids(Stream<RuleRow> rows) {
    return rows.map(r -> r.cell(0)).collect(Collectors.toSet());
  }

  /**
   * The rows that hold on a day.
   *
   * @throws ProblemException if they leave a class without what it needs
   */
  List<RuleRow> rowsOn(LocalDate day) {
    List<RuleRow> holding = rows.stream().filter(r -> r.holdsOn(day)).toList();
    Problems missing = new Problems();
    missing.addAll(
        Stream.of(missingClass(holding), missingBounds(holding), missingLimits(holding))
            .flatMap(s -> s)
            .map(what -> Problem.of(HazardProblem.RULE_MISSING, what))
            .toList());
    missing.throwIfAny();
    return holding;
  }

  private static Stream<String> missingBounds(List<RuleRow> rows) {
    Set<String> classes = ids(rows.stream().filter(r -> r.kind() == RuleRow.Kind.CLASS));
    Set<String> stated = ids(rows.stream().filter(r -> r.kind() == RuleRow.Kind.BOUND));
    return Stream.of(Bound.values())
        .filter(b -> b.isNeededBy(classes) && !stated.contains(b.id()))
        .map(b -> "bound | " + b.id());
  }

  /** Rules without any class would find nothing in anything. */
  private static Stream<String> missingClass(List<RuleRow> rows) {
    return rows.stream().anyMatch(r -> r.kind() == RuleRow.Kind.CLASS)
        ? Stream.of()
        : Stream.of("class");
  }

  /**
   * A category that no limit leads to would never be reached, and one that leads nowhere would make
   * its ingredient, and the class, look harmless.
   */
  private static Stream<String> missingLimits(List<RuleRow> rows) {
    Set<String> stated = rows.stream().flatMap(RuleFile::serves).collect(Collectors.toSet());
    return rows.stream()
        .filter(r -> r.kind() == RuleRow.Kind.CLASS)
        .map(ClassRule::new)
        .flatMap(RuleFile::needs)
        .filter(needed -> !stated.contains(needed));
  }

  /** What a row serves: a category of ingredients, and one of mixtures. */
  private static Stream<String> serves(RuleRow r) {
    return switch (r.kind()) {
      case LIMIT ->
          Stream.of(limit(r.cell(0), r.cell(1) + " | …"), limit(r.cell(0), "… | " + r.cell(2)));
      case ACUTE -> Stream.of("acute | " + r.cell(0) + " | " + r.cell(1));
      default -> Stream.of();
    };
  }

  private static String limit(String hazardClass, String categories) {
    return "limit | " + hazardClass + " | " + categories;
  }

  private static Stream<String> needs(ClassRule rule) {
    String id = rule.hazardClass().id();
    return switch (rule.mode()) {
      case ACUTE ->
          UptakeForm.of(rule.hazardClass())
              .flatMap(
                  form -> ingredientCategories(rule).map(c -> "acute | " + form.id() + " | " + c));
      case ADDITIVE, HIGHEST ->
          Stream.concat(
              rule.levels().stream().map(c -> limit(id, "… | " + c.key())),
              ingredientCategories(rule).map(c -> limit(id, c + " | …")));
      case FLAMMABLE, TEST -> Stream.of();
    };
  }

  /** The categories of the class itself, and those of the law that a sheet may name. */
  private static Stream<String> ingredientCategories(ClassRule rule) {
    Stream<Category> ofTheLaw =
        LabelElements.all().stream()
            .filter(c -> c.hazardClass() == rule.hazardClass())
            .map(c -> rule.asKnown(c.category()));
    return Stream.concat(rule.levels().stream(), ofTheLaw).map(Category::key).distinct();
  }

  private void refuse(HazardProblem problem, int line, String found) {
    String shown = found.length() > 200 ? found.substring(0, 200) + "…" : found;
    String number = String.format(Locale.ROOT, "%d", line);
    problems.add(Problem.of(problem, shown).with("line", number).under("/" + number));
  }
}
