// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.Lining;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A fluoropolymer coating on a heat that a thermostat does not hold. */
final class NonStick extends StandardRule {

  NonStick() {
    super(warning("non-stick-open-heat", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean coated = plan.vessel().filter(v -> v.lining() == Lining.NON_STICK).isPresent();
    boolean openHeat = plan.uses(Kind.TORCH) || Tools.isOpenCoilOrGas(plan);
    if (openHeat && plan.vessel().isEmpty()) {
      return RuleOutcome.notAssessed("vessel");
    }
    return RuleOutcome.foundIf(coated && openHeat);
  }
}
