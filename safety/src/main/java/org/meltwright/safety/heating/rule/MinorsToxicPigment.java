// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;

/** Somebody under 18 where a toxic pigment is used. */
final class MinorsToxicPigment {

  private MinorsToxicPigment() {}

  static RuleOutcome review(HeatingPlan plan) {
    List<Material> toxic = Pigments.holding(plan, Pigments::hasToxicMetal);
    RuleOutcome outcome =
        toxic.isEmpty() ? RuleOutcome.NOTHING : ofPeople(plan).with("materials", toxic);
    return Pigments.withUnknown(plan, outcome);
  }

  private static RuleOutcome ofPeople(HeatingPlan plan) {
    if (plan.people().isEmpty()) {
      return RuleOutcome.notAsked("people");
    }
    return RuleOutcome.foundIf(plan.people().get().hasMinors());
  }
}
