// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Water in the mix. */
final class WaterInPot extends StandardRule {

  WaterInPot() {
    super(danger("water", Topic.MIX, Sources.WAX_FIRES).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.materials(plan.mix()).stream().filter(WaterInPot::isMeant).toList();
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }

  /** Dispersions and water-mixable paints have rules of their own. */
  private static boolean isMeant(Material material) {
    return material.family() != MaterialFamily.DISPERSION
        && !Mix.isWaterMixable(material)
        && Mix.holds(material, Mix::isWet);
  }
}
