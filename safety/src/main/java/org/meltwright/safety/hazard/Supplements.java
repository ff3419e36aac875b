// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.meltwright.units.Limit;

/** Statements, notices and duties that follow from single ingredients. */
final class Supplements {

  private static final List<List<String>> ROWS = TextTable.rows("supplements.txt");

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
    rows("by-content").map(row -> row.get(1)).forEach(code -> add(all, code, containing(code)));
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
        .filter(code -> !isSettled(code))
        .filter(code -> printed.stream().noneMatch(s -> s.code().equals(code)))
        .map(code -> new SupplementalStatement(code, containing(code)))
        .toList();
  }

  /** Stated not to hold, below the share that the law names, or at an end on the day. */
  private boolean isSettled(String code) {
    return mixture.withoutSupplements().contains(code)
        || rows("not-to-check").anyMatch(row -> row.get(1).equals(code))
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
    rows("notice")
        .filter(row -> TextTable.items(row.get(2), ",").stream().anyMatch(this::holds))
        .map(row -> LegalNotice.find(row.get(1)).orElseThrow())
        .forEach(notices::add);
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

  private Stream<List<String>> rows(String kind) {
    return ROWS.stream()
        .filter(row -> row.get(0).equals(kind))
        .filter(row -> Days.of(row).holdOn(rules.day()));
  }

  /** Whether an ingredient has a number, or is a pigment with a metal. */
  private boolean holds(String what) {
    return !where(
            i ->
                i.hazards().casNumbers().contains(what)
                    || i.pigment().filter(p -> p.holds(what)).isPresent())
        .isEmpty();
  }

  private List<HazardIngredient> where(Predicate<HazardIngredient> test) {
    return mixture.ingredients().stream().filter(i -> i.percent() > 0).filter(test).toList();
  }
}
