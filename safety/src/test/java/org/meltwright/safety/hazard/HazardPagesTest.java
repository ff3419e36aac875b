// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages of limits, and the words of rule files, say what the data say. To write them anew:
 * {@code mvn -pl safety -am test -Dtest=HazardPagesTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dpages.write=true}.
 */
class HazardPagesTest {

  private static final Path DOCS = Path.of("../docs/reference");
  static final String WRITTEN = "Written from the data by `HazardPagesTest`; do not edit. ";

  @Test
  void pages_sayWhatTheDataSay() throws IOException {
    for (Map.Entry<String, String> page : pages().entrySet()) {
      Path file = DOCS.resolve(page.getKey());
      if (Boolean.getBoolean("pages.write")) {
        Files.writeString(file, page.getValue(), StandardCharsets.UTF_8);
      }
      assertThat(file).hasContent(page.getValue());
    }
  }

  private static Map<String, String> pages() {
    return new TreeMap<>(
        Map.of(
            "hazard-limits.md", limits(),
            "hazard-limits-un.md", unLimits(),
            "hazard-label-choice.md", labelChoice(),
            "rule-file-words.md", words(),
            "copied-sheet-words.md", SheetPage.text()));
  }

  private static String limits() {
    RuleSet rules = LimitCase.RULES;
    Map<String, List<LimitCase>> cases =
        LimitCase.all().stream()
            .collect(Collectors.groupingBy(c -> c.kind() + " " + c.hazardClass() + c.limit()));
    StringBuilder page =
        new StringBuilder("# Hazard rules: every limit and the cases about it\n\n");
    page.append(WRITTEN)
        .append("Rules `")
        .append(rules.id())
        .append("`, looked at for days up to ")
        .append(rules.lookedUpTo())
        .append(
            ".\n\n"
                + "The last three columns say what an ingredient of the category, alone with what"
                + " is")
        .append(
            "\n"
                + "in no class, leads to just below (by one millionth), at, and just above the"
                + " figure. ")
        .append(LimitCase.all().size())
        .append(
            " such cases, with limits\nof a substance's own, M-factors 1 to 1000 and estimates, are"
                + " worked out anew at each build (`LimitTableTest`).\n");
    for (HazardClass c : HazardClass.values()) {
      rules.rule(c).ifPresent(rule -> section(page, rules, rule, cases));
    }
    acute(page, rules, cases);
    bounds(page, rules);
    return page.toString();
  }

  private static void section(
      StringBuilder page, RuleSet rules, ClassRule rule, Map<String, List<LimitCase>> cases) {
    head(page, rules, rule);
    List<RuleRow> rows =
        rules.rows().stream()
            .filter(r -> r.kind().isLimit() && r.cell(0).equals(rule.hazardClass().id()))
            .toList();
    if (rows.isEmpty()) {
      return;
    }
    page.append(
        "\n| figure | ingredient | mixture | from, % | paragraph | known | first day | last day"
            + " | below | at | above |\n|---|---|---|---|---|---|---|---|---|---|---|\n");
    for (RuleRow r : rows) {
      LimitKey key = r.limitKey();
      String name = r.kind().id() + " " + rule.hazardClass() + String.join(" | ", r.cells());
      line(
          page,
          Stream.concat(
              Stream.of(
                  r.kind().id(),
                  shown(key.of()),
                  r.kind().columns() == 4 ? shown(key.reached()) : "",
                  r.lastCell(),
                  r.paragraph(),
                  known(r),
                  day(r.days().from()),
                  day(r.days().until())),
              outcomes(r, cases.get(name))));
    }
  }

  private static void head(StringBuilder page, RuleSet rules, ClassRule rule) {
    RuleRow row =
        rules.rows().stream()
            .filter(r -> r.kind() == RuleRow.Kind.CLASS)
            .filter(r -> r.cell(0).equals(rule.hazardClass().id()))
            .findFirst()
            .orElseThrow();
    page.append("\n## ")
        .append(rule.hazardClass().name(Locale.ENGLISH))
        .append("\n\n`")
        .append(rule.hazardClass().id())
        .append("`, ")
        .append(row.cell(1))
        .append("; categories ")
        .append(
            rule.levels().isEmpty()
                ? "not held here"
                : rule.levels().stream()
                    .map(HazardPagesTest::shown)
                    .collect(Collectors.joining(", ")))
        .append("; an unknown ingredient leaves it open from ")
        .append(row.cell(3))
        .append(" %. ")
        .append(row.paragraph())
        .append(" (")
        .append(known(row))
        .append("), from ")
        .append(day(row.days().from()))
        .append(".\n");
  }

