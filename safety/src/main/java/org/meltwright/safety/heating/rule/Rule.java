// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleInfo;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.Severity;

/** A rule of this library: a line of its topic's table. Its texts stand in the bundle beside it. */
record Rule(RuleInfo info, Check check) implements HeatingRule {

  static RuleInfo danger(String id, Topic topic, Source source) {
    return RuleInfo.of(id, Severity.DANGER, topic, source);
  }

  static RuleInfo warning(String id, Topic topic, Source source) {
    return RuleInfo.of(id, Severity.WARNING, topic, source);
  }

  static RuleInfo caution(String id, Topic topic, Source source) {
    return RuleInfo.of(id, Severity.CAUTION, topic, source);
  }

  static RuleInfo notice(String id, Topic topic, Source source) {
    return RuleInfo.of(id, Severity.NOTICE, topic, source);
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return check.review(plan);
  }

  @Override
  public String toString() {
    return info.id();
  }
}
