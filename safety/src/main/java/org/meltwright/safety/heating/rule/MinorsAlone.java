// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Someone under 18 with neither a teacher nor another adult. */
final class MinorsAlone extends StandardRule {

  MinorsAlone() {
    super(danger("minors-alone", Topic.PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.people()
        .map(MinorsAlone::isAlone)
        .map(RuleOutcome::foundIf)
        .orElseGet(() -> RuleOutcome.notAssessed("people"));
  }

  /** Where no minor is counted and the youngest is one, an adult too few was counted. */
  private static boolean isAlone(People people) {
    int mostAdults = people.minors() == 0 ? 1 : 0;
    return people.hasMinors() && people.teachers() == 0 && people.adults() <= mostAdults;
  }
}
