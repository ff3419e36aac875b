// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Anyone under 18 where a heat gun is used. */
final class MinorsHighHeat extends StandardRule {

  MinorsHighHeat() {
    super(warning("minors-high-heat", Topic.PLACE, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (!plan.uses(Kind.HEAT_GUN)) {
      return RuleOutcome.NOTHING;
    }
    return plan.people()
        .map(People::hasMinors)
        .map(RuleOutcome::foundIf)
        .orElseGet(() -> RuleOutcome.notAssessed("people"));
  }
}
