// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import java.util.function.Predicate;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.units.TemperaturePoint;

/** Whether wax that reads below a limit may be beyond it, by the thermometer's tolerance. */
final class ThermometerTolerance {

  private ThermometerTolerance() {}

  /** Finds a limit that may be hidden, unless the hard ceiling may be: a graver rule. */
  static RuleOutcome review(HeatingPlan plan) {
    return review(
        plan,
        hidden ->
            (hidden.test(Band.ABOVE_TARGET) || hidden.test(Band.FUME))
                && !hidden.test(Band.AT_CEILING));
  }

  static RuleOutcome reviewCeiling(HeatingPlan plan) {
    return review(plan, hidden -> hidden.test(Band.AT_CEILING));
  }

  /** Asks for what was measured, in the liquid or on a surface, and for its thermometer. */
  private static RuleOutcome review(HeatingPlan plan, Predicate<Predicate<Band>> wanted) {
    Optional<BindingTemperature> wax = plan.bindingTemperature();
    Optional<TemperaturePoint> measured =
        wax.filter(BindingTemperature::isMeasured)
            .map(BindingTemperature::value)
            .or(plan::moltenReading);
    if (measured.isEmpty()) {
      return RuleOutcome.notAssessed("liquid-reading");
    }
    TemperaturePoint reading = measured.get();
    RuleOutcome outcome =
        plan.thermometer()
            .map(thermometer -> review(plan, reading, thermometer, wanted))
            .orElseGet(() -> RuleOutcome.notAsked("thermometer"));
    return WaxTemperature.ruledOut(plan, outcome, wax.orElseThrow());
  }

  private static RuleOutcome review(
      HeatingPlan plan,
      TemperaturePoint reading,
      Thermometer thermometer,
      Predicate<Predicate<Band>> wanted) {
    TemperaturePoint high = reading.plus(thermometer.tolerance());
    Predicate<Band> hidden =
        band -> !plan.table().hasBegun(band, reading) && plan.table().hasBegun(band, high);
    return RuleOutcome.foundIf(wanted.test(hidden))
        .with("wax", reading)
        .with("high", high)
        .with("tolerance", thermometer.tolerance())
        .at(Figure.TARGET, Figure.HARD_CEILING);
  }
}
