// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleInfo.Topic;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/** A reading that the next limit lies within the thermometer's tolerance of. */
final class ThermometerTolerance extends StandardRule {

  ThermometerTolerance() {
    super(notice("thermometer-tolerance", Topic.UPPER_LIMIT, Source.COMMON_PRACTICE));
  }

  @Override
  public RuleOutcome review(HeatingPlan plan) {
    if (plan.liquidReading().isEmpty()) {
      return plan.bindingTemperature().filter(BindingTemperature::isMeasured).isPresent()
          ? RuleOutcome.NOTHING
          : RuleOutcome.notAssessed("liquid-reading");
    }
    TemperaturePoint reading = plan.liquidReading().get();
    return plan.thermometer()
        .map(thermometer -> review(reading, thermometer))
        .orElseGet(() -> RuleOutcome.notAssessed("thermometer"));
  }

  private static RuleOutcome review(TemperaturePoint reading, Thermometer thermometer) {
    TemperaturePoint high = reading.plus(thermometer.tolerance());
    boolean crosses =
        crosses(reading, high, TemperatureTable.TARGET)
            || crosses(reading, high, TemperatureTable.HARD_CEILING)
            || crosses(reading, high, TemperatureTable.FUME);
    return RuleOutcome.foundIf(crosses)
        .with("wax", reading)
        .with("high", high)
        .with("tolerance", thermometer.tolerance());
  }

  private static boolean crosses(
      TemperaturePoint reading, TemperaturePoint high, TemperaturePoint limit) {
    return !Limit.exceeds(reading, limit) && Limit.exceeds(high, limit);
  }
}
