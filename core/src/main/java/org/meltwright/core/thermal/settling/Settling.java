// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import static org.meltwright.core.thermal.settling.MeltBath.CHECK;

import org.meltwright.core.numeric.Roots;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * How fast particles settle in a melt, and how soon a share of them is lost.
 *
 * <p>Formula (Stokes): v = (ρp − ρf) g d²/(18 μ); crowded: times (1 − φ)ⁿ.
 *
 * <p>Symbols: v velocity, down positive [m/s]; ρp and ρf density of particle and melt [kg/m³]; g
 * gravity, 9.80665 m/s²; d diameter of what settles as one piece: the agglomerate, not the grain
 * [m]; μ viscosity of the melt alone [Pa s]; φ volume fraction [–]; n 4.65, or 5.6 for particles
 * that diffuse [–].
 *
 * <p>Valid for Reynolds numbers ρf v d/μ below 0.1; {@link #terminalVelocity} goes on to 800.
 * Choose the hindrance or the viscosity of the suspension, not both: each counts the crowding.
 *
 * <p>Source: Stokes; Richardson and Zaki (exponent 4.65); Schiller and Naumann (remembered). For
 * example, a piece of 1 µm and 5100 kg/m³ in a melt of 820 kg/m³ and 12 mPa s falls 0.70 mm an
 * hour; one of 20 µm 280 mm.
 *
 * <p>The same in code, and how long until a tenth has left the top 5 mm:
 *
 * <pre>{@code
 * double grain = Settling.stokesVelocity(1e-6, 5100 - 820, 0.012);
 * grain * 3.6e6; // 0.70 mm an hour
 * Settling.quietSeconds(0.1, 0.005, grain) / 60; // 43 minutes
 * double flock = Settling.stokesVelocity(20e-6, 5100 - 820, 0.012);
 * Settling.quietSeconds(0.1, 0.005, flock); // 6 s
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class Settling {

  /** Standard gravity, in m/s². */
  public static final double GRAVITY = 9.80665;

  /** The exponent of Richardson and Zaki for particles that do not diffuse. */
  public static final double HINDRANCE_EXPONENT = 4.65;

  /** Boltzmann's constant, in J/K. */
  private static final double BOLTZMANN = 1.380649e-23;

  private static final double SUM_SLACK = 1e-6;
  private static final double HIGHEST_REYNOLDS = 800;

  private Settling() {}

  /**
   * Returns the settling velocity after Stokes, alone in the melt.
   *
   * @param diameterMetres d, in m
   * @param excessDensityKilogramsPerCubicMetre ρp − ρf, in kg/m³; negative for what floats
   * @param viscosityPascalSeconds μ, in Pa s
   * @return v, in m/s; negative for what floats
   */
  public static double stokesVelocity(
      double diameterMetres,
      double excessDensityKilogramsPerCubicMetre,
      double viscosityPascalSeconds) {
    guard(diameterMetres, excessDensityKilogramsPerCubicMetre, viscosityPascalSeconds);
    return excessDensityKilogramsPerCubicMetre
        * GRAVITY
        * diameterMetres
        * diameterMetres
        / (18 * viscosityPascalSeconds);
  }

  /**
   * Returns the diameter that settles at a velocity after Stokes.
   *
   * @param velocityMetresPerSecond v, in m/s, above zero
   * @param excessDensityKilogramsPerCubicMetre ρp − ρf, in kg/m³, above zero
   * @param viscosityPascalSeconds μ, in Pa s
   * @return d, in m
   */
  public static double stokesDiameter(
      double velocityMetresPerSecond,
      double excessDensityKilogramsPerCubicMetre,
      double viscosityPascalSeconds) {
    CHECK.between(velocityMetresPerSecond, 1e-30, 1e3, "velocity in m/s");
    CHECK.between(excessDensityKilogramsPerCubicMetre, 1e-9, 1e5, "excess density in kg/m³");
    guard(1e-6, excessDensityKilogramsPerCubicMetre, viscosityPascalSeconds);
    return Math.sqrt(
        18
            * viscosityPascalSeconds
            * velocityMetresPerSecond
            / (excessDensityKilogramsPerCubicMetre * GRAVITY));
  }

  /**
   * Returns the settling velocity with drag beyond Stokes: Cd = 24/Re (1 + 0.15 Re^0.687).
   *
   * @param diameterMetres d, in m
   * @param excessDensityKilogramsPerCubicMetre ρp − ρf, in kg/m³, not negative
   * @param meltDensityKilogramsPerCubicMetre ρf, in kg/m³, above zero
   * @param viscosityPascalSeconds μ, in Pa s
   * @return v, in m/s
   * @throws org.meltwright.units.ProblemException if a figure cannot be or the Reynolds number
   *     exceeds 800, where the drag law ends
   */
  public static double terminalVelocity(
      double diameterMetres,
      double excessDensityKilogramsPerCubicMetre,
      double meltDensityKilogramsPerCubicMetre,
      double viscosityPascalSeconds) {
    CHECK.between(excessDensityKilogramsPerCubicMetre, 0, 1e5, "excess density in kg/m³");
    CHECK.between(meltDensityKilogramsPerCubicMetre, 1e-3, 1e5, "density of the melt in kg/m³");
    double stokes =
        stokesVelocity(diameterMetres, excessDensityKilogramsPerCubicMetre, viscosityPascalSeconds);
    double reynoldsPerVelocity =
        meltDensityKilogramsPerCubicMetre * diameterMetres / viscosityPascalSeconds;
    double velocityMetresPerSecond =
        Roots.bisect(
            v -> v * (1 + 0.15 * Math.pow(reynoldsPerVelocity * v, 0.687)) - stokes, 0, stokes);
    CHECK.between(
        reynoldsPerVelocity * velocityMetresPerSecond, 0, HIGHEST_REYNOLDS, "Reynolds number");
    return velocityMetresPerSecond;
  }

  /**
   * Returns what crowding leaves of a velocity.
   *
   * @param particles the volume fraction φ
   * @param exponent n, from 1 to 10
   * @return (1 − φ)ⁿ; 0.9103 for 2 % with 4.65
   */
  public static double hindrance(VolumeFraction particles, double exponent) {
    CHECK.between(exponent, 1, 10, "exponent of the hindrance");
    return Math.pow(1 - particles.value(), exponent);
  }

  /**
   * Returns the time until a share of the particles has left the top layer of a quiet pot.
   *
   * <p>Formula: t = x δ/v: the clear front sinks.
   *
   * @param share x, from 0 to 1
   * @param layerMetres the depth δ that is used from, in m
   * @param velocityMetresPerSecond v, in m/s
   * @return the time, in s; infinite for what does not settle
   */
  public static double quietSeconds(
      double share, double layerMetres, double velocityMetresPerSecond) {
    CHECK.between(share, 0, 1, "share lost");
    CHECK.between(layerMetres, 1e-9, 1e3, "depth of the layer in m");
    CHECK.finite(velocityMetresPerSecond, "velocity in m/s");
    return velocityMetresPerSecond > 0
        ? share * layerMetres / velocityMetresPerSecond
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the time until a share of the particles has settled out of a pot that convection keeps
   * mixed.
   *
   * <p>Formula: t = −(h/v) ln(1 − x). The usual case on a plate: currents of mm/s against settling
   * of µm/s. For example, 10 % of 50 mm at 1 µm/s take 5268 s.
   *
   * @param share x, from 0 to below 1
   * @param depthMetres the depth h of the melt, in m
   * @param velocityMetresPerSecond v, in m/s
   * @return the time, in s; infinite for what does not settle
   */
  public static double convectingSeconds(
      double share, double depthMetres, double velocityMetresPerSecond) {
    CHECK.between(share, 0, Math.nextDown(1.0), "share lost");
    CHECK.between(depthMetres, 1e-9, 1e3, "depth of the melt in m");
    CHECK.finite(velocityMetresPerSecond, "velocity in m/s");
    return velocityMetresPerSecond > 0
        ? -depthMetres / velocityMetresPerSecond * Math.log1p(-share)
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the share of a mix of sizes that has left the top layer of a quiet pot.
   *
   * <p>Formula: Σ wᵢ min(1, vᵢ t/δ).
   *
   * @param massFractions the share wᵢ of each size class; they sum to one
   * @param velocitiesMetresPerSecond the velocity vᵢ of each class, in m/s, in the same order
   * @param layerMetres the depth δ, in m
   * @param seconds the time, in s, not negative
   * @return the share lost, from 0 to 1
   * @throws org.meltwright.units.ProblemException if the two arrays differ in length, a figure
   *     cannot be or the shares do not sum to one
   */
  public static double quietLoss(
      double[] massFractions,
      double[] velocitiesMetresPerSecond,
      double layerMetres,
      double seconds) {
    int count = massFractions.length;
    CHECK.between(velocitiesMetresPerSecond.length, count, count, "number of velocities");
    CHECK.between(layerMetres, 1e-9, 1e3, "depth of the layer in m");
    CHECK.between(seconds, 0, 1e15, "time in s");
    double all = 0;
    double lost = 0;
    for (int i = 0; i < velocitiesMetresPerSecond.length; i++) {
      double share = CHECK.between(massFractions[i], 0, 1, "share of a size class");
      double velocityMetresPerSecond =
          CHECK.finite(velocitiesMetresPerSecond[i], "velocity in m/s");
      all += share;
      lost += share * Math.min(1, Math.max(0, velocityMetresPerSecond) * seconds / layerMetres);
    }
    CHECK.between(all, 1 - SUM_SLACK, 1 + SUM_SLACK, "sum of the size classes");
    return Math.min(1, lost);
  }

  /**
   * Returns how much settling outweighs diffusion: Pe = v h/D, D = k T/(3π μ d).
   *
   * @param diameterMetres d, in m
   * @param velocityMetresPerSecond v, in m/s
   * @param depthMetres h, in m
   * @param viscosityPascalSeconds μ, in Pa s
   * @param temperature T
   * @return the Péclet number
   */
  public static double peclet(
      double diameterMetres,
      double velocityMetresPerSecond,
      double depthMetres,
      double viscosityPascalSeconds,
      TemperaturePoint temperature) {
    guard(diameterMetres, 0, viscosityPascalSeconds);
    CHECK.finite(velocityMetresPerSecond, "velocity in m/s");
    CHECK.between(depthMetres, 1e-9, 1e3, "depth of the melt in m");
    CHECK.between(temperature.kelvin(), 1, 1e5, "temperature in K");
    double diffusion =
        BOLTZMANN * temperature.kelvin() / (3 * Math.PI * viscosityPascalSeconds * diameterMetres);
    return velocityMetresPerSecond * depthMetres / diffusion;
  }

  /**
   * Returns the largest diameter that never settles: diffusion holds it up over the whole depth.
   *
   * <p>Formula: d = (6 k T/(π Δρ g h))^(1/3); 18 nm for Δρ 3380 and 50 mm.
   *
   * @param excessDensityKilogramsPerCubicMetre Δρ = ρp − ρf, in kg/m³, above zero
   * @param depthMetres h, in m
   * @param temperature T
   * @return d, in m
   */
  public static double suspendedDiameter(
      double excessDensityKilogramsPerCubicMetre,
      double depthMetres,
      TemperaturePoint temperature) {
    CHECK.between(depthMetres, 1e-9, 1e3, "depth of the melt in m");
    return Math.cbrt(heldUp(excessDensityKilogramsPerCubicMetre, temperature) / depthMetres);
  }

  /**
   * Returns the diameter that diffusion lifts by just its own size.
   *
   * <p>Formula: d = (6 k T/(π Δρ g))^(1/4); 0.728 µm for Δρ 3380 at 80 °C.
   *
   * @param excessDensityKilogramsPerCubicMetre Δρ = ρp − ρf, in kg/m³, above zero
   * @param temperature T
   * @return d, in m
   */
  public static double diffusingDiameter(
      double excessDensityKilogramsPerCubicMetre, TemperaturePoint temperature) {
    return Math.sqrt(Math.sqrt(heldUp(excessDensityKilogramsPerCubicMetre, temperature)));
  }

  private static double heldUp(
      double excessDensityKilogramsPerCubicMetre, TemperaturePoint temperature) {
    CHECK.between(excessDensityKilogramsPerCubicMetre, 1e-9, 1e5, "excess density in kg/m³");
    return 6
        * BOLTZMANN
        * temperature.kelvin()
        / (Math.PI * excessDensityKilogramsPerCubicMetre * GRAVITY);
  }

  static void guard(
      double diameterMetres,
      double excessDensityKilogramsPerCubicMetre,
      double viscosityPascalSeconds) {
    CHECK.between(diameterMetres, 1e-10, 1, "diameter in m");
    CHECK.between(excessDensityKilogramsPerCubicMetre, -1e5, 1e5, "excess density in kg/m³");
    CHECK.between(viscosityPascalSeconds, 1e-9, 1e9, "viscosity in Pa s");
  }
}
