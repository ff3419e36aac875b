// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.core.material.Material;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * An amount of a composition.
 *
 * <p>Immutable and thread-safe.
 *
 * @param composition what it is made of
 * @param massKilograms how much of it there is, in kg, not negative
 */
public record Mixture(Composition composition, double massKilograms) {

  /**
   * Guards the amount.
   *
   * @param composition what it is made of
   * @param massKilograms how much of it there is, in kg
   * @throws ProblemException if the mass is negative or not finite
   */
  public Mixture {
    if (!(massKilograms >= 0 && massKilograms < Double.POSITIVE_INFINITY)) {
      throw new ProblemException(Problem.of(MixtureProblem.AMOUNT, massKilograms + " kg"));
    }
  }

  /**
   * Returns an amount of a composition.
   *
   * @param composition what it is made of
   * @param mass how much of it there is
   * @return the mixture
   * @throws ProblemException if the mass is negative or not finite
   */
  public static Mixture of(Composition composition, Quantity<Mass> mass) {
    return new Mixture(composition, QuantityKind.MASS.toSi(mass));
  }

  /**
   * Returns how much there is.
   *
   * @return the mass, in kilograms
   */
  public Quantity<Mass> mass() {
    return QuantityKind.MASS.ofSi(massKilograms);
  }

  /**
   * Returns how much of a material is in it.
   *
   * @param material the material
   * @return its mass in kg; zero if it is not in the mix
   */
  public double massKilograms(Material material) {
    return massKilograms * composition.massFraction(material).value();
  }
}
