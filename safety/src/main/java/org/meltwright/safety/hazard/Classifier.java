// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Source;
import org.meltwright.units.Limit;

/** Finds the answer of each class for one mixture. */
final class Classifier {

  private final HazardMixture mixture;
  private final RuleSet rules;

  Classifier(HazardMixture mixture, RuleSet rules) {
    this.mixture = mixture;
    this.rules = rules;
  }

  List<HazardFinding> findings() {
    return Stream.of(HazardClass.values())
        .flatMap(c -> rules.rule(c).stream())
        .filter(rule -> !rule.needsTest() || lacksTest(rule.hazardClass()))
        .map(this::finding)
        .toList();
  }

  /** Whether an ingredient is in a class that only a test can tell, and none of it is stated. */
  private boolean lacksTest(HazardClass c) {
    boolean stated =
        mixture.testedWithout().contains(c)
            || mixture.tested().stream().anyMatch(t -> t.hazardClass() == c);
    return !stated
        && mixture.ingredients().stream()
            .anyMatch(i -> i.percent() > 0 && i.hazards().isClassifiedFor(c));
  }

  private HazardFinding finding(ClassRule rule) {
    if (rule.needsTest()) {
      return untested(rule);
    }
    return switch (rule.hazardClass()) {
      case ACUTE_ORAL -> acute(rule, UptakeForm.ORAL);
      case ACUTE_DERMAL -> acute(rule, UptakeForm.DERMAL);
      case ACUTE_INHALATION -> acute(rule, UptakeForm.GAS, UptakeForm.VAPOUR, UptakeForm.DUST);
      case SKIN -> corrected(rule, isExtremePh());
      case EYE -> corrected(rule, isExtremePh() || isCorrosive());
      case REPRODUCTION -> reproduction(rule);
      case ASPIRATION -> LiquidClassifier.aspiration(byLimits(rule), mixture, rules);
      case FLAMMABLE_LIQUID -> LiquidClassifier.flammable(source(rule), mixture, rules);
      default -> byLimits(rule);
    };
  }

  private Source source(ClassRule rule) {
    return rules.source(rule.paragraph(), rule.knowledge());
  }

  private LimitClassifier limits(ClassRule rule, Effect effect) {
    return new LimitClassifier(
        mixture.ingredients(), rule, effect, mixture.state().orElse(null), rules::additiveGroup);
  }

  private HazardFinding byLimits(ClassRule rule) {
    LimitClassifier limits = limits(rule, Effect.WHOLE);
    Optional<Working> reached = limits.reached();
    if (reached.isEmpty()) {
      return unreached(rule, limits.nearest().stream().toList());
    }
    Category level = reached.orElseThrow().category().orElseThrow();
    HazardCategory category = category(rule, level, limits.allReached());
    return classified(rule, List.of(category), limits.decisive(), List.of());
  }

  /** Skin and eye: a pH at either end, or corrosion of the skin, decides on its own. */
  private HazardFinding corrected(ClassRule rule, boolean severe) {
    HazardFinding found = byLimits(rule);
    if (!severe || found.isCategoryOne()) {
      return found;
    }
    HazardCategory worst =
        HazardCategory.of(
            rule.hazardClass(),
            Category.ONE,
            LabelElements.statement(rule.hazardClass(), Category.ONE));
    return classified(rule, List.of(worst), found.workings(), phRemarks(found));
  }

  /** Why category 1; and, where shares alone would have said less, that the two disagree. */
  private List<HazardRemark> phRemarks(HazardFinding byShares) {
    if (!isExtremePh()) {
      return List.of(HazardRemark.CORROSIVE_TO_SKIN);
    }
    List<HazardRemark> remarks = new ArrayList<>(List.of(HazardRemark.EXTREME_PH));
    if (byShares.workings().stream().anyMatch(w -> !w.contributions().isEmpty())) {
      remarks.add(HazardRemark.PH_AGAINST_SHARES);
    }
    if (mixture.reserveGramsPer100Grams().isPresent()) {
      remarks.add(HazardRemark.RESERVE_ALONE);
    }
    return remarks;
  }

  /** A pH at either end, unless a test of the mixture refuted it; a low reserve alone does not. */
  private boolean isExtremePh() {
    return !mixture.isPhRefutedByTest()
        && mixture.ph().stream()
            .anyMatch(
                ph ->
                    !Limit.exceeds(ph, rules.bound(Bound.PH_CORROSIVE_UP_TO))
                        || Limit.reaches(ph, rules.bound(Bound.PH_CORROSIVE_FROM)));
  }

  private boolean isCorrosive() {
    return rules.rule(HazardClass.SKIN).map(rule -> byLimits(rule).isCategoryOne()).orElse(false);
  }

  /** Fertility, development and what does not say which are held against limits of their own. */
  private HazardFinding reproduction(ClassRule rule) {
    List<Working> reached = new ArrayList<>();
    List<Working> nearest = new ArrayList<>();
    ReproductiveStatement statement = new ReproductiveStatement();
    for (Effect effect : List.of(Effect.DEVELOPMENT, Effect.FERTILITY, Effect.NOT_SAID)) {
      LimitClassifier limits = limits(rule, effect);
      limits
          .reached()
          .flatMap(Working::category)
          .ifPresent(category -> statement.reach(effect, category));
      reached.addAll(limits.decisive());
      limits.nearest().ifPresent(nearest::add);
    }
    if (reached.isEmpty()) {
      return unreached(rule, nearest);
    }
    return classified(rule, List.of(statement.category()), reached, List.of());
  }

