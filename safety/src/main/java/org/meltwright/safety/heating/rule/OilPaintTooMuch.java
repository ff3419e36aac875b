// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Oil paint at 30 % of the mix or above: it hardly hardens. */
final class OilPaintTooMuch extends StandardRule {

  OilPaintTooMuch() {
    super(notice("oil-paint-too-much", Topic.MIX, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return OilPaint.review(plan.mix(), 0.30, Double.POSITIVE_INFINITY);
  }
}
