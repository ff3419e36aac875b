// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo;
import org.meltwright.safety.heating.RuleOutcome;

/** A rule on the identity of pigments; one that cannot be told stays unassessed. */
abstract class PigmentRule extends StandardRule {

  PigmentRule(RuleInfo info) {
    super(info);
  }

  /** Tells whether the plan does to its pigments what the rule is about. */
  abstract boolean applies(HeatingPlan plan);

  /** Tells whether the rule is about a pigment. */
  abstract boolean isMeant(PigmentHazard pigment);

  @Override
  public final RuleOutcome review(HeatingPlan plan) {
    if (!applies(plan)) {
      return RuleOutcome.NOTHING;
    }
    List<Material> found = Pigments.holding(plan.mix(), this::isMeant);
    RuleOutcome outcome = RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
    for (Material unknown : Pigments.unknownIn(plan.mix())) {
      outcome = outcome.andNotAssessed(unknown, "pigment");
    }
    return outcome;
  }
}
