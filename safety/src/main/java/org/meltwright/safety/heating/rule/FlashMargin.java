// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Wax within the margin below the lowest usable flash point of what can burn in it. */
final class FlashMargin {

  private FlashMargin() {}

  static RuleOutcome review(HeatingPlan plan) {
    return withUnknown(plan, WaxTemperature.review(plan, wax -> review(plan, wax)));
  }

  /** Adds what burns and has no usable flash point. */
  static RuleOutcome withUnknown(HeatingPlan plan, RuleOutcome outcome) {
    for (Material unknown : plan.contents().withoutFlashPoint()) {
      outcome = outcome.andNotAssessed(unknown, "flash-point");
    }
    return outcome;
  }

  private static RuleOutcome review(HeatingPlan plan, BindingTemperature wax) {
    Optional<TemperaturePoint> flash = plan.contents().lowestFlashPoint();
    if (flash.isEmpty()) {
      return RuleOutcome.NOTHING;
    }
    TemperaturePoint limit = plan.table().flashLimit(flash.get());
    RuleOutcome outcome =
        RuleOutcome.foundIf(Limit.reaches(wax.value(), limit))
            .with("wax", wax.value())
            .with("flash", flash.get())
            .with("limit", limit)
            .at(Figure.FLASH_MARGIN);
    return WaxTemperature.ruledOut(plan, outcome, wax);
  }
}
