// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Wax within 50 K of the lowest usable flash point of what can burn in it. */
final class FlashMargin extends StandardRule {

  FlashMargin() {
    super(danger("flash-margin", Topic.UPPER_LIMIT, Sources.MATERIAL_FIGURES).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    FlashPoints flash = FlashPoints.of(plan.mix());
    RuleOutcome outcome =
        plan.bindingTemperature()
            .map(wax -> review(wax, flash.lowest()))
            .orElseGet(() -> RuleOutcome.notAssessed("wax-temperature"));
    for (Material unknown : flash.unknown()) {
      outcome = outcome.andNotAssessed(unknown, "flash-point");
    }
    return outcome;
  }

  private static RuleOutcome review(BindingTemperature wax, Optional<TemperaturePoint> lowest) {
    if (lowest.isEmpty()) {
      return RuleOutcome.NOTHING;
    }
    TemperaturePoint limit = lowest.get().minus(TemperatureTable.FLASH_MARGIN);
    if (Limit.reaches(wax.value(), limit)) {
      return RuleOutcome.found()
          .with("wax", wax.value())
          .with("flash", lowest.get())
          .with("limit", limit);
    }
    return wax.isEstimated()
        ? RuleOutcome.notAssessed(WaxTemperatureRule.missing(wax.basis()))
        : RuleOutcome.NOTHING;
  }
}
