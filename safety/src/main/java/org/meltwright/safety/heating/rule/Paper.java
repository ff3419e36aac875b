// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.PotFloor;

/** Whether wax is heated in paper. */
final class Paper {

  private Paper() {}

  /** Tells whether it is not stated what holds the wax. */
  static boolean isUnknown(HeatingPlan plan) {
    return plan.vessel().isEmpty() && !plan.has(Circumstance.PAPER_LINER);
  }

  /** Returns what the paper stands on: the floor, or on a heated palette its surface. */
  static Optional<PotFloor> floor(HeatingPlan plan) {
    return plan.potFloor()
        .or(
            () ->
                plan.heat()
                    .filter(heat -> heat.kind() == Kind.HEATED_PALETTE)
                    .flatMap(heat -> plan.bindingTemperature())
                    .map(wax -> new PotFloor(wax.value(), wax.isMeasured())));
  }

  static boolean holdsTheWax(HeatingPlan plan) {
    return plan.has(Circumstance.PAPER_LINER)
        || plan.vessel().filter(v -> v.material() == VesselMaterial.PAPER).isPresent();
  }
}
