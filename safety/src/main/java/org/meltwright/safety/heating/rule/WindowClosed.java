// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;

/** Hard wax leaves under 5 K between the brush margin and the target. */
final class WindowClosed extends StandardRule {

  WindowClosed() {
    super(caution("window-closed", Topic.WORKING, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return Window.review(plan, Window::isClosed);
  }
}
