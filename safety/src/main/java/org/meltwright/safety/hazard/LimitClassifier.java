// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Limit;

/** Holds the ingredients' shares against the limits of one class, most severe category first. */
final class LimitClassifier {

  private static final Comparator<Working> BY_VALUE = Comparator.comparingDouble(Working::value);

  /** The largest part of its limit first, then by name. */
  private static final Comparator<Working> BY_WEIGHT =
      BY_VALUE
          .reversed()
          .thenComparing(w -> w.contributions().get(0).ingredient().name(Locale.ENGLISH));

  private final List<HazardIngredient> ingredients;
  private final ClassRule rule;
  private final LimitLadder ladder;
  private final Function<SubstanceHazards, String> group;

  LimitClassifier(
      List<HazardIngredient> ingredients,
      ClassRule rule,
      Effect effect,
      @Nullable PhysicalState state,
      Function<SubstanceHazards, String> groups) {
    this.ingredients = ingredients;
    this.rule = rule;
    this.group = rule.hazardClass() == HazardClass.REPRODUCTION ? groups : SubstanceHazards::key;
    this.ladder = new LimitLadder(rule, effect, state);
  }

  /** The workings that reach a category, the most severe one only; empty if none is reached. */
  Optional<Working> reached() {
    return rule.levels().stream().flatMap(this::reachedAt).findFirst();
  }

  /**
   * The workings that decide, whatever the order of the ingredients: the sum where shares add up,
   * else one for each substance that reaches its limit, at the gravest level that it reaches.
   */
  List<Working> decisive() {
    Optional<Working> first = reached();
    if (rule.isAdditive() && first.filter(w -> w.kind() == Working.Kind.SUM).isPresent()) {
      return first.stream().toList();
    }
    Set<Set<HazardIngredient>> seen = new HashSet<>();
    return rule.levels().stream()
        .flatMap(level -> reachedAt(level).sorted(BY_WEIGHT))
        .filter(w -> w.kind() == Working.Kind.HIGHEST || !rule.isAdditive())
        .filter(w -> seen.add(Set.copyOf(ingredients(w))))
        .toList();
  }

  private static List<HazardIngredient> ingredients(Working w) {
    return w.contributions().stream().map(Contribution::ingredient).toList();
  }

  /** All workings that reach their category. */
  List<Working> allReached() {
    return rule.levels().stream().flatMap(this::reachedAt).toList();
  }

  /** The working that comes nearest to a category that is not reached. */
  Optional<Working> nearest() {
    return rule.levels().stream()
        .flatMap(this::workings)
        .filter(w -> !w.contributions().isEmpty())
        .max(BY_VALUE);
  }

  private Stream<Working> reachedAt(Category level) {
    return workings(level).filter(w -> Limit.reaches(w.value(), 1));
  }

  private Stream<Working> workings(Category level) {
    List<Contribution> contributions = contributions(level);
    return rule.isAdditive()
        ? Stream.concat(Stream.of(sum(level, contributions)), notAdditive(level))
        : byGroup(contributions).stream()
            .filter(members -> members.stream().anyMatch(c -> speaksOfEffect(c, level)))
            .map(members -> highest(level, members));
  }

  private boolean speaksOfEffect(Contribution c, Category level) {
    return ladder.limit(c.ingredient().hazards(), level).isPresent();
  }

  private static Working sum(Category level, List<Contribution> contributions) {
    return Working.of(Working.Kind.SUM, level, total(contributions), contributions);
  }

  private static Working highest(Category level, List<Contribution> group) {
    Working.Kind kind = group.size() > 1 ? Working.Kind.SUM : Working.Kind.HIGHEST;
    return Working.of(kind, level, total(group), group);
  }

  private static double total(List<Contribution> contributions) {
    return contributions.stream().mapToDouble(Contribution::quotient).sum();
  }

