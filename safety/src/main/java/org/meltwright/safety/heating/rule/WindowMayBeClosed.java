// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Hard wax may leave under 5 K between the brush margin and the target. */
final class WindowMayBeClosed extends StandardRule {

  WindowMayBeClosed() {
    super(caution("window-may-be-closed", Topic.WORKING, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return Window.review(plan, Window::mayBeClosed);
  }
}
