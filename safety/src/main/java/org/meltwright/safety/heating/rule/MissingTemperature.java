// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Nothing stated tells how hot the wax is. */
final class MissingTemperature extends StandardRule {

  MissingTemperature() {
    super(warning("missing-temperature", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE).asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.bindingTemperature().isEmpty());
  }
}
