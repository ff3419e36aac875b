// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/**
 * Two lists that look alike and are not: whose sheet the label of an unclassified mixture announces
 * (EUH210, Annex II 2.10), and whose sheet a professional who asks must be given (REACH 31(3)).
 * Each substance is held by itself; nothing is added up.
 */
final class DataSheetDuty {

  private static final Set<HazardClass> SENSITISERS =
      EnumSet.of(HazardClass.RESPIRATORY_SENSITISATION, HazardClass.SKIN_SENSITISATION);

  private final HazardMixture mixture;
  private final RuleSet rules;

  DataSheetDuty(HazardMixture mixture, RuleSet rules) {
    this.mixture = mixture;
    this.rules = rules;
  }

  List<HazardIngredient> announced() {
    Bound from =
        mixture.state().filter(s -> s == PhysicalState.GAS).isPresent()
            ? Bound.WORKPLACE_LIMIT_GAS_FROM_PER_CENT
            : Bound.WORKPLACE_LIMIT_FROM_PER_CENT;
    return where(
        i ->
            elicits(i)
                || reaches(i, LimitKey.Kind.EUH210)
                || (WorkplaceLimits.has(i, rules.day())
                    && Limit.reaches(i.percent(), rules.bound(from))));
  }

  /** A limit for workplaces counts at any share here: the law names none. */
  List<HazardIngredient> onRequest() {
    return where(i -> WorkplaceLimits.has(i, rules.day()) || reaches(i, LimitKey.Kind.ON_REQUEST));
  }

  /** Sensitisers that are there in amounts that may set off an allergy. */
  List<HazardIngredient> elicitors() {
    return where(this::elicits);
  }

  private boolean elicits(HazardIngredient i) {
    return SENSITISERS.stream().anyMatch(c -> elicits(i, c));
  }

  private boolean elicits(HazardIngredient i, HazardClass c) {
    DoubleStream own =
        own(i, c).stream().mapToDouble(l -> l.fromPercent()).map(this::partOfOwnLimit);
    DoubleStream general =
        hasOwnElicitation(i, c) ? DoubleStream.empty() : generalElicitation(i.hazards(), c);
    return DoubleStream.concat(own, general)
        .anyMatch(limit -> Limit.reaches(i.limitPercent(), limit));
  }

  private double partOfOwnLimit(double limit) {
    return limit * rules.bound(Bound.OWN_LIMIT_PART_ELICITATION);
  }

  private DoubleStream generalElicitation(SubstanceHazards s, HazardClass c) {
    return rules.rule(c).stream()
        .flatMapToDouble(
            rule ->
                s.claims(c, Effect.WHOLE).stream()
                    .flatMapToDouble(x -> rule.elicitation(x.category()).stream()));
  }

  private static List<SpecificLimit> own(HazardIngredient i, HazardClass c) {
    return i.hazards().limits(c, Effect.WHOLE);
  }

  private boolean reaches(HazardIngredient i, LimitKey.Kind kind) {
    return Stream.of(HazardClass.values())
        .filter(c -> kind != LimitKey.Kind.EUH210 || !hasOwnElicitation(i, c))
        .flatMap(c -> rules.rule(c).stream())
        .flatMapToDouble(
            rule ->
                categories(i.hazards(), rule.hazardClass())
                    .flatMapToDouble(category -> rule.get(kind, category).stream()))
        .anyMatch(limit -> Limit.reaches(i.limitPercent(), limit));
  }

  /** A tenth of its own limit stands in place of the general share of that category. */
  private static boolean hasOwnElicitation(HazardIngredient i, HazardClass c) {
    List<SpecificLimit> own = own(i, c);
    return SENSITISERS.contains(c) && !own.isEmpty() && LimitLadder.covers(i.hazards(), c, own);
  }

  /** The categories that a sheet names, and those that its estimates fall in. */
  private Stream<Category> categories(SubstanceHazards s, HazardClass c) {
    Stream<Category> byEstimate =
        UptakeForm.of(c)
            .flatMap(
                form ->
                    rules.acuteLimits(form).stream()
                        .filter(l -> isIn(s.estimate(form), l))
                        .limit(1)
                        .map(AcuteLimit::category));
    return Stream.concat(s.claims(c, Effect.WHOLE).stream().map(Claim::category), byEstimate);
  }

  private static boolean isIn(OptionalDouble estimate, AcuteLimit limit) {
    return estimate.isPresent() && !Limit.exceeds(estimate.getAsDouble(), limit.upTo());
  }

  private List<HazardIngredient> where(Predicate<HazardIngredient> test) {
    return mixture.ingredients().stream().filter(i -> i.percent() > 0).filter(test).toList();
  }
}
