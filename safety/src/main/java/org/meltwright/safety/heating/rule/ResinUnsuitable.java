// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Set;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** A resin that dissolves in wax only far above the ceiling, or hardens there for good. */
final class ResinUnsuitable extends StandardRule {

  /** Hard copal runs at 180 to 221 °C; shellac hardens for good at 120 to 150 °C. */
  private static final Set<String> UNSUITABLE = Set.of("copal-hard", "shellac-dewaxed");

  ResinUnsuitable() {
    super(caution("resin-unsuitable", Topic.WORKING, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    List<Material> found = Mix.holding(plan.mix(), material -> UNSUITABLE.contains(material.id()));
    return RuleOutcome.foundIf(!found.isEmpty()).with("materials", found);
  }
}
