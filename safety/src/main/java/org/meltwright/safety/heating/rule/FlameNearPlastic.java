// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A torch or a heat gun near plastic or over a plastic collage. */
final class FlameNearPlastic extends StandardRule {

  FlameNearPlastic() {
    super(warning("flame-near-plastic", Topic.TOOL, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean hot = plan.uses(Kind.TORCH) || plan.uses(Kind.HEAT_GUN);
    return RuleOutcome.foundIf(hot && plan.has(Circumstance.PLASTIC_NEAR));
  }
}
