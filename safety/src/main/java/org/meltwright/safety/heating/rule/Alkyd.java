// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Alkyd paint or medium in the pot. */
final class Alkyd extends StandardRule {

  Alkyd() {
    super(warning("alkyd", Topic.MIX, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean weighed = !Mix.holding(plan.mix(), Wording.ALKYD::isIn).isEmpty();
    return RuleOutcome.foundIf(weighed || plan.has(Circumstance.ALKYD_ADDED));
  }
}
