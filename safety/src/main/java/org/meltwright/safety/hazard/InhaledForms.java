// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** In which form a substance is inhaled: as its sheet says, else as it can be in the air. */
final class InhaledForms {

  private static final Set<UptakeForm> NOT_STATED = EnumSet.of(UptakeForm.VAPOUR, UptakeForm.DUST);

  private final RuleSet rules;

  InhaledForms(RuleSet rules) {
    this.rules = rules;
  }

  /** The forms for which a category counts; both vapour and dust where nothing tells which. */
  Set<UptakeForm> of(HazardIngredient i, HazardCategory category) {
    Set<UptakeForm> stated = stated(category.details());
    if (stated.isEmpty()) {
      stated = i.hazards().inhaledAs();
    }
    if (stated.isEmpty() && i.pigment().isPresent()) {
      return EnumSet.of(UptakeForm.DUST);
    }
    return stated.isEmpty() ? byVapour(i.hazards(), category.category()) : stated;
  }

  private static Set<UptakeForm> stated(List<String> details) {
    Set<UptakeForm> forms = EnumSet.noneOf(UptakeForm.class);
    details.stream().map(UptakeForm::inhaled).flatMap(Optional::stream).forEach(forms::add);
    return forms;
  }

  /** Vapour if the air can hold as much of it as the category's estimate, else mist. */
  private Set<UptakeForm> byVapour(SubstanceHazards s, Category category) {
    OptionalDouble held = s.saturatedVapourMilligramsPerLitre();
    if (held.isEmpty()) {
      return NOT_STATED;
    }
    boolean enough =
        rules.acuteLimits(UptakeForm.VAPOUR).stream()
            .filter(l -> l.category() == category)
            .anyMatch(l -> held.getAsDouble() >= l.pointEstimate());
    return EnumSet.of(enough ? UptakeForm.VAPOUR : UptakeForm.DUST);
  }

  /** Whether nothing tells in which form it is inhaled. */
  boolean isOpen(HazardIngredient i) {
    return i.hazards().categories().stream()
        .filter(c -> c.hazardClass() == HazardClass.ACUTE_INHALATION)
        .anyMatch(c -> of(i, c).equals(NOT_STATED) && i.hazards().inhaledAs().isEmpty());
  }
}
