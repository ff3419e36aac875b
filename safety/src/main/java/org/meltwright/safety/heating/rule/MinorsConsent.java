// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Anyone under 18: written consent and low heat. */
final class MinorsConsent extends StandardRule {

  MinorsConsent() {
    super(notice("minors-consent", Topic.PLACE, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.people()
        .map(People::hasMinors)
        .map(RuleOutcome::foundIf)
        .orElseGet(() -> RuleOutcome.notAssessed("people"));
  }
}
