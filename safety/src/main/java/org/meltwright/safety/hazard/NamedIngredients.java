// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/**
 * Which ingredients a label names (Article 18(3)(b)): all that lead to a class by themselves, of
 * those that add up the fewest that together do, up to four unless more lead to a grave class.
 */
final class NamedIngredients {

  private static final List<List<String>> ROWS = TextTable.rows("label-names.txt");

  private static final Comparator<Named> ORDER =
      Comparator.comparing(Named::summed)
          .thenComparing(Named::category)
          .thenComparing(Comparator.comparingDouble(Named::weight).reversed())
          .thenComparing(n -> n.ingredient().name(Locale.ENGLISH));

  private final HazardReview review;

  /** Classes of which the highest share decides: each at or above its limit is named. */
  private final Set<HazardClass> each;

  private final Set<HazardClass> summed;

  /** One name with what decides its place. */
  private record Named(
      HazardIngredient ingredient, boolean summed, Category category, double weight) {}

  NamedIngredients(HazardReview review) {
    this.review = review;
    this.each = classes("each");
    this.summed = classes("summed");
  }

  private Set<HazardClass> classes(String kind) {
    return rows(kind).map(row -> HazardClass.ofId(row.get(1))).collect(Collectors.toSet());
  }

  private Stream<List<String>> rows(String kind) {
    return ROWS.stream()
        .filter(row -> row.get(0).equals(kind))
        .filter(row -> Days.of(row).holdOn(review.rules().day()));
  }

  private int usualNumber() {
    return rows("usual").mapToInt(row -> Integer.parseInt(row.get(1))).findFirst().orElseThrow();
  }

  List<HazardIngredient> names() {
    List<Named> all =
        Stream.concat(
                review.findings().stream()
                    .filter(HazardFinding::isClassified)
                    .flatMap(f -> of(f).stream()),
                elicitors())
            .sorted(ORDER)
            .toList();
    Map<String, Named> first = new LinkedHashMap<>();
    all.forEach(n -> first.putIfAbsent(n.ingredient().key(), n));
    int usual = usualNumber();
    List<HazardIngredient> names = new ArrayList<>();
    for (Named n : first.values()) {
      if (!n.summed() || names.size() < usual) {
        names.add(n.ingredient());
      }
    }
    return List.copyOf(names);
  }

  /** Annex II 2.8: further sensitisers in amounts that may set off an allergy. */
  private Stream<Named> elicitors() {
    return review.elicitors().stream().map(i -> new Named(i, false, Category.FIVE, i.percent()));
  }

  private List<Named> of(HazardFinding f) {
    if (!isNamedFor(f)) {
      return List.of();
    }
    List<Named> named = f.workings().stream().flatMap(w -> of(f, w).stream()).toList();
    return named.isEmpty() ? inTheClass(f) : named;
  }

  /** Where shares did not decide, as with a pH at either end: what is in the class itself. */
  private List<Named> inTheClass(HazardFinding f) {
    List<Named> all =
        review.mixture().ingredients().stream()
            .filter(i -> i.percent() > 0)
            .flatMap(i -> Stream.of(HazardClass.SKIN, HazardClass.EYE).flatMap(c -> of(i, c)))
            .toList();
    Optional<Category> gravest = all.stream().map(Named::category).min(Category::compareTo);
    return isSkinOrEye(f)
        ? all.stream().filter(n -> gravest.equals(Optional.of(n.category()))).toList()
        : List.of();
  }

  private static Stream<Named> of(HazardIngredient i, HazardClass c) {
    return i.hazards().claims(c, Effect.WHOLE).stream()
        .map(claim -> claim.category().isOne() ? Category.ONE : Category.TWO)
        .map(category -> new Named(i, true, category, i.percent()));
  }

  private static boolean isSkinOrEye(HazardFinding f) {
    return f.hazardClass() == HazardClass.SKIN || f.hazardClass() == HazardClass.EYE;
  }

  /** Whether a class whose ingredients are named has none that could be. */
  boolean leavesAClassWithoutName() {
    return review.findings().stream()
        .filter(HazardFinding::isClassified)
        .anyMatch(f -> isNamedFor(f) && of(f).isEmpty());
  }

  private boolean isNamedFor(HazardFinding f) {
    boolean irritation = isSkinOrEye(f) && !f.isCategoryOne();
    return !irritation && (each.contains(f.hazardClass()) || summed.contains(f.hazardClass()));
  }

  private List<Named> of(HazardFinding f, Working w) {
    boolean alone = each.contains(f.hazardClass());
    List<Contribution> named = alone ? w.contributions() : fewest(f, w);
    return named.stream()
        .map(c -> new Named(c.ingredient(), !alone, category(f, w), c.quotient()))
        .toList();
  }

  private static Category category(HazardFinding f, Working w) {
    return w.category().or(f::category).orElseThrow();
  }

  /** All that reach the category alone; if none does, the fewest that together do. */
  private List<Contribution> fewest(HazardFinding f, Working w) {
    List<Contribution> byWeight =
        w.contributions().stream()
            .sorted(Comparator.comparingDouble(Contribution::quotient).reversed())
            .toList();
    List<Contribution> alone = byWeight.stream().filter(c -> reaches(f, w, c.quotient())).toList();
    if (!alone.isEmpty()) {
      return alone;
    }
    double sum = 0;
    List<Contribution> few = new ArrayList<>();
    for (Contribution c : byWeight) {
      if (!reaches(f, w, sum)) {
        few.add(c);
        sum += c.quotient();
      }
    }
    return reaches(f, w, sum) ? few : List.of();
  }

  /** Whether a sum leads to the category that was reached; of an estimate, by its formula. */
  private boolean reaches(HazardFinding f, Working w, double sum) {
    if (!w.isEstimate()) {
      return Limit.reaches(sum, 1);
    }
    double numerator = w.kind() == Working.Kind.ACUTE_CORRECTED ? 100 - w.unknownPercent() : 100;
    return sum > 0
        && review.rules().acuteLimits(w.form().orElseThrow()).stream()
            .filter(l -> f.category().filter(c -> c == l.category()).isPresent())
            .anyMatch(l -> !Limit.exceeds(numerator / sum, l.upTo()));
  }
}
