// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.thermal.melting;

import static org.meltwright.core.thermal.melting.SolubilityAssumptions.CHECK;

import java.util.function.DoubleUnaryOperator;
import org.meltwright.core.numeric.Roots;

/**
 * The ideal solubility of a crystalline solid in a melt, after Schröder and van Laar.
 *
 * <p>Formula: ln x = −(ΔH/R)(1/T − 1/Tm).
 *
 * <p>Symbols: x mole fraction in the melt [–], ΔH molar heat of fusion [J/mol], R = 8.314462618
 * J/(mol K), T temperature [K], Tm melting point of the pure solid [K].
 *
 * <p>Valid for an ideal melt and pure, crystalline, chemically similar solids: two waxes of
 * different chain length as a limit. Not valid for solid solutions, for resins, which have no
 * crystals, and for salts: for common salt in water at 20 °C it gives 0.00012 where 0.1 is
 * measured.
 *
 * <p>For example, naphthalene (18.8 kJ/mol, 353.4 K) dissolves at 298.15 K up to x = 0.3055.
 *
 * <p>The same in code, and back again: at that mole fraction the last crystals vanish at 298.15 K.
 *
 * <pre>{@code
 * double share = IdealSolubility.moleFraction(18_800, 353.4, 298.15); // 0.3055
 * IdealSolubility.liquidusKelvin(share, 18_800, 353.4); // 298.15 K
 * IdealSolubility.eutecticKelvin(18_800, 353.4, 9_870, 278.7); // 269.44 K, with benzene
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class IdealSolubility {

  /** The molar gas constant, in J/(mol K), exact to the digits shown. */
  public static final double GAS_CONSTANT = 8.314462618;

  private static final double COLDEST = 1;

  private IdealSolubility() {}

  /**
   * Returns the mole fraction that a melt holds before crystals appear.
   *
   * @param heatOfFusionJoulesPerMole the molar heat of fusion, in J/mol, above zero
   * @param meltingKelvin the melting point of the pure solid, in K
   * @param kelvin the temperature, in K, above zero
   * @return the mole fraction, 1 at and above the melting point
   */
  public static double moleFraction(
      double heatOfFusionJoulesPerMole, double meltingKelvin, double kelvin) {
    guard(heatOfFusionJoulesPerMole, meltingKelvin);
    CHECK.between(kelvin, COLDEST, 1e5, "temperature in K");
    return Math.min(
        1, Math.exp(-heatOfFusionJoulesPerMole / GAS_CONSTANT * (1 / kelvin - 1 / meltingKelvin)));
  }

  /**
   * Returns the temperature at which the last crystals of a solid vanish.
   *
   * @param moleFraction the mole fraction of the solid's substance in the melt, above 0 up to 1
   * @param heatOfFusionJoulesPerMole the molar heat of fusion, in J/mol, above zero
   * @param meltingKelvin the melting point of the pure solid, in K
   * @return the liquidus temperature, in K, not above the melting point
   */
  public static double liquidusKelvin(
      double moleFraction, double heatOfFusionJoulesPerMole, double meltingKelvin) {
    guard(heatOfFusionJoulesPerMole, meltingKelvin);
    CHECK.between(moleFraction, Double.MIN_NORMAL, 1, "mole fraction");
    return 1
        / (1 / meltingKelvin - GAS_CONSTANT * Math.log(moleFraction) / heatOfFusionJoulesPerMole);
  }

  /**
   * Returns the temperature at which two solids and their melt stand together: where the two mole
   * fractions sum to one.
   *
   * <p>For example, naphthalene (18.8 kJ/mol, 353.4 K) and benzene (9.87 kJ/mol, 278.7 K) meet at
   * 269.44 K.
   *
   * @param firstHeatJoulesPerMole the molar heat of fusion of the first solid, in J/mol
   * @param firstKelvin its melting point, in K
   * @param secondHeatJoulesPerMole the molar heat of fusion of the second solid, in J/mol
   * @param secondKelvin its melting point, in K
   * @return the eutectic temperature, in K, below both melting points
   * @throws org.meltwright.units.ProblemException if a figure cannot be, or the heats are so small
   *     that the two do not meet above 1 K
   */
  public static double eutecticKelvin(
      double firstHeatJoulesPerMole,
      double firstKelvin,
      double secondHeatJoulesPerMole,
      double secondKelvin) {
    DoubleUnaryOperator sum =
        t ->
            moleFraction(firstHeatJoulesPerMole, firstKelvin, t)
                + moleFraction(secondHeatJoulesPerMole, secondKelvin, t);
    CHECK.between(
        sum.applyAsDouble(COLDEST), 0, Math.nextDown(1.0), "sum of the mole fractions at 1 K");
    return Roots.bisect(
        t -> sum.applyAsDouble(t) - 1, COLDEST, Math.min(firstKelvin, secondKelvin));
  }

  private static void guard(double heatOfFusionJoulesPerMole, double meltingKelvin) {
    CHECK.between(heatOfFusionJoulesPerMole, 1, 1e9, "molar heat of fusion in J/mol");
    CHECK.between(meltingKelvin, COLDEST, 1e5, "melting point in K");
  }
}
