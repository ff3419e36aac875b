// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;

/** A pigment that is melted only, under a torch or a heat gun. */
final class PigmentMeltOnly extends PigmentRule {

  PigmentMeltOnly() {
    super(warning("pigment-melt-only", Topic.PIGMENT, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  boolean applies(HeatingPlan plan) {
    return plan.uses(Kind.TORCH) || plan.uses(Kind.HEAT_GUN);
  }

  @Override
  boolean isMeant(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.MELTED_ONLY || isNeverHeatedWithoutARule(pigment);
  }

  /** Chromates and what is radioactive: the metals with a rule of their own are told there. */
  private static boolean isNeverHeatedWithoutARule(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.NEVER_HEATED
        && Stream.of("Pb", "Hg", "As").noneMatch(pigment::holds);
  }
}
