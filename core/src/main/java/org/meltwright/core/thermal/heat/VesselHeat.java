// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.heat;

import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.EstimateInput.Direction;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.core.thermal.ThermalProblem;

/** Specific heats of what vessels are made of, near room temperature; remembered. */
final class VesselHeat {

  static final Source SOURCE =
      Source.of(
          "vessel-specific-heats",
          "Specific heats of metals, glass and plastics, remembered from handbook tables",
          SourceKind.HANDBOOK);

  private static final Symbol CAPACITY =
      Symbol.beside(ThermalProblem.class, "heat capacity of the vessel", "J/K");

  private VesselHeat() {}

  static EstimateInput capacity(Vessel vessel) {
    double[] range = specificHeat(vessel.material());
    return capacity(vessel.massKilograms() * range[0], vessel.massKilograms() * range[1]);
  }

  static EstimateInput capacity(double lowJoulesPerKelvin, double highJoulesPerKelvin) {
    return EstimateInput.of(CAPACITY, lowJoulesPerKelvin, highJoulesPerKelvin, Direction.RAISES);
  }

  private static double[] specificHeat(VesselMaterial material) {
    return switch (material) {
      case STAINLESS_STEEL, STEEL, GALVANISED_STEEL, ENAMELLED_STEEL -> new double[] {460, 520};
      case CAST_IRON -> new double[] {420, 500};
      case ALUMINIUM -> new double[] {880, 920};
      case COPPER -> new double[] {375, 395};
      case GLASS, HEAT_RESISTANT_GLASS, CERAMIC -> new double[] {750, 1000};
      case SILICONE -> new double[] {1000, 1500};
      case PAPER, PLASTIC -> new double[] {1300, 2300};
      case UNKNOWN -> new double[] {375, 2300};
    };
  }
}
