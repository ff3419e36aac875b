// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Wax thinned with solvent, as sold for work without heat. */
final class SolventThinnedWax extends StandardRule {

  SolventThinnedWax() {
    super(
        danger("solvent-thinned-wax", Topic.MIX, Sources.STATE_ENCAUSTICS).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.holding(plan.mix(), Wording.SOLVENT_THINNED::isIn);
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }
}
