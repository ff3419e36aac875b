// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** An iron or hot tool at the hard ceiling of the wax or above. */
final class IronTooHot extends StandardRule {

  IronTooHot() {
    super(caution("iron-too-hot", Topic.TOOL, Sources.IRON_DOTS));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (!plan.uses(Kind.IRON)) {
      return RuleOutcome.NOTHING;
    }
    Optional<TemperaturePoint> sole = Tools.hottest(plan, Kind.IRON);
    if (sole.filter(t -> Limit.reaches(t, TemperatureTable.HARD_CEILING)).isPresent()) {
      return RuleOutcome.found().with("sole", sole.get());
    }
    return Tools.areAllStated(plan, Kind.IRON)
        ? RuleOutcome.NOTHING
        : RuleOutcome.notAssessed("iron-sole");
  }
}
