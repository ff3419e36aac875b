// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.Lining;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A vessel whose coating is not known. */
final class UnknownCoating extends StandardRule {

  UnknownCoating() {
    super(caution("unknown-coating", Topic.VESSEL, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (plan.vessel().isEmpty()) {
      return RuleOutcome.notAssessed("vessel");
    }
    return RuleOutcome.foundIf(plan.vessel().filter(v -> v.lining() == Lining.UNKNOWN).isPresent());
  }
}
