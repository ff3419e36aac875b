// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A vessel of plastic. */
final class PlasticVessel extends StandardRule {

  PlasticVessel() {
    super(warning("plastic-vessel", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.vessel()
        .map(PlasticVessel::review)
        .orElseGet(() -> RuleOutcome.notAssessed("vessel"));
  }

  private static RuleOutcome review(Vessel vessel) {
    return vessel.material() == VesselMaterial.UNKNOWN
        ? RuleOutcome.notAssessed("vessel-material")
        : RuleOutcome.foundIf(vessel.material() == VesselMaterial.PLASTIC);
  }
}
