// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A fusing lamp: distance and movement. */
final class LampDistance extends StandardRule {

  LampDistance() {
    super(notice("lamp-distance", Topic.TOOL, Sources.STUDIO_GUIDE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.uses(Kind.LAMP));
  }
}
