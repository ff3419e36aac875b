// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Crayons of unknown make in the pot. */
final class UnknownCrayons extends StandardRule {

  UnknownCrayons() {
    super(caution("unknown-crayons", Topic.MIX, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.has(Circumstance.UNKNOWN_CRAYONS_ADDED));
  }
}
