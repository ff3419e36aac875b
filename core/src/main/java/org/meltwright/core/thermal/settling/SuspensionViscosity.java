// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.settling;

import static org.meltwright.core.thermal.settling.MeltBath.CHECK;

import org.meltwright.units.VolumeFraction;

/**
 * How much particles thicken a melt, as a factor on its viscosity.
 *
 * <p>Dilute: 1 + 2.5 φ, valid up to φ = 0.02. Concentrated (Krieger and Dougherty): (1 −
 * φ/φm)^(−[η] φm).
 *
 * <p>Symbols: φ volume fraction [–], φm closest packing, 0.6–0.64 for spheres and less for needles
 * and flocs [–], [η] intrinsic viscosity, 2.5 for spheres [–].
 *
 * <p>For how the mix flows, never inside a settling velocity: the hindrance there counts the
 * crowding already.
 *
 * <p>One per cent of pigment hardly thickens a melt, thirty do:
 *
 * <pre>{@code
 * SuspensionViscosity.dilute(VolumeFraction.of(0.01)); // 1.025
 * VolumeFraction packed = VolumeFraction.of(0.64);
 * SuspensionViscosity.concentrated(VolumeFraction.of(0.1), packed, 2.5); // 1.3124
 * SuspensionViscosity.concentrated(VolumeFraction.of(0.3), packed, 2.5); // 2.75
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class SuspensionViscosity {

  private static final double DILUTE = 0.02;

  private SuspensionViscosity() {}

  /**
   * Returns the factor of a dilute suspension, after Einstein.
   *
   * @param particles the volume fraction of the particles, up to 0.02
   * @return the factor; 1.025 for 1 %
   * @throws org.meltwright.units.ProblemException if there are more particles
   */
  public static double dilute(VolumeFraction particles) {
    return 1
        + 2.5
            * CHECK.between(particles.value(), 0, DILUTE, "volume fraction of a dilute suspension");
  }

  /**
   * Returns the factor of a suspension, after Krieger and Dougherty.
   *
   * @param particles the volume fraction of the particles, below the closest packing
   * @param closestPacking φm, above 0
   * @param intrinsicViscosity [η], above 0
   * @return the factor; 1.3124 for 10 % with φm 0.64 and [η] 2.5
   * @throws org.meltwright.units.ProblemException if the particles reach their closest packing
   */
  public static double concentrated(
      VolumeFraction particles, VolumeFraction closestPacking, double intrinsicViscosity) {
    double packing = CHECK.between(closestPacking.value(), 1e-3, 1, "packing");
    CHECK.between(intrinsicViscosity, 1e-3, 1e3, "intrinsic viscosity");
    double share =
        CHECK.between(
            particles.value(), 0, Math.nextDown(packing), "volume fraction of the particles");
    return Math.pow(1 - share / packing, -intrinsicViscosity * packing);
  }
}
