// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A solvent in the mix, or a material thinned with one. */
final class Solvent extends StandardRule {

  Solvent() {
    super(danger("solvent", Topic.MIX, Sources.STATE_ENCAUSTICS).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found =
        Mix.holding(plan.mix(), material -> material.family() == MaterialFamily.SOLVENT);
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }
}
