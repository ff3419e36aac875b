// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.function.Function;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;

/** How hot the wax is, which must be known; only a thermometer can rule out what is hotter. */
final class WaxTemperature {

  private WaxTemperature() {}

  static RuleOutcome review(HeatingPlan plan, Function<BindingTemperature, RuleOutcome> check) {
    return plan.bindingTemperature()
        .map(check)
        .orElseGet(() -> RuleOutcome.notAssessed("wax-temperature"));
  }

  /** What an estimate does not find stays unassessed. */
  static RuleOutcome ruledOut(RuleOutcome outcome, BindingTemperature wax) {
    return outcome.isFound() || wax.isMeasured()
        ? outcome
        : outcome.andNotAssessed(missing(wax.basis()));
  }

  private static String missing(BindingTemperature.Basis basis) {
    return switch (basis) {
      case AT_LEAST_SET_POINT -> "overshoot";
      case PALETTE_SET_POINT_AND_OVERSHOOT, LIQUID_ON_PALETTE -> "surface-reading";
      default -> "liquid-reading";
    };
  }
}
