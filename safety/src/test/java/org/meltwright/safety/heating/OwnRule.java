// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.function.Function;
import org.meltwright.core.source.Source;

/** A rule that an app brings, without texts of its own. */
record OwnRule(RuleInfo info, Function<HeatingPlan, RuleOutcome> check) implements HeatingRule {

  static OwnRule of(String id, Function<HeatingPlan, RuleOutcome> check) {
    return new OwnRule(
        RuleInfo.of(id, Severity.NOTICE, RuleInfo.Topic.PLACE, Source.COMMON_PRACTICE), check);
  }

  OwnRule blocking() {
    return new OwnRule(info.asBlocking(), check);
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return check.apply(plan);
  }
}
