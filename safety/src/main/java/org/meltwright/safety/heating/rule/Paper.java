// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;

/** Whether wax is heated in paper. */
final class Paper {

  private Paper() {}

  /** Tells whether it is not stated what holds the wax. */
  static boolean isUnknown(HeatingPlan plan) {
    return plan.vessel().isEmpty() && !plan.has(Circumstance.PAPER_LINER);
  }

  static boolean holdsTheWax(HeatingPlan plan) {
    return plan.has(Circumstance.PAPER_LINER)
        || plan.vessel().filter(v -> v.material() == VesselMaterial.PAPER).isPresent();
  }
}
