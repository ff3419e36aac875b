// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** A pot floor at 110 °C or above. */
final class HotPotFloor extends PotFloorRule {

  HotPotFloor() {
    super(danger("pot-floor-hot", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE).asBlocking());
  }

  @Override
  boolean begins(TemperaturePoint floor) {
    return Limit.reaches(floor, TemperatureTable.FUME);
  }
}
