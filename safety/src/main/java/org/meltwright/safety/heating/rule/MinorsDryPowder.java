// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Anyone under 18 where pigment is handled as dry powder. */
final class MinorsDryPowder extends StandardRule {

  MinorsDryPowder() {
    super(warning("minors-dry-powder", Topic.PLACE, Sources.SCHOOL_GUIDELINES).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (!plan.has(Circumstance.DRY_POWDER)) {
      return RuleOutcome.NOTHING;
    }
    return plan.people()
        .map(People::hasMinors)
        .map(RuleOutcome::foundIf)
        .orElseGet(() -> RuleOutcome.notAssessed("people"));
  }
}
