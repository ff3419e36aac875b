// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** A vessel that the hot melt does not fit into. */
final class VesselOverflows extends StandardRule {

  VesselOverflows() {
    super(danger("vessel-overflows", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (plan.fillLevel().isEmpty()) {
      return RuleOutcome.notAssessed("fill-level");
    }
    double level = plan.fillLevel().getAsDouble();
    return RuleOutcome.foundIf(Limit.exceeds(level, 1)).with("percent", level * 100);
  }
}
