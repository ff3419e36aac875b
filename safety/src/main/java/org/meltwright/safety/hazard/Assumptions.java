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
      case WORKPLACE_LIMIT_REMEMBERED -> i -> sheetIsDue && isLimitOfTableAlone(i, rules);
      case MISSING_FACTOR -> i -> lacksFactor(i.hazards());
      case MINIMUM_CATEGORY -> i -> any(i, HazardCategory::minimum);
      case UNDIVIDED_CATEGORY -> i -> any(i, HazardCategory::undivided);
      case METAL_SHARE_UNKNOWN ->
          i -> hasNote(i, "1"::equals) && i.hazards().metalShare().isEmpty();
      case PART_OF_COMPOUND -> i -> hasNote(i, "X"::equals);
      case NOTE_NOT_LIFTED -> i -> hasNote(i, note -> ConditionNote.of(note).isPresent());
      case DATA_SHEET_OVERRIDES ->
          i -> i.overridden().isPresent() && !SheetAgainstEntry.isMilder(i, rules);
      case DATA_SHEET_MILDER -> i -> SheetAgainstEntry.isMilder(i, rules);
      case DRYNESS_BELOW_CONVENTION -> i -> driesTooLittle(i, rules);
    };
  }

  private static boolean any(HazardIngredient i, Predicate<HazardCategory> test) {
    return i.hazards().categories().stream().anyMatch(test);
  }

  private static boolean hasNote(HazardIngredient i, Predicate<String> test) {
    return i.hazards().notes().stream().anyMatch(test);
  }

  private static boolean isLimitOfTableAlone(HazardIngredient i, RuleSet rules) {
    return WorkplaceLimits.remembered(i, rules.day()) && !WorkplaceLimits.stated(i);
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
