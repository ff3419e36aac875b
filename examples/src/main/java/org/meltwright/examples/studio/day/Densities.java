// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;

/** Densities that were measured. */
final class Densities {

  private Densities() {}

  /** A measured density as an estimate without spread. */
  static Estimate<Density> exactly(double kilogramsPerCubicMetre) {
    return new Estimate<>(
        QuantityKind.DENSITY,
        kilogramsPerCubicMetre,
        kilogramsPerCubicMetre,
        kilogramsPerCubicMetre);
  }
}
