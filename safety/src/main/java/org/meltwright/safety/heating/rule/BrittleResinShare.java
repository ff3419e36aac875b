// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;

/** Resin from one fifth of the medium: brittle. */
final class BrittleResinShare extends StandardRule {

  BrittleResinShare() {
    super(notice("brittle-resin-share", Topic.WORKING, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    double resin = Mix.mostResinInMedium(plan.mix());
    return RuleOutcome.foundIf(Limit.reaches(resin, 0.20)).with("resin", MassFraction.of(resin));
  }
}
