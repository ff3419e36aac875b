// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** Wax at 110 °C or above: the air comes first. */
final class Fume extends WaxTemperatureRule {

  Fume() {
    super(danger("fume", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE).asBlocking().asFixed());
  }

  @Override
  boolean begins(TemperaturePoint wax) {
    return Limit.reaches(wax, TemperatureTable.FUME);
  }
}
