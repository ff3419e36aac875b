// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.TemperaturePoint;

/** A reading below the hard ceiling on a thermometer that may hide it. */
final class CeilingWithinTolerance extends StandardRule {

  CeilingWithinTolerance() {
    super(warning("ceiling-within-tolerance", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    return ThermometerTolerance.review(plan, CeilingWithinTolerance::review);
  }

  private static RuleOutcome review(TemperaturePoint reading, Thermometer thermometer) {
    return ThermometerTolerance.outcome(
        ThermometerTolerance.mayHideTheCeiling(reading, thermometer), reading, thermometer);
  }
}
