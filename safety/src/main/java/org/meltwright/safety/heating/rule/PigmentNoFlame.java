// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;

/** A pigment that is kept from flame, under a torch. */
final class PigmentNoFlame extends PigmentRule {

  PigmentNoFlame() {
    super(caution("pigment-no-flame", Topic.PIGMENT, Source.COMMON_PRACTICE));
  }

  @Override
  boolean applies(HeatingPlan plan) {
    return plan.uses(Kind.TORCH);
  }

  @Override
  boolean isMeant(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.FLAME_FREE;
  }
}
