// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Oil paint from 12 % of the mix and below 20 %. */
final class OilPaintNoted extends StandardRule {

  OilPaintNoted() {
    super(notice("oil-paint-noted", Topic.MIX, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return OilPaint.review(plan.mix(), 0.12, 0.20);
  }
}
