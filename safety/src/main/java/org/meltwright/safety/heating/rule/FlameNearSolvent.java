// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A torch or a heat gun near open solvent. */
final class FlameNearSolvent extends StandardRule {

  FlameNearSolvent() {
    super(danger("flame-near-solvent", Topic.TOOL, Source.COMMON_PRACTICE).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean hot = plan.uses(Kind.TORCH) || plan.uses(Kind.HEAT_GUN);
    return RuleOutcome.foundIf(hot && plan.has(Circumstance.OPEN_SOLVENT_NEAR));
  }
}
