// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingLimits.Figure;
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
    return review(
            plan,
            Kind.HEAT_GUN,
            air -> Limit.reaches(air, flash) && !Limit.reaches(air, LIGHTS_PAPER),
            "outlet",
            "gun-outlet")
        .with("flash", flash);
  }

  /** Air as hot as this lights paper, cloth and waxed wood within seconds; common practice. */
  private static final TemperaturePoint LIGHTS_PAPER = TemperaturePoint.ofCelsius(450);

  /** Finds air of a heat gun that needs no spark to light what it meets. */
  static RuleOutcome gunAtFull(HeatingPlan plan) {
    return review(
        plan, Kind.HEAT_GUN, air -> Limit.reaches(air, LIGHTS_PAPER), "outlet", "gun-outlet");
  }

  /** Finds an iron within the margin below the lowest flash point, and not at it. */
  static RuleOutcome ironWithinMargin(HeatingPlan plan) {
    return iron(
            plan,
            (sole, flash) ->
                Limit.reaches(sole, plan.table().flashLimit(flash)) && !Limit.reaches(sole, flash))
        .at(Figure.FLASH_MARGIN);
  }

  /** Finds an iron at the lowest flash point: vapour over its sole lights from a spark. */
  static RuleOutcome ironAtFlashPoint(HeatingPlan plan) {
    return iron(plan, Limit::reaches);
  }

  private static RuleOutcome iron(
      HeatingPlan plan, BiPredicate<TemperaturePoint, TemperaturePoint> tooHot) {
    return plan.contents()
        .lowestFlashPoint()
        .map(
            flash ->
                review(plan, Kind.IRON, sole -> tooHot.test(sole, flash), "sole", "iron-sole")
                    .with("flash", flash))
        .map(outcome -> FlashMargin.withUnknown(plan, outcome))
        .orElseGet(() -> FlashMargin.withUnknown(plan, RuleOutcome.NOTHING));
  }

  /** Finds an iron or hot tool at the hard ceiling of the wax, up to the flash margin. */
  static RuleOutcome iron(HeatingPlan plan) {
    RuleOutcome worse = ironWithinMargin(plan);
    return worse.isFound() || ironAtFlashPoint(plan).isFound()
        ? RuleOutcome.NOTHING
        : hotIron(plan);
  }

  private static RuleOutcome hotIron(HeatingPlan plan) {
    return review(
            plan,
            Kind.IRON,
            sole -> plan.table().hasBegun(Band.AT_CEILING, sole),
            "sole",
            "iron-sole")
        .at(Figure.HARD_CEILING);
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
