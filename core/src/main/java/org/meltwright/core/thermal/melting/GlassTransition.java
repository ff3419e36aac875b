// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import static org.meltwright.core.thermal.melting.SolubilityAssumptions.CHECK;

/**
 * The glass transition of a compatible blend of two amorphous components, such as two resins.
 *
 * <p>Fox: 1/Tg = w/T1 + (1 − w)/T2. Gordon and Taylor: Tg = (w T1 + k (1 − w) T2)/(w + k (1 − w));
 * k = T1/T2 gives Fox, k = 1 a straight line.
 *
 * <p>Symbols: w mass fraction of the first [–], T1 and T2 glass transitions of the components [K],
 * k fitted to measurements [–].
 *
 * <p>Valid for one amorphous phase. Not valid where a component crystallises: a resin in a wax has
 * no blended melting point. For example, 50/50 of 373 and 378 K gives 375.48 K.
 *
 * <p>The same in code; a straight line lies a hair above it, and k = T1/T2 gives Fox again:
 *
 * <pre>{@code
 * GlassTransition.foxKelvin(0.5, 373, 378); // 375.48 K
 * GlassTransition.gordonTaylorKelvin(0.5, 373, 378, 1); // 375.50 K
 * GlassTransition.gordonTaylorKelvin(0.5, 373, 378, 373.0 / 378); // 375.48 K
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class GlassTransition {

  private GlassTransition() {}

  /**
   * Returns the glass transition after Fox.
   *
   * @param firstShare the mass fraction of the first component, from 0 to 1
   * @param firstKelvin its glass transition, in K
   * @param secondKelvin that of the other, in K
   * @return the glass transition of the blend, in K
   */
  public static double foxKelvin(double firstShare, double firstKelvin, double secondKelvin) {
    guard(firstShare, firstKelvin, secondKelvin);
    return 1 / (firstShare / firstKelvin + (1 - firstShare) / secondKelvin);
  }

  /**
   * Returns the glass transition after Gordon and Taylor.
   *
   * @param firstShare the mass fraction of the first component, from 0 to 1
   * @param firstKelvin its glass transition, in K
   * @param secondKelvin that of the other, in K
   * @param constant the constant k of the pair, above zero
   * @return the glass transition of the blend, in K
   */
  public static double gordonTaylorKelvin(
      double firstShare, double firstKelvin, double secondKelvin, double constant) {
    guard(firstShare, firstKelvin, secondKelvin);
    CHECK.between(constant, 1e-6, 1e6, "constant of the pair");
    double weight = constant * (1 - firstShare);
    return (firstShare * firstKelvin + weight * secondKelvin) / (firstShare + weight);
  }

  private static void guard(double firstShare, double firstKelvin, double secondKelvin) {
    CHECK.between(firstShare, 0, 1, "mass fraction");
    CHECK.between(firstKelvin, 1, 1e5, "glass transition in K");
    CHECK.between(secondKelvin, 1, 1e5, "glass transition in K");
  }
}
