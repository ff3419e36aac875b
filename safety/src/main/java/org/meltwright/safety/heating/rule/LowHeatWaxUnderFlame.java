// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** Plain or low-heat wax under a torch or a heat gun. */
final class LowHeatWaxUnderFlame extends StandardRule {

  /** Medium of 1 part resin to 10 parts wax, or less resin, is for low heat. */
  static final double LOW_HEAT_RESIN = 1.0 / 11;

  LowHeatWaxUnderFlame() {
    super(caution("low-heat-wax-under-flame", Topic.TOOL, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean hot = plan.uses(Kind.TORCH) || plan.uses(Kind.HEAT_GUN);
    boolean lowHeat = !Limit.exceeds(Mix.leastResinInMedium(plan.mix()), LOW_HEAT_RESIN);
    return RuleOutcome.foundIf(hot && lowHeat);
  }
}
