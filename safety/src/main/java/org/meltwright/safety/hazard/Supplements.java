// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/** Statements, notices and duties that follow from single ingredients. */
final class Supplements {

  private static final Set<String> LEAD_PAINT =
      Set.of("598-63-0", "1319-46-6", "7446-14-2", "15739-80-7");
  private static final Set<String> LEAD_CHROMATES = Set.of("7758-97-6", "1344-37-2", "12656-85-8");
  private static final Set<String> BY_CONTENT = Set.of("EUH204", "EUH205");

  private final HazardMixture mixture;
  private final RuleSet rules;
  private final List<HazardFinding> findings;

  Supplements(HazardMixture mixture, RuleSet rules, List<HazardFinding> findings) {
    this.mixture = mixture;
    this.rules = rules;
    this.findings = findings;
  }

  List<SupplementalStatement> statements() {
    List<SupplementalStatement> all = new ArrayList<>();
    add(all, "EUH201", lead());
    BY_CONTENT.stream().sorted().forEach(code -> add(all, code, containing(code)));
    boolean sensitises =
        isClassified(HazardClass.SKIN_SENSITISATION)
            || isClassified(HazardClass.RESPIRATORY_SENSITISATION);
    add(all, "EUH208", sensitises ? List.of() : elicitors());
    return List.copyOf(all);
  }

  private static void add(
      List<SupplementalStatement> all, String code, List<HazardIngredient> ingredients) {
    if (!ingredients.isEmpty()) {
      all.add(new SupplementalStatement(code, ingredients));
    }
  }

  private boolean isClassified(HazardClass c) {
    return findings.stream().anyMatch(f -> f.hazardClass() == c && f.isClassified());
  }

  /** What holds lead, if the mixture's lead reaches the limit. */
  private List<HazardIngredient> lead() {
    List<HazardIngredient> holding = where(i -> i.hazards().metal().equals(Optional.of("Pb")));
    double lead = holding.stream().mapToDouble(i -> metalPercent(i)).sum();
    return lead > 0 && Limit.reaches(lead, rules.bound(Bound.LEAD_STATEMENT_ABOVE_PER_CENT))
        ? holding
        : List.of();
  }

  private static double metalPercent(HazardIngredient i) {
    return i.percent() * i.hazards().metalShare().orElse(1);
  }

  private List<HazardIngredient> containing(String code) {
    return where(i -> i.hazards().supplements().contains(code));
  }

  /** Sensitisers that are there in amounts that may set off an allergy. */
  List<HazardIngredient> elicitors() {
    return where(
        i ->
            Stream.of(HazardClass.SKIN_SENSITISATION, HazardClass.RESPIRATORY_SENSITISATION)
                .anyMatch(c -> elicits(i, c)));
  }

  private boolean elicits(HazardIngredient i, HazardClass c) {
    OptionalDouble own = LimitLadder.lowest(i.hazards().limits(c, Effect.WHOLE).stream());
    OptionalDouble limit =
        own.isPresent()
            ? OptionalDouble.of(own.getAsDouble() / 10)
            : rules.rule(c).stream()
                .flatMap(
                    r ->
                        i.hazards().claims(c, Effect.WHOLE).stream()
                            .map(x -> r.elicitation(x.category())))
                .flatMapToDouble(OptionalDouble::stream)
                .min();
    return limit.isPresent() && Limit.reaches(i.limitPercent(), limit.getAsDouble());
  }

  /** Ingredients for which a data sheet is due on request although nothing is classified. */
  List<HazardIngredient> onRequest() {
    return where(i -> elicitors().contains(i) || findings.stream().anyMatch(f -> onRequest(i, f)));
  }

  private boolean onRequest(HazardIngredient i, HazardFinding f) {
    return rules.rule(f.hazardClass()).stream()
        .flatMapToDouble(
            r ->
                i.hazards().categories().stream()
                    .filter(c -> c.hazardClass() == f.hazardClass())
                    .flatMapToDouble(c -> r.onRequest(c.category()).stream()))
        .anyMatch(limit -> Limit.reaches(i.limitPercent(), limit));
  }

  List<LegalNotice> notices() {
    List<LegalNotice> notices = new ArrayList<>();
    if (holdsAny(LEAD_PAINT)) {
      notices.add(LegalNotice.LEAD_PAINT);
    }
    if (holdsAny(LEAD_CHROMATES)) {
      notices.add(LegalNotice.LEAD_CHROMATE_AUTHORISATION);
    }
    if (!where(i -> i.pigment().filter(p -> p.holds("Cd")).isPresent()).isEmpty()) {
      notices.add(LegalNotice.CADMIUM_PAINT);
    }
    if (findings.stream().anyMatch(Supplements::isSevereCmr)) {
      notices.add(LegalNotice.CMR_TO_THE_PUBLIC);
    }
    return List.copyOf(notices);
  }

  private static boolean isSevereCmr(HazardFinding f) {
    return switch (f.hazardClass()) {
      case CARCINOGENICITY, MUTAGENICITY, REPRODUCTION -> f.isCategoryOne();
      default -> false;
    };
  }

  private boolean holdsAny(Set<String> casNumbers) {
    return !where(i -> i.hazards().casNumbers().stream().anyMatch(casNumbers::contains)).isEmpty();
  }

  private List<HazardIngredient> where(Predicate<HazardIngredient> test) {
    return mixture.ingredients().stream().filter(i -> i.percent() > 0).filter(test).toList();
  }
}
