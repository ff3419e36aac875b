// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Oil paint from 20 % of the mix and below 30 %: soft and slow to harden. */
final class OilPaintSoft extends StandardRule {

  OilPaintSoft() {
    super(caution("oil-paint-soft", Topic.MIX, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return OilPaint.review(plan.mix(), 0.20, 0.30);
  }
}
