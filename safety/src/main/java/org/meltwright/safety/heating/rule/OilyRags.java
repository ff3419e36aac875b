// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Rags with drying oil, heaped or bagged. */
final class OilyRags extends StandardRule {

  OilyRags() {
    super(warning("oily-rags", Topic.PLACE, Sources.OILY_RAG_CANS));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.has(Circumstance.OILY_RAGS));
  }
}
