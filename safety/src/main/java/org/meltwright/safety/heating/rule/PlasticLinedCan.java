// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A vessel with a plastic or lacquer film inside, as in food cans. */
final class PlasticLinedCan extends StandardRule {

  PlasticLinedCan() {
    super(warning("plastic-lined-can", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.vessel()
        .map(PlasticLinedCan::review)
        .orElseGet(() -> RuleOutcome.notAssessed("vessel"));
  }

  private static RuleOutcome review(Vessel vessel) {
    return switch (vessel.lining()) {
      case PLASTIC -> RuleOutcome.found();
      case UNKNOWN -> RuleOutcome.notAssessed("lining");
      default -> RuleOutcome.NOTHING;
    };
  }
}
