// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.meltwright.units.Limit;

/** Finds what a classification takes for granted. */
final class Assumptions {

  private Assumptions() {}

  static List<Assumption> of(HazardMixture mixture, RuleSet rules, boolean sheetIsDue) {
    List<Assumption> all = new ArrayList<>();
    for (Assumption.Kind kind : Assumption.Kind.values()) {
      List<HazardIngredient> who =
          mixture.ingredients().stream()
              .filter(i -> i.percent() > 0)
              .filter(test(kind, rules, sheetIsDue))
              .toList();
      if (!who.isEmpty()) {
        all.add(new Assumption(kind, who));
      }
    }
    return List.copyOf(all);
  }

  private static Predicate<HazardIngredient> test(
      Assumption.Kind kind, RuleSet rules, boolean sheetIsDue) {
    return switch (kind) {
      case PRESUMED_NONE -> i -> i.hazards().evidence() == HazardEvidence.PRESUMED_NONE;
      case FORM_NOT_STATED -> new InhaledForms(rules)::isOpen;
      case REST_NOT_CLASSIFIED -> i -> i.hazards().evidence() == HazardEvidence.REST_PRESUMED_NONE;
      case WORKPLACE_LIMIT_REMEMBERED ->
          i ->
              sheetIsDue
                  && WorkplaceLimits.remembered(i, rules.day())
                  && !WorkplaceLimits.stated(i);
      case MISSING_FACTOR -> i -> lacksFactor(i.hazards());
      case MINIMUM_CATEGORY ->
          i -> i.hazards().categories().stream().anyMatch(HazardCategory::minimum);
      case UNDIVIDED_CATEGORY ->
          i -> i.hazards().categories().stream().anyMatch(HazardCategory::undivided);
      case METAL_SHARE_UNKNOWN ->
          i -> i.hazards().notes().contains("1") && i.hazards().metalShare().isEmpty();
      case PART_OF_COMPOUND -> i -> i.hazards().notes().contains("X");
      case NOTE_NOT_LIFTED ->
          i -> i.hazards().notes().stream().anyMatch(n -> ConditionNote.of(n).isPresent());
      case DATA_SHEET_OVERRIDES ->
          i -> i.overridden().isPresent() && !SheetAgainstEntry.isMilder(i, rules);
      case DATA_SHEET_MILDER -> i -> SheetAgainstEntry.isMilder(i, rules);
      case DRYNESS_BELOW_CONVENTION -> i -> driesTooLittle(i, rules);
    };
  }

  private static boolean lacksFactor(SubstanceHazards s) {
    return s.categories().stream().anyMatch(c -> lacksFactor(s, c));
  }

  private static boolean lacksFactor(SubstanceHazards s, HazardCategory c) {
    return switch (c.hazardClass()) {
      case AQUATIC_ACUTE -> s.acuteFactor().isEmpty();
      case AQUATIC_CHRONIC -> c.category() == Category.ONE && s.chronicFactor().isEmpty();
      default -> false;
    };
  }

  private static boolean driesTooLittle(HazardIngredient i, RuleSet rules) {
    return rules.hasLabels()
        && i.hazards().supplements().contains("EUH066")
        && !Limit.reaches(i.percent(), rules.bound(Bound.DRYNESS_CONVENTION_FROM_PER_CENT));
  }
}
