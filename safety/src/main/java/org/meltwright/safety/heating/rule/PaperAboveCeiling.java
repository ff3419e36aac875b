// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;

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
    Optional<PotFloor> floor = Paper.floor(plan);
    if (floor.isEmpty()) {
      return RuleOutcome.notAssessed("set-point");
    }
    if (Limit.reaches(floor.get().value(), TemperatureTable.HARD_CEILING)) {
      return RuleOutcome.found().with("floor", floor.get().value());
    }
    return floor.get().isKnown() ? RuleOutcome.NOTHING : RuleOutcome.notAssessed("overshoot");
  }
}
