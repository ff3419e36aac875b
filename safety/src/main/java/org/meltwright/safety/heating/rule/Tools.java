// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.units.TemperaturePoint;

/** The tools of a plan: how hot they get, and whether one is an open fire. */
final class Tools {

  private Tools() {}

  /**
   * Returns the hottest of the tools of a kind: set point plus overshoot where that is stated, else
   * the set point; empty if none states a set point.
   */
  static Optional<TemperaturePoint> hottest(HeatingPlan plan, Kind kind) {
    return of(plan, kind).stream()
        .flatMap(tool -> tool.highestSurface().or(tool::setPoint).stream())
        .max(TemperaturePoint::compareTo);
  }

  /** Returns whether each tool of a kind states its set point and its overshoot. */
  static boolean areAllStated(HeatingPlan plan, Kind kind) {
    return of(plan, kind).stream().allMatch(tool -> tool.highestSurface().isPresent());
  }

  /** Returns whether an open coil or a gas flame is under the pot or beside it. */
  static boolean isOpenCoilOrGas(HeatingPlan plan) {
    return plan.uses(Kind.OPEN_COIL_OR_GAS)
        || plan.heat().filter(heat -> heat.kind() == Kind.OPEN_COIL_OR_GAS).isPresent();
  }

  private static List<HeatSource> of(HeatingPlan plan, Kind kind) {
    return plan.tools().stream().filter(tool -> tool.kind() == kind).toList();
  }
}
