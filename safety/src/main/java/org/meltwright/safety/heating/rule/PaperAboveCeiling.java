// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Paper that holds wax on a plate at the hard ceiling or above. */
final class PaperAboveCeiling extends StandardRule {

  PaperAboveCeiling() {
    super(caution("paper-liner-above-ceiling", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (Paper.isUnknown(plan)) {
      return RuleOutcome.notAssessed("vessel");
    }
    if (!Paper.holdsTheWax(plan)) {
      return RuleOutcome.NOTHING;
    }
    Optional<PotFloor> floor = plan.potFloor();
    Optional<TemperaturePoint> surface =
        floor
            .map(PotFloor::value)
            .or(() -> plan.bindingTemperature().map(BindingTemperature::value));
    if (surface.filter(t -> Limit.reaches(t, TemperatureTable.HARD_CEILING)).isPresent()) {
      return RuleOutcome.found().with("floor", surface.get());
    }
    if (surface.isEmpty()) {
      return RuleOutcome.notAssessed("set-point");
    }
    boolean known = floor.map(PotFloor::isKnown).orElse(true);
    return known ? RuleOutcome.NOTHING : RuleOutcome.notAssessed("overshoot");
  }
}
