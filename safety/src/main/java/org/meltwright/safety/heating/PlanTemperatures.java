// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import org.meltwright.core.thermal.melting.WorkingWindow;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * What a plan says of its temperatures, worked out once.
 *
 * @param window where the mix can be worked, up to the target
 * @param moltenBound from which reading on the wax can be molten
 * @param moltenReading the reading in the liquid, if it can be one of molten wax or is at a ceiling
 * @param otherScale what its number would be on the other scale, if that fits
 * @param floor the floor of the pot at its hottest
 * @param binding the temperature that the table binds
 */
record PlanTemperatures(
    Optional<WorkingWindow> window,
    Optional<TemperaturePoint> moltenBound,
    Optional<TemperaturePoint> moltenReading,
    Optional<OtherScale> otherScale,
    Optional<PotFloor> floor,
    Optional<BindingTemperature> binding) {

  static PlanTemperatures of(HeatingPlan plan) {
    Optional<WorkingWindow> window = window(plan);
    Optional<TemperaturePoint> bound = MoltenBound.of(plan.contents(), window);
    Optional<TemperaturePoint> molten =
        plan.liquidReading().filter(t -> MoltenBound.isMolten(t, bound, plan.limits()));
    Optional<OtherScale> otherScale =
        plan.liquidReading()
            .flatMap(t -> OtherScale.of(t, bound.orElse(MoltenBound.UNKNOWN), plan.limits()));
    Optional<PotFloor> floor = PotFloor.of(plan);
    boolean isBelieved = molten.filter(t -> MoltenBound.isReached(t, bound)).isPresent();
    Optional<BindingTemperature> binding = BindingTemperature.of(plan, molten, isBelieved, floor);
    return new PlanTemperatures(window, bound, molten, otherScale, floor, binding);
  }

  /**
   * Where the age of the youngest lowers the target, low heat is what is asked for: the window may
   * be narrower by as much, and is closed where nothing of it is left.
   */
  private static Optional<WorkingWindow> window(HeatingPlan plan) {
    TemperaturePoint target = plan.limits().target();
    double lowered = plan.targetOfAdults().minus(target).kelvin();
    double least = plan.limits().leastWidth().kelvin() - lowered;
    return plan.table()
        .window(plan.mix(), target, TemperatureDifference.ofKelvin(Math.max(0, least)));
  }
}
