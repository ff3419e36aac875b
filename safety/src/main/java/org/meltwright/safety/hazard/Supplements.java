// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.meltwright.units.Limit;

/** Statements, notices and duties that follow from single ingredients. */
final class Supplements {

  private static final Set<String> LEAD_PAINT =
      Set.of("598-63-0", "1319-46-6", "7446-14-2", "15739-80-7");
  private static final Set<String> LEAD_CHROMATES = Set.of("7758-97-6", "1344-37-2", "12656-85-8");
  private static final Set<String> BY_CONTENT = Set.of("EUH204", "EUH205");

  /** They say where a data sheet is, or that skin dries, for which {@link Assumptions} speak. */
  private static final Set<String> NOT_TO_CHECK = Set.of("EUH066", "EUH210");

  private final HazardMixture mixture;
  private final RuleSet rules;
  private final List<HazardFinding> findings;
  private final DataSheetDuty duty;

  Supplements(HazardMixture mixture, RuleSet rules, List<HazardFinding> findings) {
    this.mixture = mixture;
    this.rules = rules;
    this.findings = findings;
    this.duty = new DataSheetDuty(mixture, rules);
  }

  List<SupplementalStatement> statements() {
    List<SupplementalStatement> all = new ArrayList<>();
    add(all, "EUH066", dryingSkin());
    add(all, "EUH070", poisoningByTheEye());
    add(all, "EUH071", corrodingAirways());
    add(all, "EUH201", lead());
    BY_CONTENT.stream().sorted().forEach(code -> add(all, code, containing(code)));
    boolean sensitises =
        isClassified(HazardClass.SKIN_SENSITISATION)
            || isClassified(HazardClass.RESPIRATORY_SENSITISATION);
    add(all, "EUH208", sensitises ? List.of() : duty.elicitors());
    mixture.supplements().stream()
        .filter(code -> all.stream().noneMatch(s -> s.code().equals(code)))
        .forEach(code -> all.add(new SupplementalStatement(code, List.of())));
    return all.stream().sorted(Comparator.comparing(SupplementalStatement::code)).toList();
  }

  /**
   * By convention from one fifth of what its own sheet says it of; not where the skin is classed.
   */
  private List<HazardIngredient> dryingSkin() {
    return isClassified(HazardClass.SKIN)
        ? List.of()
        : where(
            i ->
                i.hazards().supplements().contains("EUH066")
                    && Limit.reaches(
                        i.percent(), rules.bound(Bound.DRYNESS_CONVENTION_FROM_PER_CENT)));
  }

  /** From the share at which a mixture carries the statement of what it holds. */
  private List<HazardIngredient> poisoningByTheEye() {
    return containing("EUH070").stream()
        .filter(
            i -> Limit.reaches(i.percent(), rules.bound(Bound.EYE_CONTACT_STATEMENT_FROM_PER_CENT)))
        .toList();
  }

  /**
   * Statements of ingredients of which the law gives no share: only a test, or what is known of the
   * mixture itself, tells whether they hold for it.
   */
  List<SupplementalStatement> toCheck(List<SupplementalStatement> printed) {
    return mixture.ingredients().stream()
        .filter(i -> i.percent() > 0)
        .flatMap(i -> i.hazards().supplements().stream())
        .distinct()
        .sorted()
        .filter(code -> !NOT_TO_CHECK.contains(code) && !isSettled(code))
        .filter(code -> printed.stream().noneMatch(s -> s.code().equals(code)))
        .map(code -> new SupplementalStatement(code, containing(code)))
        .toList();
  }

  /** Stated not to hold, below the share that the law names, or at an end on the day. */
  private boolean isSettled(String code) {
    return mixture.withoutSupplements().contains(code)
        || code.equals("EUH070")
        || !Statements.holdsOn(code, rules.day());
  }

  /** What corrodes and can be breathed in, and what poisons by corroding the airways. */
  private List<HazardIngredient> corrodingAirways() {
    boolean corrosive = finding(HazardClass.SKIN).filter(HazardFinding::isCategoryOne).isPresent();
    if (corrosive && mixture.isBreathable() && !isClassified(HazardClass.ACUTE_INHALATION)) {
      return finding(HazardClass.SKIN).stream().flatMap(f -> f.contributors().stream()).toList();
    }
    return finding(HazardClass.ACUTE_INHALATION).stream()
        .flatMap(f -> f.contributors().stream())
        .filter(i -> i.hazards().supplements().contains("EUH071"))
        .toList();
  }

  private Optional<HazardFinding> finding(HazardClass c) {
    return findings.stream().filter(f -> f.hazardClass() == c).findFirst();
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
    return lead > 0 && Limit.reaches(lead, rules.bound(Bound.LEAD_STATEMENT_FROM_PER_CENT))
        ? holding
        : List.of();
  }

  private static double metalPercent(HazardIngredient i) {
    return i.percent() * i.hazards().metalShare().orElse(1);
  }

  private List<HazardIngredient> containing(String code) {
    return where(i -> i.hazards().supplements().contains(code));
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
    if (findings.stream().anyMatch(f -> f.isClassified() && f.hazardClass().isNotified())
        || !mixture.tested().isEmpty()) {
      notices.add(LegalNotice.NOTIFICATION);
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
