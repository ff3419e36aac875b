// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleOutcome;

/** Children of 12 or under where a toxic pigment is used. */
final class ChildrenToxicPigment {

  private ChildrenToxicPigment() {}

  static RuleOutcome review(HeatingPlan plan) {
    List<Material> toxic = Pigments.holding(plan, Pigments::hasToxicMetal);
    RuleOutcome outcome =
        toxic.isEmpty() ? RuleOutcome.NOTHING : ofAge(plan).with("materials", toxic);
    return Pigments.withUnknown(plan, outcome);
  }

  private static RuleOutcome ofAge(HeatingPlan plan) {
    if (plan.people().isEmpty()) {
      return RuleOutcome.notAsked("people");
    }
    People people = plan.people().get();
    if (people.youngest().isEmpty()) {
      return people.hasMinors() ? RuleOutcome.notAssessed("age") : RuleOutcome.NOTHING;
    }
    return RuleOutcome.foundIf(people.youngest().getAsInt() <= 12);
  }
}
