// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Water-mixable oil paint with water in it. */
final class WaterMixableOilWithWater extends StandardRule {

  WaterMixableOilWithWater() {
    super(
        danger("water-mixable-oil-with-water", Topic.MIX, Source.COMMON_PRACTICE)
            .asBlocking()
            .asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.holding(plan.mix(), Mix::isWaterMixable);
    boolean wet =
        plan.has(Circumstance.WATER_ADDED)
            || found.stream().anyMatch(paint -> Mix.holds(paint, Mix::isWet));
    return RuleOutcome.foundIf(!found.isEmpty() && wet).with("materials", found);
  }
}
