// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Wax above 85 °C: it darkens, and the hours are counted. */
final class Darkening extends WaxTemperatureRule {

  Darkening() {
    super(notice("darkening", Topic.UPPER_LIMIT, Sources.BEESWAX_RECORD));
  }

  @Override
  boolean begins(TemperaturePoint wax) {
    return Limit.exceeds(wax, TemperatureTable.DARKENING);
  }

  @Override
  RuleOutcome completed(HeatingPlan plan, RuleOutcome outcome) {
    if (!outcome.isFound()) {
      return outcome;
    }
    return plan.hoursHeld().isPresent()
        ? outcome.with("hours", plan.hoursHeld().getAsDouble())
        : outcome.andNotAssessed("hours-held");
  }
}
