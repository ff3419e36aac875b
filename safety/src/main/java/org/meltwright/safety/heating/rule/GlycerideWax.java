// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Set;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A fat sold as a wax: it fumes sooner. */
final class GlycerideWax extends StandardRule {

  private static final Set<String> GLYCERIDES = Set.of("soy-wax", "japan-wax", "stearic-acid");

  GlycerideWax() {
    super(notice("glyceride-wax", Topic.MIX, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.holding(plan.mix(), material -> GLYCERIDES.contains(material.id()));
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }
}
