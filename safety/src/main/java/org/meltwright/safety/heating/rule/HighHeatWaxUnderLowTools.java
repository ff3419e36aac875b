// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** Hard medium worked with an iron or a lamp only. */
final class HighHeatWaxUnderLowTools extends StandardRule {

  /** Medium of 1 part resin to 8 parts wax, or more resin, is for high heat. */
  private static final double HIGH_HEAT_RESIN = 1.0 / 9;

  HighHeatWaxUnderLowTools() {
    super(notice("high-heat-wax-under-low-tools", Topic.TOOL, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean low = plan.uses(Kind.IRON) || plan.uses(Kind.LAMP);
    boolean high = plan.uses(Kind.TORCH) || plan.uses(Kind.HEAT_GUN);
    boolean hard = Limit.reaches(Mix.mostResinInMedium(plan.mix()), HIGH_HEAT_RESIN);
    return RuleOutcome.foundIf(low && !high && hard);
  }
}
