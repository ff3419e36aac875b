// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Air of a heat gun hotter than the lowest flash point: the air is not the wax. */
final class HeatGunOutlet extends StandardRule {

  HeatGunOutlet() {
    super(caution("heat-gun-outlet", Topic.TOOL, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (!plan.uses(Kind.HEAT_GUN)) {
      return RuleOutcome.NOTHING;
    }
    FlashPoints flash = FlashPoints.of(plan.mix());
    RuleOutcome outcome =
        flash.lowest().map(point -> review(plan, point)).orElse(RuleOutcome.NOTHING);
    for (Material unknown : flash.unknown()) {
      outcome = outcome.andNotAssessed(unknown, "flash-point");
    }
    return outcome;
  }

  private static RuleOutcome review(HeatingPlan plan, TemperaturePoint flash) {
    Optional<TemperaturePoint> outlet = Tools.hottest(plan, Kind.HEAT_GUN);
    if (outlet.filter(t -> Limit.reaches(t, flash)).isPresent()) {
      return RuleOutcome.found().with("outlet", outlet.get()).with("flash", flash);
    }
    return Tools.areAllStated(plan, Kind.HEAT_GUN)
        ? RuleOutcome.NOTHING
        : RuleOutcome.notAssessed("gun-outlet");
  }
}
