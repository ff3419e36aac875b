// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.units.TemperaturePoint;

/** What heats in a plan, the melt or the work: how hot it gets. */
final class Tools {

  private Tools() {}

  /**
   * Returns the hottest of a kind: set point plus overshoot where that is stated, else the set
   * point; empty if none states a set point.
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

  private static List<HeatSource> of(HeatingPlan plan, Kind kind) {
    return plan.sources().stream().filter(tool -> tool.kind() == kind).toList();
  }
}
