// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** A pot floor at the hard ceiling of the wax or above, and below 110 °C. */
final class WarmPotFloor extends PotFloorRule {

  WarmPotFloor() {
    super(caution("pot-floor", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE));
  }

  @Override
  boolean begins(TemperaturePoint floor) {
    return Limit.reaches(floor, TemperatureTable.HARD_CEILING);
  }

  @Override
  boolean isOvertaken(TemperaturePoint floor) {
    return Limit.reaches(floor, TemperatureTable.FUME);
  }
}
