// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/** What a label and a data sheet must say of ingredients of which nothing is known. */
final class UnknownShares {

  private static final List<UptakeForm> ROUTES =
      List.of(UptakeForm.ORAL, UptakeForm.DERMAL, UptakeForm.DUST);

  private final HazardMixture mixture;
  private final RuleSet rules;

  UnknownShares(HazardMixture mixture, RuleSet rules) {
    this.mixture = mixture;
    this.rules = rules;
  }

  /** The share of unknown acute toxicity by a route: of those alone that themselves count. */
  double acutePercent(UptakeForm form) {
    return new AcuteClassifier(mixture.ingredients(), form, rules).unknownPercent();
  }

  /** The share that is unknown for water: of those alone that themselves count. */
  double aquaticPercent() {
    if (rules.rule(HazardClass.AQUATIC_CHRONIC).isEmpty()
        || !rules.has(Bound.UNKNOWN_AQUATIC_FROM_PER_CENT)) {
      return 0;
    }
    return mixture.ingredients().stream()
        .filter(i -> i.hazards().isOpenFor(HazardClass.AQUATIC_CHRONIC))
        .filter(i -> Limit.reaches(i.percent(), rules.bound(Bound.UNKNOWN_AQUATIC_FROM_PER_CENT)))
        .mapToDouble(HazardIngredient::percent)
        .sum();
  }

  /** One sentence where the routes agree, else one for each route. */
  List<String> acuteStatements(Locale locale) {
    List<Double> shares = ROUTES.stream().map(this::acutePercent).toList();
    if (shares.stream().distinct().count() == 1) {
      return shares.get(0) > 0
          ? List.of(sentence("unknown-toxicity", shares.get(0), "", locale))
          : List.of();
    }
    List<String> statements = new ArrayList<>();
    for (int i = 0; i < ROUTES.size(); i++) {
      if (shares.get(i) > 0) {
        String route = HazardTexts.label("route." + ROUTES.get(i).id(), locale);
        statements.add(sentence("unknown-toxicity-by-route", shares.get(i), route, locale));
      }
    }
    return statements;
  }

  List<String> statements(Locale locale) {
    double water = aquaticPercent();
    Stream<String> ofWater =
        water > 0 ? Stream.of(sentence("unknown-water", water, "", locale)) : Stream.of();
    return Stream.concat(acuteStatements(locale).stream(), ofWater).toList();
  }

  private static String sentence(String key, double percent, String route, Locale locale) {
    String share = HazardTexts.shownPercent(percent, locale);
    return HazardTexts.label(key, locale, Map.of("percent", share, "route", route));
  }
}
