// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.units.Limit;

/** Works out the acute toxicity estimate of a mixture for one form of uptake. */
final class AcuteClassifier {

  private final List<HazardIngredient> ingredients;
  private final UptakeForm form;
  private final List<AcuteLimit> limits;
  private final RuleSet rules;

  AcuteClassifier(List<HazardIngredient> ingredients, UptakeForm form, RuleSet rules) {
    this.ingredients = ingredients;
    this.form = form;
    this.limits = rules.acuteLimits(form);
    this.rules = rules;
  }

  /** The estimate of the mixture; infinite if no ingredient falls in a category. */
  Working working() {
    List<Contribution> contributions = contributions();
    double sum = contributions.stream().mapToDouble(Contribution::quotient).sum();
    double unknown = unknownPercent();
    boolean corrected = Limit.exceeds(unknown, rules.bound(Bound.UNKNOWN_CORRECTED_ABOVE_PER_CENT));
    double numerator = corrected ? Math.max(100 - unknown, 0) : 100;
    double estimate = sum > 0 ? numerator / sum : Double.POSITIVE_INFINITY;
    Working.Kind kind = corrected ? Working.Kind.ACUTE_CORRECTED : Working.Kind.ACUTE;
    return Working.of(kind, form, estimate, unknown, contributions);
  }

  /** The category of an estimate; empty above the last. */
  Optional<AcuteLimit> category(double estimate) {
    return limits.stream().filter(l -> !Limit.exceeds(estimate, l.upTo())).findFirst();
  }

  /** The share of ingredients of unknown toxicity that are there in relevant amounts. */
  double unknownPercent() {
    return unknown().stream().mapToDouble(HazardIngredient::percent).sum();
  }

  /** What nothing is known of by this route, each in an amount that counts. */
  List<HazardIngredient> unknown() {
    double from = rules.rule(form.hazardClass()).map(ClassRule::openFromPercent).orElse(0.0);
    return ingredients.stream()
        .filter(i -> i.hazards().isOpenFor(form.hazardClass()))
        .filter(i -> UptakeForm.of(form.hazardClass()).allMatch(f -> lacks(i.hazards(), f)))
        .filter(i -> Limit.reaches(i.percent(), from))
        .toList();
  }

  private boolean lacks(SubstanceHazards s, UptakeForm f) {
    return s.estimate(f).isEmpty() && s.claims(f.hazardClass(), Effect.WHOLE).isEmpty();
  }

  private List<Contribution> contributions() {
    List<Contribution> contributions = new ArrayList<>();
    for (HazardIngredient i : ingredients) {
      OptionalDouble estimate = estimate(i);
      if (estimate.isPresent() && isRelevant(i, estimate.getAsDouble())) {
        contributions.add(new Contribution(i, i.percent(), estimate.getAsDouble()));
      }
    }
    return contributions;
  }

  private boolean isRelevant(HazardIngredient i, double estimate) {
    return category(estimate).map(l -> Limit.reaches(i.percent(), l.cutOffPercent())).orElse(false);
  }

  /** The stated estimate; the category's point estimate where none is, or where it is graver. */
  private OptionalDouble estimate(HazardIngredient i) {
    OptionalDouble stated = i.hazards().estimate(form);
    double milder = stated.orElse(Double.POSITIVE_INFINITY);
    OptionalDouble byCategory =
        i.hazards().categories().stream()
            .filter(c -> c.hazardClass() == form.hazardClass())
            .flatMap(c -> limit(c.category()).filter(l -> isTakenUp(i, c)).stream())
            .filter(l -> Limit.exceeds(milder, l.upTo()))
            .mapToDouble(AcuteLimit::pointEstimate)
            .min();
    return byCategory.isPresent() ? byCategory : stated;
  }

  private Optional<AcuteLimit> limit(Category category) {
    return limits.stream().filter(l -> l.category() == category).findFirst();
  }

  private boolean isTakenUp(HazardIngredient i, HazardCategory c) {
    return !form.isInhaled() || new InhaledForms(rules).of(i, c).contains(form);
  }
}