  private static String shown(Category category) {
    return category == Category.ONLY ? "only" : category.id();
  }

  private static String known(RuleRow r) {
    return r.knowledge().name().toLowerCase(Locale.ROOT);
  }

  private static String day(java.util.Optional<java.time.LocalDate> day) {
    return day.map(java.time.LocalDate::toString).orElse("");
  }

  private static Stream<String> outcomes(
      RuleRow r, @org.jspecify.annotations.Nullable List<LimitCase> cases) {
    if (cases == null) {
      return r.kind() == RuleRow.Kind.CUT_OFF
          ? Stream.of("not counted", "counted", "counted")
          : Stream.of("no", "yes", "yes");
    }
    return Stream.concat(cases.stream().map(HazardPagesTest::outcome), Stream.of("", "")).limit(3);
  }

  private static String outcome(LimitCase c) {
    return c.found().map(HazardPagesTest::shown).orElse("none");
  }

  private static void acute(StringBuilder page, RuleSet rules, Map<String, List<LimitCase>> cases) {
    page.append(
        "\n## Estimates of acute toxicity\n\n| form | category | estimate up to | point estimate |"
            + " cut-off, % | paragraph | known | first day | last day |"
            + "\n|---|---|---|---|---|---|---|---|---|\n");
    rules.rows().stream()
        .filter(r -> r.kind() == RuleRow.Kind.ACUTE)
        .forEach(r -> line(page, Stream.concat(r.cells().stream(), tail(r))));
    page.append(
        "\n"
            + "The share from which one ingredient of a category takes the mixture to a category:"
            + " 100 times its point estimate\n"
            + "over the bound.\n\n"
            + "| form | ingredient | mixture | from, % | below | at | above |\n"
            + "|---|---|---|---|---|---|---|\n");
    LimitCase.all().stream()
        .filter(c -> c.kind().equals("estimate"))
        .map(c -> c.kind() + " " + c.hazardClass() + c.limit())
        .distinct()
        .forEach(
            key -> {
              List<LimitCase> about = cases.get(key);
              line(
                  page,
                  Stream.concat(
                      Stream.of(about.get(0).limit(), figure(about.get(1).percent())),
                      outcomes(rules.rows().get(0), about)));
            });
  }

  private static String figure(double value) {
    return number(value);
  }

  private static Stream<String> tail(RuleRow r) {
    return Stream.of(r.paragraph(), known(r), day(r.days().from()), day(r.days().until()));
  }

  private static void line(StringBuilder page, Stream<String> cells) {
    page.append("| ").append(cells.collect(Collectors.joining(" | "))).append(" |\n");
  }

  private static void bounds(StringBuilder page, RuleSet rules) {
    page.append(
        "\n## Other figures\n\n| figure | value | paragraph | known | first day | last day |"
            + "\n|---|---|---|---|---|---|\n");
    rules.rows().stream()
        .filter(r -> r.kind() == RuleRow.Kind.BOUND)
        .forEach(r -> line(page, Stream.concat(r.cells().stream(), tail(r))));
  }

  private static String unLimits() {
    RuleSet rules = RuleSet.unGhsOn(java.time.LocalDate.of(2026, 6, 1));
    StringBuilder page = new StringBuilder("# The UN system (GHS): what is held of it\n\n");
    page.append(WRITTEN)
        .append("Rules `")
        .append(rules.id())
        .append("`, looked at for days up to ")
        .append(rules.lookedUpTo())
        .append(
            ": a screening without a label.\n"
                + "A class that is not here is not assessed by these rules. Categories that the"
                + " European rules have not carry H303, H313,\n"
                + "H316, H320, H227, H305, H401 and H402. Category 5 of inhalation (H333) can be"
                + " stated, but has no figures here.\n\n"
                + "| row | paragraph | known | first day | last day |\n"
                + "|---|---|---|---|---|\n");
    rules.rows().forEach(r -> line(page, Stream.concat(Stream.of(row(r)), tail(r))));
    return page.toString();
  }

  private static String row(RuleRow r) {
    return r.kind().id() + ": " + String.join(", ", r.cells());
  }

