// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.setting;

import static org.meltwright.core.thermal.setting.Substance.CHECK;

import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.Erfcx;
import org.apache.commons.numbers.gamma.InverseErf;
import org.meltwright.core.numeric.Roots;

/**
 * Exact solutions for bodies that cool without freezing.
 *
 * <p>Three lengths go by the name of Biot's number; each method says which it takes. Results are
 * shares of the step: 1 where nothing has happened yet, 0 at the surroundings' temperature, unless
 * said otherwise.
 *
 * <p>Not instantiable; thread-safe.
 */
final class Conduction {

  /** The Biot number, on volume over area, up to which a body may count as one temperature. */
  public static final double LUMPED_LIMIT = 0.1;

  private static final int TERMS = 200;
  private static final double NEGLIGIBLE = 1e-17;

  private Conduction() {}

  /**
   * Returns the Biot number Bi = h L/k.
   *
   * @param heatTransferWattsPerSquareMetreKelvin h, in W/(m² K)
   * @param lengthMetres L, in m: volume over area for the lumped formula, half thickness for a slab
   * @param conductivityWattsPerMetreKelvin k, in W/(m K)
   * @return the Biot number; 0.5 for a slab of 25 mm with h = 10 on both sides, k = 0.25
   */
  public static double biot(
      double heatTransferWattsPerSquareMetreKelvin,
      double lengthMetres,
      double conductivityWattsPerMetreKelvin) {
    CHECK.between(
        heatTransferWattsPerSquareMetreKelvin, 0, 1e7, "heat transfer coefficient in W/(m² K)");
    CHECK.between(lengthMetres, 1e-9, 1e4, "length in m");
    CHECK.between(conductivityWattsPerMetreKelvin, 1e-6, 1e6, "conductivity in W/(m K)");
    return heatTransferWattsPerSquareMetreKelvin * lengthMetres / conductivityWattsPerMetreKelvin;
  }

  /**
   * Returns what is left of a step of temperature in a body of one temperature throughout.
   *
   * <p>Formula: θ = exp(−t/τ), τ = ρ c (V/A)/h. A steel ball of 25.4 mm radius at 699.9 K in gas at
   * 394.3 K with h = 11.36 W/(m² K) is at 474.6 K after an hour.
   *
   * @param seconds the time, in s, not negative
   * @param timeConstantSeconds τ, in s, above zero
   * @param biot the Biot number on volume over area
   * @return the share left
   * @throws IllegalArgumentException if the Biot number exceeds {@link #LUMPED_LIMIT}
   */
  public static double lumped(double seconds, double timeConstantSeconds, double biot) {
    CHECK.between(seconds, 0, 1e15, "time in s");
    CHECK.between(timeConstantSeconds, 1e-12, 1e15, "time constant in s");
    requireLumped(biot);
    return Math.exp(-seconds / timeConstantSeconds);
  }

  /**
   * Returns the time after which a share of a step is left in a body of one temperature throughout.
   *
   * @param share the share left, above 0 up to 1
   * @param timeConstantSeconds the time constant, in s, above zero
   * @param biot the Biot number on volume over area
   * @return the time, in s
   * @throws IllegalArgumentException if the Biot number exceeds {@link #LUMPED_LIMIT}
   */
  public static double lumpedSeconds(double share, double timeConstantSeconds, double biot) {
    CHECK.between(share, Double.MIN_NORMAL, 1, "share of the step");
    CHECK.between(timeConstantSeconds, 1e-12, 1e15, "time constant in s");
    requireLumped(biot);
    return -timeConstantSeconds * Math.log(share);
  }

  private static void requireLumped(double biot) {
    if (!(biot <= LUMPED_LIMIT)) {
      throw new IllegalArgumentException("too thick to have one temperature: Bi = " + biot);
    }
  }

