// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.RuleInfo;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.TemperaturePoint;

/** A limit of the wetted pot floor; an overshoot that is not stated is never taken as zero. */
abstract class PotFloorRule extends StandardRule {

  PotFloorRule(RuleInfo info) {
    super(info);
  }

  /** Tells whether the limit begins at or below a temperature. */
  abstract boolean begins(TemperaturePoint floor);

  /** Tells whether a worse limit has taken over. */
  boolean isOvertaken(TemperaturePoint floor) {
    return false;
  }

  @Override
  public final RuleOutcome review(HeatingPlan plan) {
    if (plan.heat().isEmpty()) {
      return RuleOutcome.notAssessed("heat-source");
    }
    if (plan.heat().get().kind() == Kind.HEATED_PALETTE) {
      return RuleOutcome.NOTHING;
    }
    return plan.potFloor().map(this::review).orElseGet(() -> RuleOutcome.notAssessed("set-point"));
  }

  private RuleOutcome review(PotFloor floor) {
    if (begins(floor.value())) {
      return RuleOutcome.foundIf(!isOvertaken(floor.value())).with("floor", floor.value());
    }
    return floor.isKnown() ? RuleOutcome.NOTHING : RuleOutcome.notAssessed("overshoot");
  }
}
