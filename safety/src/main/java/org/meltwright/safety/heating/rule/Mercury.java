// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;

/** A pigment of mercury: never heated. */
final class Mercury extends PigmentRule {

  Mercury() {
    super(danger("mercury", Topic.PIGMENT, Sources.STUDIO_GUIDE).asBlocking().asFixed());
  }

  @Override
  boolean applies(HeatingPlan plan) {
    return true;
  }

  @Override
  boolean isMeant(PigmentHazard pigment) {
    return pigment.holds("Hg");
  }
}
