// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Wax at or above the hard ceiling of 93.3 °C, 200 °F rounded down. */
final class HardCeiling extends WaxTemperatureRule {

  HardCeiling() {
    super(
        danger("hard-ceiling", Topic.UPPER_LIMIT, Sources.COUNTY_ENCAUSTIC).asBlocking().asFixed());
  }

  @Override
  boolean begins(TemperaturePoint wax) {
    return Limit.reaches(wax, TemperatureTable.HARD_CEILING);
  }
}
