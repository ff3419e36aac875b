// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.Check;

/**
 * What heat needs to know of a solid body, or of one state of a melt: conductivity, density,
 * specific heat.
 *
 * <p>Melt of 75 °C on wood of 20 °C: each side counts by its effusivity, so they meet nearer to the
 * melt.
 *
 * <pre>{@code
 * Substance melt = new Substance(0.17, 900, 2300);
 * melt.effusivity(); // 593.2 W √s/(m² K)
 * melt.contactCelsius(75, PanelKind.WOOD.substance(), 20); // 57.3 °C
 * melt.contactCelsius(75, PanelKind.GLASS.substance(), 20); // 36.0 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param conductivityWattsPerMetreKelvin k, in W/(m K), above zero
 * @param densityKilogramsPerCubicMetre ρ, in kg/m³, above zero
 * @param specificHeatJoulesPerKilogramKelvin c, in J/(kg K), above zero
 */
public record Substance(
    double conductivityWattsPerMetreKelvin,
    double densityKilogramsPerCubicMetre,
    double specificHeatJoulesPerKilogramKelvin) {

  /**
   * The guards of this package: what they say stands in the bundle beside {@link ThermalProblem}.
   */
  static final Check CHECK = Check.beside(ThermalProblem.class);

  public Substance {
    CHECK.between(conductivityWattsPerMetreKelvin, 1e-6, 1e6, "conductivity in W/(m K)");
    CHECK.between(densityKilogramsPerCubicMetre, 1e-3, 1e5, "density in kg/m³");
    CHECK.between(specificHeatJoulesPerKilogramKelvin, 1, 1e5, "specific heat in J/(kg K)");
  }

  /**
   * Returns the thermal effusivity e = √(k ρ c): how much heat a surface gives or takes on contact.
   *
   * @return e, in W √s/(m² K); 593.2 for k 0.17, ρ 900, c 2300
   */
  public double effusivity() {
    return Math.sqrt(
        conductivityWattsPerMetreKelvin
            * densityKilogramsPerCubicMetre
            * specificHeatJoulesPerKilogramKelvin);
  }

  /**
   * Returns the thermal diffusivity α = k/(ρ c).
   *
   * @return α, in m²/s
   */
  public double diffusivity() {
    return conductivityWattsPerMetreKelvin
        / (densityKilogramsPerCubicMetre * specificHeatJoulesPerKilogramKelvin);
  }

  /**
   * Returns the temperature at which two half spaces meet, if neither freezes.
   *
   * <p>Formula: T = (e₁T₁ + e₂T₂)/(e₁ + e₂).
   *
   * @param celsius the temperature of this one, in °C
   * @param other the other one
   * @param otherCelsius its temperature, in °C
   * @return the contact temperature, in °C
   */
  public double contactCelsius(double celsius, Substance other, double otherCelsius) {
    CHECK.finite(celsius, "temperature in °C");
    CHECK.finite(otherCelsius, "temperature in °C");
    double e1 = effusivity();
    double e2 = other.effusivity();
    return (e1 * celsius + e2 * otherCelsius) / (e1 + e2);
  }
}
