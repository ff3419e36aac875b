// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Set;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;

/** Hard wax above 5 % of the mix. */
final class HardWaxShare extends StandardRule {

  private static final Set<String> HARD =
      Set.of("carnauba", "candelilla", "rice-bran-wax", "montan");

  HardWaxShare() {
    super(notice("hard-wax-share", Topic.WORKING, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    MassFraction share = Mix.share(plan.mix(), material -> HARD.contains(material.id()));
    return RuleOutcome.foundIf(Limit.exceeds(share.value(), 0.05)).with("share", share);
  }
}
