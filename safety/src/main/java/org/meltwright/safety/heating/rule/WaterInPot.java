// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
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
    List<Material> found = Mix.holding(plan.mix(), WaterInPot::isWet);
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }

  /** Dispersions and water-mixable paints have rules of their own. */
  private static boolean isWet(Material material) {
    return switch (material.family()) {
      case WATER -> true;
      case DISPERSION -> false;
      default -> Mix.statesWater(material) && !Mix.isWaterMixable(material);
    };
  }
}
