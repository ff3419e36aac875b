// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.exposure;

import static org.meltwright.safety.exposure.ExposureProblem.CHECK;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.meltwright.units.TemperaturePoint;

/**
 * A substance in the air, and what matters of it for ventilation.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Agent turpentine = Agent.vapour("turpentine", 136);
 * turpentine.milligramsPerCubicMetre(100); // 556.2 mg/m³
 * // a millilitre of it, spilt
 * turpentine.vapourLitres(0.86); // 0.1546 l
 * turpentine.dilutingCubicMetres(0.86, 100); // 1.546 m³
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what it is called
 * @param molarMassGrams its molar mass, in g/mol, from 1 to 100 000
 * @param traits what is known of it; an empty set says that nothing of the kind is known
 */
public record Agent(String name, double molarMassGrams, Set<Trait> traits) {

  /** The volume of a mole of gas at 25 °C and one atmosphere, in litres. */
  public static final double LITRES_PER_MOLE = 24.45;

  /** Gas constant, J/(mol K), exact since 2019. */
  private static final double GAS_CONSTANT = 8.31446261815324;

  /** One atmosphere, in Pa. */
  private static final double ATMOSPHERE = 101_325;

  /** What bars dilution as a remedy. */
  public enum Trait {
    /** It causes cancer, or is suspected to. */
    CARCINOGEN,
    /** It is a dust. */
    DUST,
    /** It is a fume or a smoke: fine particles of what was hot. */
    FUME,
    /** It makes allergic: for those who are, no concentration is low enough. */
    SENSITISER
  }

  /** Draws a problem if the molar mass cannot be. */
  public Agent {
    CHECK.between(molarMassGrams, 1, 1e5, "molar mass in g/mol");
    traits = Collections.unmodifiableSet(new TreeSet<>(traits));
  }

  /**
   * Returns a vapour of which nothing that bars dilution is known.
   *
   * @param name what it is called
   * @param molarMassGrams its molar mass in g/mol
   * @return the agent
   */
  public static Agent vapour(String name, double molarMassGrams) {
    return new Agent(name, molarMassGrams, Set.of());
  }

  /**
   * Turns parts per million into milligrams per cubic metre, at 25 °C and one atmosphere.
   *
   * <p>For example, 100 ppm of turpentine (136 g/mol) are 556 mg/m³.
   *
   * @param ppm parts per million by volume, from 0 to 1e6
   * @return mg/m³
   * @throws org.meltwright.units.ProblemException if it is negative or no number
   */
  public double milligramsPerCubicMetre(double ppm) {
    return CHECK.between(ppm, 0, 1e6, "concentration in ppm") * molarMassGrams / LITRES_PER_MOLE;
  }

  /**
   * Turns milligrams per cubic metre into parts per million, at 25 °C and one atmosphere.
   *
   * @param milligramsPerCubicMetre mg/m³, from 0 to 1e9
   * @return parts per million by volume
   * @throws org.meltwright.units.ProblemException if it is negative or no number
   */
  public double partsPerMillion(double milligramsPerCubicMetre) {
    return CHECK.between(milligramsPerCubicMetre, 0, 1e9, "concentration in mg/m³")
        * LITRES_PER_MOLE
        / molarMassGrams;
  }

  /**
   * Returns the vapour of an evaporated mass, at 25 °C and one atmosphere.
   *
   * <p>For example, 0.86 g (1 ml) of turpentine become 0.1546 l of vapour.
   *
   * @param grams the mass that evaporated, in g, from 0 to 1e9
   * @return the volume of the pure vapour, in litres
   * @throws org.meltwright.units.ProblemException if it is negative or no number
   */
  public double vapourLitres(double grams) {
    return requireMass(grams) / molarMassGrams * LITRES_PER_MOLE;
  }

  /**
   * Returns the vapour of an evaporated mass as an ideal gas at a temperature and one atmosphere.
   *
   * <p>For example, 5 g of water at 130 °C become 9.2 l of steam.
   *
   * @param grams the mass that evaporated, in g
   * @param at the temperature
   * @return the volume of the pure vapour, in litres
   */
  public double vapourLitres(double grams, TemperaturePoint at) {
    return requireMass(grams) / molarMassGrams * GAS_CONSTANT * at.kelvin() / ATMOSPHERE * 1000;
  }

  /**
   * Returns the air that thins an evaporated mass down to a concentration, if it mixed evenly.
   *
   * <p>For example, 0.86 g of turpentine need 1.546 m³ to come down to 100 ppm.
   *
   * @param grams the mass that evaporated, in g
   * @param ppm the concentration, in parts per million, above zero
   * @return the volume of air, in m³
   */
  public double dilutingCubicMetres(double grams, double ppm) {
    CHECK.between(ppm, 1e-9, 1e6, "concentration in ppm");
    return vapourLitres(grams) / 1000 / (ppm * 1e-6);
  }

  private static double requireMass(double grams) {
    return CHECK.between(grams, 0, 1e9, "mass in g");
  }
}
