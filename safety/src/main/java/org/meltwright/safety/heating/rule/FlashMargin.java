// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.Severity;
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
      outcome = outcome.andNotAssessed(unknown, "flash-point", severity(unknown));
    }
    return outcome;
  }

  /** From a tenth on a fragrance of which nobody knows the flash point is as bad as a solvent. */
  private static Severity severity(Material unknown) {
    return Contents.isFragrance(unknown) ? Severity.DANGER : Severity.CAUTION;
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
            .with("action", plan.action())
            .with("most", limit.isBelow(plan.limits().target()) ? limit : plan.limits().target())
            .at(Figure.FLASH_MARGIN);
    return WaxTemperature.ruledOut(plan, outcome, wax);
  }
}
