// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;

/** A pigment of a toxic metal handled as dry powder. */
final class ToxicPowder extends PigmentRule {

  ToxicPowder() {
    super(warning("toxic-powder", Topic.PIGMENT, Sources.STATE_ENCAUSTICS));
  }

  @Override
  boolean applies(HeatingPlan plan) {
    return plan.has(Circumstance.DRY_POWDER);
  }

  @Override
  boolean isMeant(PigmentHazard pigment) {
    return Pigments.hasToxicMetal(pigment);
  }
}
