// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.WorkingWindow;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.TemperaturePoint;

/** Wax colder than the lower bound of its working window: it sets on the brush. */
final class ColderThanWindow extends StandardRule {

  ColderThanWindow() {
    super(notice("colder-than-window", Topic.WORKING, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return plan.bindingTemperature()
        .map(wax -> review(plan, wax))
        .orElseGet(() -> RuleOutcome.notAssessed("wax-temperature"));
  }

  private static RuleOutcome review(HeatingPlan plan, BindingTemperature binding) {
    TemperaturePoint wax = binding.value();
    RuleOutcome outcome = below(plan, wax);
    return outcome.isFound() || binding.isMeasured()
        ? outcome
        : outcome.andNotAssessed(WaxTemperatureRule.missing(binding.basis()));
  }

  private static RuleOutcome below(HeatingPlan plan, TemperaturePoint wax) {
    return Window.review(plan, window -> isColder(wax, window)).with("wax", wax);
  }

  /** A closed window asks for more than the ceiling allows: that is the other rule's to say. */
  private static boolean isColder(TemperaturePoint wax, WorkingWindow window) {
    return window.state() != WorkingWindow.State.CLOSED && wax.isBelow(window.lowerBound().low());
  }
}
