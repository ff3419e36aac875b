// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A resin that dissolves in wax only far above the ceiling, or hardens there for good. */
final class ResinUnsuitable extends StandardRule {

  ResinUnsuitable() {
    super(caution("resin-unsuitable", Topic.WORKING, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.holding(plan.mix(), ResinUnsuitable::isRefused);
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }

  private static boolean isRefused(Material material) {
    return material.family() == MaterialFamily.RESIN
        && material
            .find(PropertyKey.USE_IN_HOT_MELT)
            .filter(use -> use.value().equals("refuse"))
            .isPresent();
  }
}
