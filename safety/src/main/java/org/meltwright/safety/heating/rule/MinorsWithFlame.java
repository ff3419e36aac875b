// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Anyone under 18 where a torch is used. */
final class MinorsWithFlame extends StandardRule {

  MinorsWithFlame() {
    super(danger("minors-with-flame", Topic.PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (!plan.uses(Kind.TORCH)) {
      return RuleOutcome.NOTHING;
    }
    return plan.people()
        .map(People::hasMinors)
        .map(RuleOutcome::foundIf)
        .orElseGet(() -> RuleOutcome.notAssessed("people"));
  }
}
