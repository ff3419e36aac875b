// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import java.util.function.BiFunction;
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
    return review(plan, ThermometerTolerance::review);
  }

  /** Asks for what was measured, in the liquid or on a surface, and for its thermometer. */
  static RuleOutcome review(
      HeatingPlan plan, BiFunction<TemperaturePoint, Thermometer, RuleOutcome> rule) {
    Optional<TemperaturePoint> measured =
        plan.bindingTemperature()
            .filter(BindingTemperature::isMeasured)
            .map(BindingTemperature::value)
            .or(plan::liquidReading);
    if (measured.isEmpty()) {
      return RuleOutcome.notAssessed("liquid-reading");
    }
    TemperaturePoint reading = measured.get();
    return plan.thermometer()
        .map(thermometer -> rule.apply(reading, thermometer))
        .orElseGet(() -> RuleOutcome.notAssessed("thermometer"));
  }

  private static RuleOutcome review(TemperaturePoint reading, Thermometer thermometer) {
    TemperaturePoint high = reading.plus(thermometer.tolerance());
    boolean crosses =
        (!Limit.exceeds(reading, TemperatureTable.TARGET)
                && Limit.exceeds(high, TemperatureTable.TARGET))
            || mayHide(reading, thermometer, TemperatureTable.FUME);
    return outcome(crosses && !mayHideTheCeiling(reading, thermometer), reading, thermometer);
  }

  /** Whether the hard ceiling, which the reading lies below, may be reached: a graver rule. */
  static boolean mayHideTheCeiling(TemperaturePoint reading, Thermometer thermometer) {
    return mayHide(reading, thermometer, TemperatureTable.HARD_CEILING);
  }

  private static boolean mayHide(
      TemperaturePoint reading, Thermometer thermometer, TemperaturePoint limit) {
    return !Limit.reaches(reading, limit)
        && Limit.reaches(reading.plus(thermometer.tolerance()), limit);
  }

  static RuleOutcome outcome(boolean found, TemperaturePoint reading, Thermometer thermometer) {
    return RuleOutcome.foundIf(found)
        .with("wax", reading)
        .with("high", reading.plus(thermometer.tolerance()))
        .with("tolerance", thermometer.tolerance());
  }
}
