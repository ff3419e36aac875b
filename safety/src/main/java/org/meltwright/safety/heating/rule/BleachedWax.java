// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Bleached wax whose residue of bleach is not known. */
final class BleachedWax extends StandardRule {

  BleachedWax() {
    super(caution("bleached-wax", Topic.MIX, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.holding(plan.mix(), Wording.BLEACHED::isIn);
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }
}
