// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Pigment handled as dry powder. */
final class DryPowder extends StandardRule {

  DryPowder() {
    super(notice("dry-powder", Topic.PIGMENT, Sources.STATE_ENCAUSTICS));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.has(Circumstance.DRY_POWDER));
  }
}
