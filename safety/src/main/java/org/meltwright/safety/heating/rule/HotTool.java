// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import java.util.function.Predicate;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Tools hotter than the wax may be: irons at its hard ceiling, air at its flash point. */
final class HotTool {

  private HotTool() {}

  /** Finds air of a heat gun at the lowest flash point: the air is not the wax. */
  static RuleOutcome gun(HeatingPlan plan) {
    RuleOutcome outcome =
        plan.contents()
            .lowestFlashPoint()
            .map(flash -> gun(plan, flash))
            .orElse(RuleOutcome.NOTHING);
    return FlashMargin.withUnknown(plan, outcome);
  }

  private static RuleOutcome gun(HeatingPlan plan, TemperaturePoint flash) {
    return review(plan, Kind.HEAT_GUN, air -> Limit.reaches(air, flash), "outlet", "gun-outlet")
        .with("flash", flash);
  }

  /** Finds an iron or hot tool at the hard ceiling of the wax. */
  static RuleOutcome iron(HeatingPlan plan) {
    return review(
        plan, Kind.IRON, sole -> plan.table().hasBegun(Band.AT_CEILING, sole), "sole", "iron-sole");
  }

  /** What is not found is missing unless each tool of the kind states how hot it gets. */
  private static RuleOutcome review(
      HeatingPlan plan,
      Kind kind,
      Predicate<TemperaturePoint> tooHot,
      String name,
      String missing) {
    Optional<TemperaturePoint> hottest = Tools.hottest(plan, kind).filter(tooHot);
    if (hottest.isPresent()) {
      return RuleOutcome.found().with(name, hottest.get());
    }
    return Tools.areAllStated(plan, kind) ? RuleOutcome.NOTHING : RuleOutcome.notAssessed(missing);
  }
}
