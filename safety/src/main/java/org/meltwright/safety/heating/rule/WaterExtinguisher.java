// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A water extinguisher where one for class B should hang. */
final class WaterExtinguisher extends StandardRule {

  WaterExtinguisher() {
    super(warning("water-extinguisher", Topic.PLACE, Sources.WAX_FIRES));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.has(Circumstance.WATER_EXTINGUISHER));
  }
}