  private HazardFinding untested(ClassRule rule) {
    return new HazardFinding(
        rule.hazardClass(),
        HazardStatus.INSUFFICIENT_DATA,
        List.of(),
        source(rule),
        List.of(),
        mixture.ingredients().stream()
            .filter(i -> i.percent() > 0 && i.hazards().isClassifiedFor(rule.hazardClass()))
            .toList(),
        List.of(HazardRemark.TEST_MISSING));
  }

  private HazardFinding acute(ClassRule rule, UptakeForm... forms) {
    List<Working> workings = new ArrayList<>();
    AcuteLimit worst = null;
    for (UptakeForm form : forms) {
      AcuteClassifier classifier = new AcuteClassifier(mixture.ingredients(), form, rules);
      Working w = classifier.working();
      AcuteLimit reached = classifier.category(w.value()).orElse(null);
      if (!w.contributions().isEmpty()) {
        workings.add(w);
      }
      worst = worse(worst, reached);
    }
    if (worst == null) {
      return unreached(rule, workings);
    }
    String statement = LabelElements.statement(rule.hazardClass(), worst.category());
    HazardCategory category = HazardCategory.of(rule.hazardClass(), worst.category(), statement);
    return classified(rule, List.of(category), workings, List.of());
  }

  /** Whether an ingredient is in a category that these rules do not have, such as 5 of the UN. */
  private boolean holdsCategoryUnknownTo(ClassRule rule) {
    return mixture.ingredients().stream()
        .filter(i -> i.percent() > 0)
        .flatMap(i -> i.hazards().claims(rule.hazardClass(), Effect.WHOLE).stream())
        .anyMatch(c -> rule.rank(rule.asKnown(c.category())) < 0);
  }

  private static @Nullable AcuteLimit worse(@Nullable AcuteLimit a, @Nullable AcuteLimit b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return a.category().compareTo(b.category()) <= 0 ? a : b;
  }

  private HazardFinding classified(
      ClassRule rule,
      List<HazardCategory> categories,
      List<Working> workings,
      List<HazardRemark> remarks) {
    boolean mostSevere = rule.rank(categories.get(0).category()) == 0;
    return new HazardFinding(
        rule.hazardClass(),
        HazardStatus.CLASSIFIED,
        categories,
        source(rule),
        workings,
        mostSevere ? List.of() : open(rule),
        remarks);
  }

  private HazardFinding unreached(ClassRule rule, List<Working> workings) {
    List<HazardIngredient> open = open(rule);
    return new HazardFinding(
        rule.hazardClass(),
        open.isEmpty() ? HazardStatus.NOT_CLASSIFIED : HazardStatus.INSUFFICIENT_DATA,
        List.of(),
        source(rule),
        workings,
        open,
        holdsCategoryUnknownTo(rule) ? List.of(HazardRemark.CATEGORY_NOT_KNOWN) : List.of());
  }

  private List<HazardIngredient> open(ClassRule rule) {
    return mixture.ingredients().stream()
        .filter(i -> i.hazards().isOpenFor(rule.hazardClass()))
        .filter(i -> Limit.reaches(i.percent(), rule.openFromPercent()))
        .toList();
  }

  private static HazardCategory category(ClassRule rule, Category level, List<Working> reached) {
    HazardClass c = rule.hazardClass();
    String statement = LabelElements.statement(c, level);
    if (c == HazardClass.CARCINOGENICITY && statement.equals("H350") && onlyInhaled(reached)) {
      statement = "H350i";
    }
    return new HazardCategory(c, level, statement, details(c, reached), false, false);
  }

  /** Whether all that reach category 1A or 1B do so by the statement for inhalation. */
  private static boolean onlyInhaled(List<Working> reached) {
    return reached.stream()
        .filter(w -> !w.category().equals(Optional.of(Category.TWO)))
        .flatMap(w -> w.contributions().stream())
        .map(x -> x.ingredient().hazards())
        .flatMap(s -> s.claims(HazardClass.CARCINOGENICITY, Effect.WHOLE).stream())
        .allMatch(claim -> claim.statement().equals("H350i"));
  }

  /** Organs if each contributor names some; a route only if all name it. */
  private static List<String> details(HazardClass c, List<Working> reached) {
    List<List<String>> each =
        reached.stream()
            .flatMap(w -> w.contributions().stream())
            .flatMap(x -> x.ingredient().hazards().claims(c, Effect.WHOLE).stream())
            .map(Claim::details)
            .toList();
    if (each.stream().anyMatch(List::isEmpty)) {
      return List.of();
    }
    Set<String> union = new LinkedHashSet<>();
    each.forEach(union::addAll);
    union.removeIf(
        d -> StatementFilling.isRoute(d) && !each.stream().allMatch(one -> one.contains(d)));
    return List.copyOf(union);
  }
}
