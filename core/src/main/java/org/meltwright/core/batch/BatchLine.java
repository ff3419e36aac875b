// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.units.QuantityKind;

/**
 * One line of a batch: an ingredient and how much of it goes in, exactly.
 *
 * <p>Immutable and thread-safe.
 *
 * @param ingredient what goes in
 * @param massKilograms how much of it, in kg, not rounded
 */
public record BatchLine(Ingredient ingredient, double massKilograms) {

  /**
   * Returns how much goes in.
   *
   * @return the mass, in kilograms, not rounded
   */
  public Quantity<Mass> mass() {
    return QuantityKind.MASS.ofSi(massKilograms);
  }
}
