// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Open solvent in the room while wax is hot. */
final class SolventNearHeat extends StandardRule {

  SolventNearHeat() {
    super(
        warning("solvent-near-heat", Topic.PLACE, Sources.STATE_ENCAUSTICS).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.has(Circumstance.OPEN_SOLVENT_NEAR));
  }
}