  private static String labelChoice() {
    StringBuilder page =
        new StringBuilder("# The label: which precautionary statements it keeps\n\n");
    page.append(WRITTEN)
        .append(
            "How the choice works, and what of it is law:"
                + " [hazard-rules.md](hazard-rules.md#the-label).\n\n"
                + "| what | class | categories | statements | when or but | paragraph | known | first"
                + " day | last day |\n"
                + "|---|---|---|---|---|---|---|---|---|\n");
    for (List<String> r : PrecautionChoice.rows()) {
      switch (r.get(0)) {
        case "usual", "treatment", "order" ->
            line(
                page,
                Stream.concat(Stream.of(r.get(0), "", "", r.get(1), ""), r.subList(2, 6).stream()));
        case "beats" ->
            line(
                page,
                Stream.concat(
                    Stream.of(
                        "beats",
                        "",
                        "",
                        r.get(1) + " says " + r.get(2) + " already",
                        r.get(3).isEmpty() ? "" : "but not for " + r.get(3)),
                    r.subList(4, 8).stream()));
        default -> line(page, r.stream());
      }
    }
    page.append("\n## Worked mixtures\n\nWorked out by hand, and held by a test.\n\n")
        .append(
            "| mixture | for whom | classes | never cut | filled up |\n|---|---|---|---|---|\n");
    TextTable.rows("label-choices.txt").forEach(r -> line(page, r.stream()));
    page.append("\n## What each category asks for\n\n| class | category | statement | pictogram |")
        .append(" signal word | precautions offered | known | paragraph | first day | last day |\n")
        .append("|---|---|---|---|---|---|---|---|---|---|\n");
    TextTable.rows("label-elements.txt").forEach(r -> line(page, r.stream()));
    page.append("\n## What a pack for the public needs\n\n| duty | class | categories or number |")
        .append(
            " from, % | paragraph | known | first day | last day |\n"
                + "|---|---|---|---|---|---|---|---|\n");
    TextTable.rows("packaging.txt").forEach(r -> line(page, r.stream()));
    names(page);
    page.append(
            "\n## Sizes\n\n| what | pack up to, l | figures, mm | paragraph, how known, first and")
        .append(" last day |\n|---|---|---|---|\n");
    for (List<String> r : TextTable.rows("label-format.txt")) {
      int figures = r.get(0).equals("size") ? 6 : 3;
      line(
          page,
          Stream.of(
              r.get(0),
              r.get(1),
              String.join(", ", r.subList(2, figures)),
              String.join(", ", r.subList(figures, r.size()))));
    }
    return page.toString();
  }

  private static void names(StringBuilder page) {
    page.append("\n## Whom a label names, and what single ingredients add\n\n")
        .append("| what | class, statement or notice | of | paragraph | known | first day | last")
        .append(" day |\n|---|---|---|---|---|---|---|\n");
    Stream.of("label-names.txt", "supplements.txt")
        .flatMap(file -> TextTable.rows(file).stream())
        .forEach(
            r ->
                line(
                    page,
                    Stream.of(
                            Stream.of(
                                r.get(0), r.get(1), r.get(0).equals("notice") ? r.get(2) : ""),
                            r.subList(r.size() - 4, r.size()).stream())
                        .flatMap(cells -> cells)));
  }

  private static String words() {
    StringBuilder page = new StringBuilder("# Words that a rule file may use\n\n");
    page.append(WRITTEN)
        .append(
            "How a rule file is written: [rule-files.md](rule-files.md).\n\n## Kinds of rows\n\n")
        .append("| kind | columns before the paragraph |\n|---|---|\n");
    Stream.of(RuleRow.Kind.values())
        .forEach(k -> line(page, Stream.of("`" + k.id() + "`", "" + k.columns())));
    page.append(
            "\n"
                + "## Classes and their categories\n\n"
                + "| class | how shares may combine | categories |\n")
        .append("|---|---|---|\n");
    for (HazardClass c : HazardClass.values()) {
      line(page, Stream.of("`" + c.id() + "`", modes(c), categories(c)));
    }
    page.append("\n## Forms of uptake\n\n")
        .append(
            Stream.of(UptakeForm.values())
                .map(f -> "`" + f.id() + "` (" + f.unit() + ")")
                .collect(Collectors.joining(", ")))
        .append("\n\n## Bounds\n\n| bound | needed by a file with |\n|---|---|\n");
    Stream.of(Bound.values()).forEach(b -> line(page, Stream.of("`" + b.id() + "`", neededBy(b))));
    return page.toString();
  }

  private static String modes(HazardClass c) {
    return Stream.of(ClassRule.Mode.values())
        .filter(m -> m.fits(c))
        .map(m -> m.name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(", "));
  }

