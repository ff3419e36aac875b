// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.UPPER_LIMIT;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.safety.heating.TemperatureTable.FloorBand;

/** Upper limits: the one temperature table, held against the wax and the floor of the pot. */
final class TemperatureRules {

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              notice("darkening", UPPER_LIMIT, Sources.BEESWAX_RECORD),
              plan -> withHours(plan, wax(plan, Band.DARKENING))),
          new Rule(
              caution("above-target", UPPER_LIMIT, Source.COMMON_PRACTICE),
              plan -> wax(plan, Band.ABOVE_TARGET, Band.AT_CEILING)),
          new Rule(
              danger("hard-ceiling", UPPER_LIMIT, Sources.COUNTY_ENCAUSTIC).asBlocking().asFixed(),
              plan -> wax(plan, Band.AT_CEILING)),
          new Rule(
              danger("fume", UPPER_LIMIT, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              plan -> wax(plan, Band.FUME)),
          new Rule(
              danger("flash-margin", UPPER_LIMIT, Sources.MATERIAL_FIGURES).asBlocking(),
              FlashMargin::review),
          new Rule(
              caution("pot-floor", UPPER_LIMIT, Source.COMMON_PRACTICE),
              plan -> floor(plan, FloorBand.AT_CEILING)),
          new Rule(
              danger("pot-floor-hot", UPPER_LIMIT, Source.COMMON_PRACTICE).asBlocking(),
              plan -> floor(plan, FloorBand.TOO_HOT)),
          new Rule(
              caution("estimated-temperature", UPPER_LIMIT, Source.COMMON_PRACTICE),
              TemperatureRules::estimated),
          new Rule(
              warning("missing-temperature", UPPER_LIMIT, Source.COMMON_PRACTICE).asFixed(),
              whether(plan -> plan.bindingTemperature().isEmpty())),
          new Rule(
              notice("thermometer-tolerance", UPPER_LIMIT, Source.COMMON_PRACTICE),
              ThermometerTolerance::review),
          new Rule(
              warning("ceiling-within-tolerance", UPPER_LIMIT, Source.COMMON_PRACTICE),
              ThermometerTolerance::reviewCeiling));

  private TemperatureRules() {}

  /** Finds wax in a band or beyond it. */
  private static RuleOutcome wax(HeatingPlan plan, Band band) {
    return WaxTemperature.review(
        plan,
        wax ->
            plan.table().hasBegun(band, wax.value())
                ? RuleOutcome.found().with("wax", wax.value())
                : WaxTemperature.ruledOut(RuleOutcome.NOTHING, wax));
  }

  /** Finds wax in a band until a worse one takes over. */
  private static RuleOutcome wax(HeatingPlan plan, Band band, Band worse) {
    boolean overtaken =
        plan.bindingTemperature()
            .filter(wax -> plan.table().hasBegun(worse, wax.value()))
            .isPresent();
    return overtaken ? RuleOutcome.NOTHING : wax(plan, band);
  }

  private static RuleOutcome withHours(HeatingPlan plan, RuleOutcome outcome) {
    if (!outcome.isFound()) {
      return outcome;
    }
    return plan.hoursHeld().isPresent()
        ? outcome.with("hours", plan.hoursHeld().getAsDouble())
        : outcome.andNotAssessed("hours-held");
  }

  /** Finds the floor in a band; an overshoot that is not stated is never taken as zero. */
  private static RuleOutcome floor(HeatingPlan plan, FloorBand band) {
    if (plan.heat().isEmpty()) {
      return RuleOutcome.notAssessed("heat-source");
    }
    if (plan.heat().get().kind() == Kind.HEATED_PALETTE) {
      return RuleOutcome.NOTHING;
    }
    return plan.potFloor()
        .map(floor -> floor(plan, band, floor))
        .orElseGet(() -> RuleOutcome.notAssessed("set-point"));
  }

  /** What may yet be hotter stays unassessed, unless a worse band has taken over. */
  private static RuleOutcome floor(HeatingPlan plan, FloorBand band, PotFloor floor) {
    FloorBand reached = plan.table().floorBand(floor.value());
    if (reached.compareTo(band) >= 0) {
      return RuleOutcome.foundIf(reached == band).with("floor", floor.value());
    }
    return floor.isKnown() ? RuleOutcome.NOTHING : RuleOutcome.notAssessed("overshoot");
  }

  private static RuleOutcome estimated(HeatingPlan plan) {
    return plan.bindingTemperature()
        .filter(BindingTemperature::isEstimated)
        .map(wax -> RuleOutcome.found().with("wax", wax.value()))
        .orElse(RuleOutcome.NOTHING);
  }
}
