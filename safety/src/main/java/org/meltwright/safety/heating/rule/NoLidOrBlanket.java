// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Neither lid nor fire blanket within reach. */
final class NoLidOrBlanket extends StandardRule {

  NoLidOrBlanket() {
    super(warning("no-lid-or-blanket", Topic.PLACE, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(plan.has(Circumstance.NO_LID_OR_BLANKET));
  }
}
