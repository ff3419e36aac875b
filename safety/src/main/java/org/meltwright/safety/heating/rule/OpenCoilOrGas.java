// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** An open coil or a gas flame under wax. */
final class OpenCoilOrGas extends StandardRule {

  OpenCoilOrGas() {
    super(warning("open-coil-or-gas", Topic.VESSEL, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return RuleOutcome.foundIf(Tools.isOpenCoilOrGas(plan));
  }
}
