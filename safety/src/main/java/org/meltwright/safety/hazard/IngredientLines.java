// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;

/** The lines of a mixture while it is written down; lines of the same substance are added. */
final class IngredientLines {

  private static final double SLACK_PERCENT = 1e-6;

  private final RuleSet rules;
  private final List<HazardIngredient> lines = new ArrayList<>();
  private final List<DeclaredShare> declared = new ArrayList<>();
  private final Map<String, SubstanceHazards> sheets = new LinkedHashMap<>();
  private boolean restNotClassified;

  IngredientLines(RuleSet rules) {
    this.rules = rules;
  }

  void material(Material material, DeclaredShare share) {
    declared.add(share);
    takeApart(material, share.highPercent());
  }

  private void takeApart(Material material, double percent) {
    if (material.constituents().isEmpty()) {
      lines.add(new HazardIngredient(material, percent, rules.of(material), null));
      return;
    }
    for (Constituent c : material.constituents()) {
      takeApart(c.material(), percent * c.share().high().value());
    }
  }

  void substance(SubstanceHazards hazards, DeclaredShare share) {
    declared.add(share);
    lines.add(new HazardIngredient(null, share.highPercent(), rules.identified(hazards), null));
  }

  void sheet(String id, SubstanceHazards sheet) {
    sheets.put(id, rules.identified(sheet));
  }

  void restNotClassified() {
    restNotClassified = true;
  }

  List<DeclaredShare> declared() {
    return Stream.concat(declared.stream(), rest()).toList();
  }

  private Stream<DeclaredShare> rest() {
    double low = Math.max(0, 100 - sum(DeclaredShare::highPercent));
    double high = 100 - sum(DeclaredShare::lowPercent);
    return restNotClassified && high > SLACK_PERCENT
        ? Stream.of(DeclaredShare.rest(low, high))
        : Stream.empty();
  }

  private double sum(java.util.function.ToDoubleFunction<DeclaredShare> end) {
    return declared.stream().mapToDouble(end).sum();
  }

  /** The ingredients, sheets worked in and lines of the same substance added. */
  List<HazardIngredient> ingredients() {
    requirePossible();
    requireUsed();
    Map<String, HazardIngredient> merged = new LinkedHashMap<>();
    Stream<HazardIngredient> rest =
        rest().map(s -> new HazardIngredient(null, s.highPercent(), s.asRest(), null));
    Stream.concat(lines.stream().map(this::withSheet), rest).forEach(line -> merge(merged, line));
    return List.copyOf(merged.values());
  }

  /** Another sheet of the same number stays a line of its own. */
  private static void merge(Map<String, HazardIngredient> merged, HazardIngredient line) {
    String key = line.key();
    while (merged.containsKey(key) && !merged.get(key).hazards().saysTheSameAs(line.hazards())) {
      key += "'";
    }
    merged.merge(key, line, HazardIngredient::plus);
  }

  private void requirePossible() {
    Problems problems = new Problems();
    problems.addAll(declared.stream().flatMap(IngredientLines::problems).toList());
    problems.throwIfAny();
    double low = sum(DeclaredShare::lowPercent);
    double high = sum(DeclaredShare::highPercent);
    boolean whole = restNotClassified || high >= 100 - SLACK_PERCENT;
    if (!whole || low > 100 + SLACK_PERCENT) {
      throw new ProblemException(Problem.of(HazardProblem.SHARES, HazardTexts.percent(low, high)));
    }
  }

  private static Stream<Problem> problems(DeclaredShare s) {
    return Stream.of(s.lowPercent(), s.highPercent())
        .filter(p -> !(p >= 0 && p <= 100 + SLACK_PERCENT))
        .distinct()
        .map(
            p ->
                Problem.of(HazardProblem.SHARE, HazardTexts.percent(p, p))
                    .with("name", s.name(java.util.Locale.ENGLISH)));
  }

  private void requireUsed() {
    Set<String> ids =
        lines.stream().flatMap(IngredientLines::ids).collect(Collectors.toCollection(TreeSet::new));
    Problems unused = new Problems();
    unused.addAll(
        sheets.keySet().stream()
            .filter(id -> !ids.contains(id))
            .map(id -> Problem.of(HazardProblem.NO_SUCH_INGREDIENT, id))
            .map(p -> p.with("ids", String.join(", ", ids)))
            .toList());
    unused.throwIfAny();
  }

  private static Stream<String> ids(HazardIngredient line) {
    return Stream.concat(line.material().map(Material::id).stream(), Stream.of(line.key()));
  }

  private HazardIngredient withSheet(HazardIngredient line) {
    SubstanceHazards sheet =
        ids(line).filter(sheets::containsKey).map(sheets::get).findFirst().orElse(null);
    return sheet == null ? line : line.replacedBy(sheet);
  }
}
