// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Wax above the target of 90.0 °C and below the hard ceiling. */
final class AboveTarget extends WaxTemperatureRule {

  AboveTarget() {
    super(caution("above-target", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE));
  }

  @Override
  boolean begins(TemperaturePoint wax) {
    return Limit.exceeds(wax, TemperatureTable.TARGET);
  }

  @Override
  boolean isOvertaken(TemperaturePoint wax) {
    return Limit.reaches(wax, TemperatureTable.HARD_CEILING);
  }
}
