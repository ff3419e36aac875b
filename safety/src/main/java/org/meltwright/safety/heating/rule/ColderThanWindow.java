// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.FloorBand;
import org.meltwright.units.TemperaturePoint;

/** Wax colder than the lower bound of its working window: it sets on the brush. */
final class ColderThanWindow {

  private ColderThanWindow() {}

  static RuleOutcome review(HeatingPlan plan) {
    return !Window.isBrushed(plan) || isFloorTooHot(plan)
        ? RuleOutcome.NOTHING
        : WaxTemperature.review(
            plan, wax -> WaxTemperature.ruledOut(plan, below(plan, wax.value()), wax));
  }

  /** Nobody is told to warm wax on a floor that is too hot already. */
  private static boolean isFloorTooHot(HeatingPlan plan) {
    return plan.potFloor()
        .filter(floor -> plan.table().floorBand(floor.value()) != FloorBand.WORKING)
        .isPresent();
  }

  private static RuleOutcome below(HeatingPlan plan, TemperaturePoint wax) {
    return Window.review(plan, window -> isColder(wax, window)).with("wax", wax);
  }

  /** A closed window asks for more than the ceiling allows: that is the other rule's to say. */
  private static boolean isColder(TemperaturePoint wax, WorkingWindow window) {
    return window.state() != WorkingWindow.State.CLOSED && wax.isBelow(window.lowerBound().low());
  }
}
