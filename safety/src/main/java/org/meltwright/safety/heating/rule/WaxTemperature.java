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
        .orElseGet(() -> RuleOutcome.notAssessed(missing(plan)));
  }

  /** Whether a thermometer tells it; a reading that only counts upwards does not. */
  static boolean isMeasured(HeatingPlan plan) {
    return plan.bindingTemperature().filter(BindingTemperature::isMeasured).isPresent();
  }

  /**
   * What an estimate does not find stays unassessed; where nobody says what heats, it may be a
   * palette, of which the liquid does not tell the hottest.
   */
  static RuleOutcome ruledOut(HeatingPlan plan, RuleOutcome outcome, BindingTemperature wax) {
    if (outcome.isFound()) {
      return outcome;
    } else if (wax.isEstimated()) {
      return outcome.andNotAssessed(missing(plan, wax.basis()));
    }
    return plan.heat().isPresent() ? outcome : outcome.andNotAsked("heat-source");
  }

  private static String missing(HeatingPlan plan) {
    return plan.heat().isPresent() ? "liquid-reading" : "wax-temperature";
  }

  private static String missing(HeatingPlan plan, BindingTemperature.Basis basis) {
    return switch (basis) {
      case AT_LEAST_SET_POINT -> "overshoot";
      case AT_LEAST_SURFACE -> "surface-method";
      case PALETTE_SET_POINT_AND_OVERSHOOT, LIQUID_ON_PALETTE ->
          plan.surfaceReading().isPresent() ? "surface-method" : "surface-reading";
      default -> "liquid-reading";
    };
  }
}
