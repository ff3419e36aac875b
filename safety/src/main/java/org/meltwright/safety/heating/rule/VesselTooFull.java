// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.batch.VesselRoom;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** A vessel above two thirds full, hot. */
final class VesselTooFull extends StandardRule {

  VesselTooFull() {
    super(caution("vessel-too-full", Topic.VESSEL, VesselRoom.WORKING_FILL_SOURCE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (plan.fillLevel().isEmpty()) {
      return RuleOutcome.notAssessed("fill-level");
    }
    double level = plan.fillLevel().getAsDouble();
    boolean found =
        Limit.exceeds(level, VesselRoom.WORKING_FILL.value()) && !Limit.exceeds(level, 1);
    return RuleOutcome.foundIf(found).with("percent", level * 100);
  }
}
