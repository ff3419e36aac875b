// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** No thermometer reads the wax: its temperature is an estimate. */
final class EstimatedTemperature extends StandardRule {

  EstimatedTemperature() {
    super(caution("estimated-temperature", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.bindingTemperature()
        .filter(BindingTemperature::isEstimated)
        .map(wax -> RuleOutcome.found().with("wax", wax.value()))
        .orElse(RuleOutcome.NOTHING);
  }
}
