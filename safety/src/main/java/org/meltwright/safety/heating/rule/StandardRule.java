// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleInfo;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.Severity;

/** A rule of this library; its texts stand in the bundle beside it. */
abstract class StandardRule implements HeatingRule {

  private final RuleInfo info;

  StandardRule(RuleInfo info) {
    this.info = info;
  }

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
  public final RuleInfo info() {
    return info;
  }

  @Override
  public String toString() {
    return info.id();
  }
}
