// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.Erfcx;
import org.meltwright.core.numeric.Roots;
import org.meltwright.core.thermal.ThermalProblem;
import org.meltwright.units.ProblemException;

/**
 * Exact freezing of a half space of melt, after Stefan and Neumann: the front moves with the root
 * of time.
 *
 * <p>Formula: X = 2 λ √(α t), α of the solid. λ solves, with St = c ΔT/L and ν = √(α/α of the
 * melt):
 *
 * <p>one phase (melt at its melting point): √π λ exp(λ²) erf λ = St;
 *
 * <p>two phases: exp(−λ²)/erf λ − (kl/ks) ν (Ti − Tm)/(Tm − Tw) exp(−ν²λ²)/erfc(νλ) = λ √π/St;
 *
 * <p>on a half space of another material, whose interface settles at Ts: the same with Tw = Ts, and
 * e(Ts − Tp) = es (Tm − Ts)/erf λ.
 *
 * <p>Symbols: Tw wall, Tm melting point, Ti melt, Tp panel, Ts interface [°C]; e effusivity of the
 * panel, es of the solid [W √s/(m² K)]. Some papers invert St; here it is c ΔT over L.
 *
 * <p>Valid for half spaces, constant figures, one melting point (the middle of a range is taken)
 * and equal densities. Source: Carslaw and Jaeger, Conduction of Heat in Solids, section 11.2;
 * Crank, Free and Moving Boundary Problems, chapter 3.
 *
 * <p>For example, St = 1 gives λ = 0.6201.
 *
 * <p>Immutable and thread-safe.
 *
 * @param lambda the growth parameter λ [–]; 0 if no crust forms
 * @param interfaceCelsius the temperature of the wall or the interface, in °C
 * @param diffusivitySquareMetresPerSecond the diffusivity of the solid, in m²/s
 */
public record ExactFreezing(
    double lambda, double interfaceCelsius, double diffusivitySquareMetresPerSecond) {

  private static final double SMALLEST = 1e-12;
  private static final double LARGEST = 26;

  public ExactFreezing {
    CHECK.between(lambda, 0, LARGEST, "growth parameter");
    CHECK.between(interfaceCelsius, -273.15, 1e5, "temperature in °C");
    CHECK.between(diffusivitySquareMetresPerSecond, 1e-18, 1e10, "diffusivity in m²/s");
  }

  /**
   * Returns λ of the one-phase problem.
   *
   * @param stefan the Stefan number c ΔT/L, from 1e-12 to 1e6
   * @return λ
   */
  public static double onePhaseLambda(double stefan) {
    CHECK.between(stefan, 1e-12, 1e6, "Stefan number c ΔT/L");
    double target = stefan / Math.sqrt(Math.PI);
    return Roots.bisect(l -> l * Math.exp(l * l) * Erf.value(l) - target, SMALLEST, LARGEST);
  }

  /**
   * Returns λ of a melt cooled below its melting point that freezes from within.
   *
   * <p>Formula: √π λ exp(λ²) erfc λ = St, which has an answer only below 1.
   *
   * @param stefan the Stefan number c ΔT/L, above 0 and below 1
   * @return λ
   */
  public static double supercooledLambda(double stefan) {
    CHECK.between(stefan, 1e-12, 1 - 1e-6, "Stefan number c ΔT/L");
    return Roots.bisect(l -> Math.sqrt(Math.PI) * l * Erfcx.value(l) - stefan, 0, 1e6);
  }

  /**
   * Returns the freezing of a melt on a wall held at one temperature.
   *
   * @param melt the figures of the melt
   * @param meltCelsius the temperature of the melt, in °C, not below its melting point
   * @param wallCelsius the temperature of the wall, in °C, below it
   * @return the freezing
   * @throws ProblemException if the temperatures are out of order
   */
  public static ExactFreezing onWall(MeltSubstance melt, double meltCelsius, double wallCelsius) {
    double melting = melt.meltingCelsius();
    requireOrder(
        wallCelsius < melting && melting <= meltCelsius, wallCelsius, melting, meltCelsius);
    double lambda =
        Roots.bisect(
            l -> balance(l, melt, meltCelsius, (melting - wallCelsius) / Erf.value(l)),
            SMALLEST,
            LARGEST);
    return new ExactFreezing(lambda, wallCelsius, melt.solid().diffusivity());
  }

  /**
   * Returns the freezing of a melt on a half space of another material.
   *
   * <p>No crust forms if the panel is warm enough; λ is then 0 and the interface that of two bodies
   * that meet.
   *
   * @param melt the figures of the melt
   * @param meltCelsius the temperature of the melt, in °C, not below its melting point
   * @param panel the figures of the panel
   * @param panelCelsius the temperature of the panel, in °C
   * @return the freezing
   * @throws ProblemException if the temperatures are out of order
   */
  public static ExactFreezing onPanel(
      MeltSubstance melt, double meltCelsius, Substance panel, double panelCelsius) {
    double melting = melt.meltingCelsius();
    requireOrder(
        panelCelsius <= meltCelsius && melting <= meltCelsius, panelCelsius, melting, meltCelsius);
    double contact = melt.liquid().contactCelsius(meltCelsius, panel, panelCelsius);
    if (contact >= melting) {
      return new ExactFreezing(0, contact, melt.solid().diffusivity());
    }
    double ratio = melt.solid().effusivity() / panel.effusivity();
    double lambda =
        Roots.bisect(
            l -> balance(l, melt, meltCelsius, (melting - panelCelsius) / (Erf.value(l) + ratio)),
            SMALLEST,
            LARGEST);
    double gradient = (melting - panelCelsius) / (Erf.value(lambda) + ratio);
    return new ExactFreezing(lambda, panelCelsius + ratio * gradient, melt.solid().diffusivity());
  }

  /**
   * Returns the two-phase condition times the drop across the crust: falls with λ, zero at the
   * solution.
   *
   * @param gradient the drop across the crust over erf λ, which stays exact as λ goes to zero
   */
  private static double balance(double l, MeltSubstance melt, double hot, double gradient) {
    double nu = Math.sqrt(melt.solid().diffusivity() / melt.liquid().diffusivity());
    double liquid =
        melt.liquidConductivityWattsPerMetreKelvin()
            / melt.solidConductivityWattsPerMetreKelvin()
            * nu
            * (hot - melt.meltingCelsius())
            / Erfcx.value(nu * l);
    double fusion =
        l
            * Math.sqrt(Math.PI)
            * melt.heat().heatOfFusionJoulesPerKilogram()
            / melt.heat().solidSpecificHeatJoulesPerKilogramKelvin();
    return gradient * Math.exp(-l * l) - liquid - fusion;
  }

  /**
   * Returns the thickness of the crust.
   *
   * @param seconds the time since contact, in s, not negative
   * @return the thickness, in m
   */
  public double crustMetres(double seconds) {
    CHECK.between(seconds, 0, 1e15, "time in s");
    return 2 * lambda * Math.sqrt(diffusivitySquareMetresPerSecond * seconds);
  }

  private static void requireOrder(boolean order, double cold, double melting, double hot) {
    CHECK.between(cold, -273.15, 1e5, "temperature in °C");
    CHECK.between(hot, -273.15, 1e5, "temperature in °C");
    if (!order) {
      throw ThermalProblem.outOfOrder("wall < melting point ≤ melt", cold, melting, hot);
    }
  }
}
