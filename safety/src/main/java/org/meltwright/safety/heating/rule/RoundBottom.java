// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A vessel with a round or uneven bottom. */
final class RoundBottom extends StandardRule {

  RoundBottom() {
    super(caution("round-bottom", Topic.VESSEL, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.vessel()
        .map(RoundBottom::review)
        .orElseGet(() -> RuleOutcome.notAssessed("vessel"));
  }

  private static RuleOutcome review(Vessel vessel) {
    return vessel.bottom() == Vessel.Bottom.UNKNOWN
        ? RuleOutcome.notAssessed("bottom")
        : RuleOutcome.foundIf(vessel.bottom() == Vessel.Bottom.ROUND);
  }
}
