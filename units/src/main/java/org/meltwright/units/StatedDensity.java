// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Objects;
import javax.measure.Quantity;

/**
 * A density and the state it belongs to, such as 0.55 g/ml bulk.
 *
 * <p>For example:
 *
 * <pre>{@code
 * StatedDensity bulk = QuantityParser.localeFree().parseStatedDensity("0.55 g/ml bulk");
 * bulk; // 550.0 kg/m³ bulk
 * // a level scoop of 15 ml
 * double kilograms = bulk.kilogramsPerCubicMetre() * 15e-6; // 0.00825 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param kilogramsPerCubicMetre the density in kg/m³, above zero
 * @param state the state
 */
public record StatedDensity(double kilogramsPerCubicMetre, MaterialState state) {

  private static final double MOST = 1e6;

  /** Draws a problem if the density is not above zero and at most a million kg/m³. */
  public StatedDensity {
    UnitsProblem.CHECK.between(kilogramsPerCubicMetre, Double.MIN_NORMAL, MOST, "density in kg/m³");
    Objects.requireNonNull(state, "state");
  }

  /** {@return the density, in kg/m³} */
  public Quantity<Density> density() {
    return QuantityKind.DENSITY.ofSi(kilogramsPerCubicMetre);
  }

  /**
   * Returns the density with its state word, locale-free.
   *
   * <p>In thirteen digits, for reading; {@link QuantityFormatter#exact} keeps every bit.
   *
   * @return for example "550.0 kg/m³ bulk"
   */
  @Override
  public String toString() {
    return Shown.number(kilogramsPerCubicMetre) + " kg/m³ " + state.word();
  }
}
