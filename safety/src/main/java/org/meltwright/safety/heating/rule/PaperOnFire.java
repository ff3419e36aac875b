// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Paper that holds wax on or beside an open coil, gas or a flame. */
final class PaperOnFire extends StandardRule {

  PaperOnFire() {
    super(warning("paper-liner-flame", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    boolean fire = plan.uses(Kind.TORCH) || Tools.isOpenCoilOrGas(plan);
    if (fire && Paper.isUnknown(plan)) {
      return RuleOutcome.notAssessed("vessel");
    }
    return RuleOutcome.foundIf(fire && Paper.holdsTheWax(plan));
  }
}