  /**
   * Returns what is left of a step at the centre of a slab that is cooled on both sides.
   *
   * <p>Formula: θ = Σ 4 sin z/(2z + sin 2z) exp(−z² Fo), z tan z = Bi. For example, Bi = 0.5 and Fo
   * = 1 leave 0.6984.
   *
   * @param biot the Biot number on the half thickness, above zero
   * @param fourier the Fourier number α t/a² on the half thickness a, above zero
   * @return the share left at the centre
   */
  public static double slabCentre(double biot, double fourier) {
    CHECK.between(biot, 1e-9, 1e9, "Biot number");
    CHECK.between(fourier, 1e-4, 1e9, "Fourier number");
    double sum = 0;
    for (int n = 0; n < TERMS; n++) {
      double start = n * Math.PI;
      double root =
          Roots.bisect(z -> z * Math.sin(z) - biot * Math.cos(z), start, start + Math.PI / 2);
      double term =
          4 * Math.sin(root) / (2 * root + Math.sin(2 * root)) * Math.exp(-root * root * fourier);
      sum += term;
      if (Math.abs(term) < NEGLIGIBLE) {
        break;
      }
    }
    return sum;
  }

  /**
   * Returns what is left of a step inside a half space whose surface was brought to a temperature
   * at once.
   *
   * <p>Formula: θ = erf(x/(2 √(α t))).
   *
   * @param depthMetres x, in m, not negative
   * @param diffusivitySquareMetresPerSecond α, in m²/s, above zero
   * @param seconds t, in s, above zero
   * @return the share left: 1 deep inside, 0 at the surface
   */
  public static double halfSpace(
      double depthMetres, double diffusivitySquareMetresPerSecond, double seconds) {
    return Erf.value(reach(depthMetres, diffusivitySquareMetresPerSecond, seconds));
  }

  /**
   * Returns the depth in a half space at which a share of a step is left.
   *
   * @param share the share left, from 0 to below 1
   * @param diffusivitySquareMetresPerSecond α, in m²/s, above zero
   * @param seconds t, in s, above zero
   * @return the depth, in m
   */
  public static double halfSpaceDepth(
      double share, double diffusivitySquareMetresPerSecond, double seconds) {
    CHECK.between(share, 0, Math.nextDown(1.0), "share of the step");
    reach(0, diffusivitySquareMetresPerSecond, seconds);
    return 2 * Math.sqrt(diffusivitySquareMetresPerSecond * seconds) * InverseErf.value(share);
  }

  /**
   * Returns what is left of a step inside a half space that air cools.
   *
   * <p>Formula: 1 − θ = erfc(ξ) − exp(h x/k + h² α t/k²) erfc(ξ + h √(α t)/k), ξ = x/(2 √(α t)).
   *
   * @param depthMetres x, in m, not negative
   * @param diffusivitySquareMetresPerSecond α, in m²/s, above zero
   * @param seconds t, in s, above zero
   * @param heatTransferOverConductivityPerMetre h/k, in 1/m, not negative
   * @return the share left
   */
  public static double halfSpaceInAir(
      double depthMetres,
      double diffusivitySquareMetresPerSecond,
      double seconds,
      double heatTransferOverConductivityPerMetre) {
    CHECK.between(heatTransferOverConductivityPerMetre, 0, 1e12, "h/k in 1/m");
    double xi = reach(depthMetres, diffusivitySquareMetresPerSecond, seconds);
    double eta =
        heatTransferOverConductivityPerMetre
            * Math.sqrt(diffusivitySquareMetresPerSecond * seconds);
    // exp(hx/k + η²) erfc(ξ + η) = exp(−ξ²) erfcx(ξ + η): no overflow times underflow
    return 1 - Erfc.value(xi) + Math.exp(-xi * xi) * Erfcx.value(xi + eta);
  }

  private static double reach(
      double depthMetres, double diffusivitySquareMetresPerSecond, double seconds) {
    CHECK.between(depthMetres, 0, 1e6, "depth in m");
    CHECK.between(diffusivitySquareMetresPerSecond, 1e-15, 1e3, "diffusivity in m²/s");
    CHECK.between(seconds, 1e-15, 1e15, "time in s");
    return depthMetres / (2 * Math.sqrt(diffusivitySquareMetresPerSecond * seconds));
  }
}
