// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Acrylic paint or another polymer dispersed in water. */
final class Acrylic extends StandardRule {

  Acrylic() {
    super(danger("acrylic", Topic.MIX, Source.COMMON_PRACTICE).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found =
        Mix.holding(plan.mix(), material -> material.family() == MaterialFamily.DISPERSION);
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }
}
