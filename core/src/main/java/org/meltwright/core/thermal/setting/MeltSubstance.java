// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import org.meltwright.core.thermal.heat.MeltingHeat;

/**
 * What freezing needs to know of a melt: conductivities, density, and its heat figures.
 *
 * <p>One density serves both states: a layer keeps its mass, and its thickness is that of the
 * density given.
 *
 * <p>A wax that melts from 50 to 64 °C, as a solid and as a melt:
 *
 * <pre>{@code
 * MeltSubstance wax =
 *     new MeltSubstance(0.25, 0.17, 900, new MeltingHeat(2000, 2300, 180_000, 50, 64));
 * wax.solid().effusivity(); // 670.8 W √s/(m² K)
 * wax.liquid().effusivity(); // 593.2 W √s/(m² K)
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param solidConductivityWattsPerMetreKelvin conductivity of the solid, in W/(m K), above zero
 * @param liquidConductivityWattsPerMetreKelvin conductivity of the melt, in W/(m K), above zero
 * @param densityKilogramsPerCubicMetre the density, in kg/m³, above zero
 * @param heat specific heats, heat of fusion and melting range
 */
public record MeltSubstance(
    double solidConductivityWattsPerMetreKelvin,
    double liquidConductivityWattsPerMetreKelvin,
    double densityKilogramsPerCubicMetre,
    MeltingHeat heat) {

  public MeltSubstance {
    CHECK.between(solidConductivityWattsPerMetreKelvin, 1e-6, 1e6, "conductivity in W/(m K)");
    CHECK.between(liquidConductivityWattsPerMetreKelvin, 1e-6, 1e6, "conductivity in W/(m K)");
    CHECK.between(densityKilogramsPerCubicMetre, 1e-3, 1e5, "density in kg/m³");
    CHECK.between(heat.heatOfFusionJoulesPerKilogram(), 1, 1e8, "heat of fusion in J/kg");
  }

  /**
   * Returns the solid state.
   *
   * @return its figures
   */
  public Substance solid() {
    return new Substance(
        solidConductivityWattsPerMetreKelvin,
        densityKilogramsPerCubicMetre,
        heat.solidSpecificHeatJoulesPerKilogramKelvin());
  }

  /**
   * Returns the melt.
   *
   * @return its figures
   */
  public Substance liquid() {
    return new Substance(
        liquidConductivityWattsPerMetreKelvin,
        densityKilogramsPerCubicMetre,
        heat.liquidSpecificHeatJoulesPerKilogramKelvin());
  }

  /** Returns the middle of the melting range, in °C, which the exact solutions take. */
  double meltingCelsius() {
    return (heat.solidusCelsius() + heat.liquidusCelsius()) / 2;
  }
}
