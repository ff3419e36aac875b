// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.ProblemException;

/**
 * Pictograms, signal word and statements that follow from the categories of a mixture, by the rules
 * of precedence.
 *
 * <p>A mixture that is harmful when swallowed or inhaled, and two hazards to water of which one
 * statement covers the other:
 *
 * <pre>{@code
 * LabelElements elements =
 *     LabelElements.of(
 *         List.of(
 *             HazardCategory.parse("Acute Tox. 4 H302"),
 *             HazardCategory.parse("Acute Tox. 4 H332"),
 *             HazardCategory.parse("Aquatic Acute 1 H400"),
 *             HazardCategory.parse("Aquatic Chronic 1 H410")),
 *         RuleSet.clpOn(LocalDate.of(2026, 6, 1)));
 * elements.hazardStatements(); // [H302+H332, H410]
 * elements.pictograms(); // [GHS07, GHS09]
 * elements.signalWord(); // WARNING
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class LabelElements {

  private static final Map<String, List<Row>> ROWS = read();

  /** Categories that the UN system has and the European rules have not: without a label. */
  private static final Map<String, String> UN_STATEMENTS = unStatements();

  private static final List<HazardCategory> CATEGORIES = categoriesOf("label-elements.txt");

  private static final List<HazardCategory> UN_CATEGORIES = categoriesOf("un-categories.txt");

  private static final Set<HazardClass> IRRITATION = EnumSet.of(HazardClass.SKIN, HazardClass.EYE);

  private final List<HazardCategory> categories;
  private final LocalDate day;

  /** One line of the table: what a category asks for. */
  private record Row(
      String statement,
      @Nullable Pictogram pictogram,
      @Nullable ChemicalSignalWord signalWord,
      List<String> precautions,
      String paragraph,
      Days days) {}

  /**
   * Returns the label elements of categories.
   *
   * @param categories the categories of a mixture, one or several of each class
   * @param rules the rules; their day decides which table holds
   * @return its label elements
   * @throws ProblemException if the European rules know no label for a category on that day
   */
  public static LabelElements of(List<HazardCategory> categories, RuleSet rules) {
    return new LabelElements(categories, rules.day());
  }

  private LabelElements(List<HazardCategory> categories, LocalDate day) {
    this.day = day;
    categories.stream()
        .filter(c -> find(c).isEmpty())
        .findFirst()
        .ifPresent(
            c -> {
              throw HazardNotation.unreadable(c.toString());
            });
    this.categories = List.copyOf(categories);
  }

  /**
   * Returns the pictograms.
   *
   * <p>Of one class only the most severe category's counts; the bomb makes flame and flame over
   * circle dispensable, skull and crossbones the exclamation mark, corrosion the exclamation mark
   * for skin and eye, the health hazard for respiratory sensitisation that for skin and eye too
   * (Article 26).
   *
   * @return the pictograms, in the order of their codes
   */
  public List<Pictogram> pictograms() {
    Set<Pictogram> all =
        rows().flatMap(r -> Stream.ofNullable(r.pictogram())).collect(Collectors.toSet());
    if (all.contains(Pictogram.GHS07) && !needsExclamationMark(all)) {
      all.remove(Pictogram.GHS07);
    }
    if (all.contains(Pictogram.GHS01)) {
      all.removeAll(Set.of(Pictogram.GHS02, Pictogram.GHS03));
    }
    if (all.contains(Pictogram.GHS02) || all.contains(Pictogram.GHS06)) {
      all.remove(Pictogram.GHS04);
    }
    return all.stream().sorted().toList();
  }

  private boolean needsExclamationMark(Set<Pictogram> all) {
    if (all.contains(Pictogram.GHS06)) {
      return false;
    }
    boolean respiratory = has(HazardClass.RESPIRATORY_SENSITISATION);
    boolean corrosion = all.contains(Pictogram.GHS05);
    return categories.stream()
        .filter(c -> row(c).pictogram() == Pictogram.GHS07)
        .map(HazardCategory::hazardClass)
        .filter(c -> !((respiratory || corrosion) && IRRITATION.contains(c)))
        .anyMatch(c -> !(respiratory && c == HazardClass.SKIN_SENSITISATION));
  }

  private boolean has(HazardClass hazardClass) {
    return categories.stream().anyMatch(c -> c.hazardClass() == hazardClass);
  }

  /**
   * Returns the signal word; Danger drops Warning.
   *
   * @return the word; empty if no category asks for one
   */
  public Optional<ChemicalSignalWord> signalWord() {
    return rows().flatMap(r -> Stream.ofNullable(r.signalWord())).min(Comparator.naturalOrder());
  }

  /**
   * Returns the codes of the hazard statements, health and physical hazards before the environment.
   *
   * <p>H410 covers H400, and H314 covers H318; acute toxicity of one category by several routes is
   * said in one statement, such as "H302+H332".
   *
   * @return the codes
   */
  public List<String> hazardStatements() {
    Set<String> codes =
        categories.stream()
            .map(HazardCategory::statement)
            .sorted()
            .collect(Collectors.toCollection(LinkedHashSet::new));
    if (codes.contains("H222") || codes.contains("H223")) {
      codes.add("H229");
    }
    dropCovered(codes, "H410", "H400");
    dropCovered(codes, "H314", "H318");
    return joinRoutes(codes);
  }

  private static void dropCovered(Set<String> codes, String covering, String covered) {
    if (codes.contains(covering)) {
      codes.remove(covered);
    }
  }

  private static List<String> joinRoutes(Set<String> codes) {
    for (char category : new char[] {'0', '1', '2'}) {
      List<String> routes =
          Stream.of("H30", "H31", "H33").map(h -> h + category).filter(codes::contains).toList();
      String joined = String.join("+", routes);
      if (routes.size() > 1 && Statements.has(joined)) {
        routes.forEach(codes::remove);
        codes.add(joined);
      }
    }
    return codes.stream().sorted().toList();
  }

  /** The day whose table holds. */
  LocalDate day() {
    return day;
  }

  @Nullable Pictogram pictogram(HazardCategory c) {
    return row(c).pictogram();
  }

  /** What the table of a category offers as precautionary statements. */
  List<String> offered(HazardCategory c) {
    return row(c).precautions();
  }

  private Stream<Row> rows() {
    return categories.stream().map(this::row);
  }

  private Row row(HazardCategory c) {
    return find(c).orElseThrow(() -> new IllegalArgumentException(c.toString()));
  }

  private Optional<Row> find(HazardCategory c) {
    return ROWS.getOrDefault(key(c.hazardClass(), c.category()), List.of()).stream()
        .filter(row -> row.days().holdOn(day))
        .findFirst();
  }

  /** The statement of a category; empty text for one that neither system knows. */
  static String statement(HazardClass hazardClass, Category category) {
    String key = key(hazardClass, category);
    List<Row> rows = ROWS.get(key);
    return rows == null ? UN_STATEMENTS.getOrDefault(key, "") : rows.get(0).statement();
  }

  private static String key(HazardClass hazardClass, Category category) {
    return hazardClass.id() + " " + category.key();
  }

  static boolean knows(HazardCategory c) {
    return ROWS.containsKey(key(c.hazardClass(), c.category()));
  }

  /** All categories of the table, most severe first of each class. */
  static List<HazardCategory> all() {
    return CATEGORIES;
  }

  /** The categories of the UN system that the European rules have not. */
  static List<HazardCategory> ofUnAlone() {
    return UN_CATEGORIES;
  }

  private static List<HazardCategory> categoriesOf(String file) {
    return TextTable.rows(file).stream()
        .map(r -> HazardCategory.of(HazardClass.ofId(r.get(0)), Category.of(r.get(1)), r.get(2)))
        .distinct()
        .toList();
  }

  private static Map<String, String> unStatements() {
    Map<String, String> statements = new HashMap<>();
    TextTable.rows("un-categories.txt")
        .forEach(r -> statements.put(r.get(0) + " " + r.get(1), r.get(2)));
    return Map.copyOf(statements);
  }

  private static Map<String, List<Row>> read() {
    Map<String, List<Row>> rows = new HashMap<>();
    for (List<String> cells : TextTable.rows("label-elements.txt")) {
      rows.computeIfAbsent(cells.get(0) + " " + cells.get(1), k -> new ArrayList<>())
          .add(row(cells));
    }
    return Map.copyOf(rows);
  }

  private static Row row(List<String> cells) {
    return new Row(
        cells.get(2),
        cells.get(3).isEmpty() ? null : Pictogram.valueOf(cells.get(3)),
        cells.get(4).isEmpty()
            ? null
            : ChemicalSignalWord.valueOf(cells.get(4).toUpperCase(java.util.Locale.ROOT)),
        TextTable.items(cells.get(5), " "),
        cells.get(7),
        Days.of(cells));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LabelElements that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(categories, day);
  }

  @Override
  public String toString() {
    return "label elements of " + categories + " on " + day;
  }
}