  private static String categories(HazardClass c) {
    return Stream.concat(LabelElements.all().stream(), LabelElements.ofUnAlone().stream())
        .filter(x -> x.hazardClass() == c)
        .map(x -> shown(x.category()) + " (" + x.statement() + ")")
        .collect(Collectors.joining(", "));
  }

  private static String neededBy(Bound b) {
    return Stream.of(HazardClass.values())
        .filter(c -> b.isNeededBy(java.util.Set.of(c.id())))
        .map(c -> "`" + c.id() + "`")
        .collect(Collectors.joining(", "));
  }

  /** Files of dated rules, each with how many of its last columns say where from and how known. */
  private static final Map<String, Integer> DATED =
      Map.of(
          "clp-2026-05-01.txt", 4,
          "un-ghs.txt", 4,
          "precautions.txt", 4,
          "label-names.txt", 4,
          "supplements.txt", 4,
          "union-workplace-limits.txt", 4,
          "packaging.txt", 4,
          "label-format.txt", 4);

  private static final String WHERE =
      ".*(Annex|Art|Reg\\.|Table|Directive|policy of this library|\\d\\.\\d).*";

  /** What is wrong with the end of a row: paragraph, how known, first day, last day. */
  private static List<String> flaws(String file, List<String> row) {
    int columns = DATED.get(file);
    List<String> flaws = new java.util.ArrayList<>();
    if (row.size() < columns + 2) {
      return List.of(file + " is too short: " + row);
    }
    List<String> end = row.subList(row.size() - columns, row.size());
    if (!end.get(0).matches(WHERE)) {
      flaws.add(file + " without a paragraph: " + row);
    }
    if (Stream.of(org.meltwright.core.source.Knowledge.values())
        .noneMatch(k -> k.name().equals(end.get(1)))) {
      flaws.add(file + " does not say how it is known: " + row);
    }
    if (!end.get(2).matches("\\d{4}-\\d\\d-\\d\\d")
        || !end.get(3).matches("|\\d{4}-\\d\\d-\\d\\d")) {
      flaws.add(file + " without its days: " + row);
    }
    return flaws;
  }

  @Test
  void everyFigureOfTheData_hasParagraphKnowledgeAndDays() {
    for (String file : DATED.keySet()) {
      assertThat(
              TextTable.rows(file).stream()
                  .filter(r -> !r.get(0).equals("rule-set"))
                  .flatMap(r -> flaws(file, r).stream()))
          .isEmpty();
    }
  }

  /** The check itself finds what it is for. */
  @Test
  void figureWithoutParagraphKnowledgeOrDays_isFound() {
    for (String row :
        List.of(
            "limit | skin | 1 | 1 | 5 | | READ | 2015-06-01 |",
            "limit | skin | 1 | 1 | 5 | somewhere | READ | 2015-06-01 |",
            "limit | skin | 1 | 1 | 5 | Table 3.2.3 | HEARD | 2015-06-01 |",
            "limit | skin | 1 | 1 | 5 | Table 3.2.3 | READ | soon |",
            "limit | READ |")) {
      assertThat(flaws("clp-2026-05-01.txt", TextTable.cells(row))).as(row).isNotEmpty();
    }
  }

  /** Figures that a rule compares with stand in the data alone; the names of these are not law. */
  @Test
  void ruleClasses_holdNoFigureOfTheLaw() throws IOException {
    java.util.regex.Pattern figure =
        java.util.regex.Pattern.compile(
            "static final (?:double|int|long|Set<HazardClass>|Set<String>)\\s+(\\w+)\\s*=");
    List<String> found = new java.util.ArrayList<>();
    for (String file :
        List.of(
            "PrecautionChoice",
            "NamedIngredients",
            "Supplements",
            "LiquidClassifier",
            "DataSheetDuty",
            "UnknownShares",
            "UntilTested",
            "WorkplaceLimits",
            "Classifier",
            "LimitClassifier",
            "LimitLadder",
            "EyeLadder",
            "AcuteClassifier")) {
      String text =
          Files.readString(Path.of("src/main/java/org/meltwright/safety/hazard/" + file + ".java"));
      figure.matcher(text).results().forEach(m -> found.add(file + "." + m.group(1)));
    }
    assertThat(found).containsExactly("DataSheetDuty.SENSITISERS");
  }

  @Test
  void labelElements_haveTheirParagraph() {
    assertThat(TextTable.rows("label-elements.txt"))
        .allSatisfy(r -> assertThat(r.get(7)).matches(WHERE));
  }

  /** Four significant figures, without an exponent for the sizes met here. */
  private static String number(double value) {
    if (Double.isInfinite(value)) {
      return "without limit";
    }
    return new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
