// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.BindingTemperature.Basis;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.TemperaturePoint;

/**
 * A row of the one temperature table, held against the wax.
 *
 * <p>A row that an estimate does not reach stays unassessed: only a thermometer can rule it out.
 */
abstract class WaxTemperatureRule extends StandardRule {

  WaxTemperatureRule(RuleInfo info) {
    super(info);
  }

  /** Tells whether the row begins at or below a temperature. */
  abstract boolean begins(TemperaturePoint wax);

  /** Tells whether a worse row has taken over. */
  boolean isOvertaken(TemperaturePoint wax) {
    return false;
  }

  @Override
  public final RuleOutcome review(HeatingPlan plan) {
    return plan.bindingTemperature()
        .map(wax -> completed(plan, review(wax)))
        .orElseGet(() -> RuleOutcome.notAssessed("wax-temperature"));
  }

  /** Adds what else a row wants to know once it has begun. */
  RuleOutcome completed(HeatingPlan plan, RuleOutcome outcome) {
    return outcome;
  }

  private RuleOutcome review(BindingTemperature wax) {
    if (begins(wax.value())) {
      return RuleOutcome.foundIf(!isOvertaken(wax.value())).with("wax", wax.value());
    }
    return wax.isEstimated() ? RuleOutcome.notAssessed(missing(wax.basis())) : RuleOutcome.NOTHING;
  }

  static String missing(Basis basis) {
    return switch (basis) {
      case AT_LEAST_SET_POINT -> "overshoot";
      case PALETTE_SET_POINT_AND_OVERSHOOT, LIQUID_ON_PALETTE -> "surface-reading";
      default -> "liquid-reading";
    };
  }
}