  /** Shares are held one by one, save in groups that the law adds up (notes 11 and 12). */
  private Collection<List<Contribution>> byGroup(List<Contribution> contributions) {
    Map<String, List<Contribution>> groups = new LinkedHashMap<>();
    for (Contribution c : contributions) {
      groups.computeIfAbsent(group.apply(c.ingredient().hazards()), k -> new ArrayList<>()).add(c);
    }
    return groups.values();
  }

  private List<Contribution> contributions(Category level) {
    List<Contribution> contributions = new ArrayList<>();
    for (HazardIngredient i : ingredients) {
      OptionalDouble limit = limit(i.hazards(), level);
      if (limit.isPresent() && isRelevant(i)) {
        contributions.add(new Contribution(i, i.limitPercent(), limit.getAsDouble()));
      }
    }
    return contributions;
  }

  /** Notes 11 and 12 add up what harms reproduction, whichever harm each substance names. */
  private OptionalDouble limit(SubstanceHazards s, Category level) {
    OptionalDouble limit = ladder.limit(s, level);
    boolean inGroup = !group.apply(s).equals(s.key());
    return limit.isPresent() || !inGroup ? limit : ladder.limitOfAnyEffect(s, level);
  }

  private Stream<Working> notAdditive(Category level) {
    return ingredients.stream()
        .filter(i -> !i.hazards().isAdditive())
        .flatMap(i -> notAdditive(i, level).stream());
  }

  private Optional<Working> notAdditive(HazardIngredient i, Category level) {
    OptionalDouble limit = limitAlone(i.hazards(), level);
    return limit.isEmpty()
        ? Optional.empty()
        : Optional.of(
            highest(level, List.of(new Contribution(i, i.limitPercent(), limit.getAsDouble()))));
  }

  private OptionalDouble limitAlone(SubstanceHazards s, Category level) {
    List<SpecificLimit> own = s.limits(rule.hazardClass(), Effect.WHOLE);
    if (prevails(own, s, level)) {
      return ladder.limit(s, level);
    }
    DoubleStream general = categories(s).flatMapToDouble(c -> rule.nonAdditive(c, level).stream());
    return DoubleStream.concat(
            own.stream()
                .filter(l -> rule.rank(l.category()) <= rule.rank(level))
                .mapToDouble(SpecificLimit::fromPercent),
            general)
        .min();
  }

  /** Limits of its own for the level, or above it for its category, or a milder one that ends. */
  private boolean prevails(List<SpecificLimit> own, SubstanceHazards s, Category level) {
    return own.stream().anyMatch(l -> l.category() == level || l.belowPercent().isPresent())
        || (own.stream().anyMatch(l -> rule.rank(l.category()) < rule.rank(level))
            && LimitLadder.covers(s, rule.hazardClass(), own));
  }

  /** Below the cut-off an ingredient is not counted, unless a limit of its own lies lower. */
  private boolean isRelevant(HazardIngredient i) {
    SubstanceHazards s = i.hazards();
    List<SpecificLimit> limits = s.limits(rule.hazardClass(), Effect.WHOLE);
    double cutOff =
        Stream.concat(categories(s), limits.stream().map(SpecificLimit::category))
            .mapToDouble(c -> rule.cutOff(c) / factor(s, c))
            .min()
            .orElse(0);
    double own = LimitLadder.lowest(limits.stream()).orElse(Double.MAX_VALUE);
    return Limit.reaches(i.percent(), Math.min(cutOff, own));
  }

  private double factor(SubstanceHazards s, Category category) {
    if (category != Category.ONE) {
      return 1;
    }
    return switch (rule.hazardClass()) {
      case AQUATIC_ACUTE -> s.acuteFactor().orElse(1);
      case AQUATIC_CHRONIC -> s.chronicFactor().orElse(1);
      default -> 1;
    };
  }

  private Stream<Category> categories(SubstanceHazards s) {
    if (rule.hazardClass() == HazardClass.EYE && EyeLadder.damages(s)) {
      return Stream.of(Category.ONE);
    }
    return s.categories().stream()
        .filter(c -> c.hazardClass() == rule.hazardClass())
        .map(HazardCategory::category);
  }
}
