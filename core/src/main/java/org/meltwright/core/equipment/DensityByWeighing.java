// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.units.Density;
import org.meltwright.units.QuantityKind;

/**
 * The density of a solid piece from a balance and some water.
 *
 * <p>For example, a cake of wax floats; with a sinker below it, it pulls 3.4 g upwards in water:
 *
 * <pre>{@code
 * Quantity<Density> cake =
 *     DensityByWeighing.immersed(grams(71.2), grams(-3.4), gramsPerMillilitre(1));
 * QuantityKind.DENSITY.toSi(cake); // 954 kg/m³
 * }</pre>
 *
 * <p>Not instantiable; thread-safe.
 */
public final class DensityByWeighing {

  private DensityByWeighing() {}

  /**
   * Returns the density of what displaces a volume.
   *
   * <p>ρ = m / V. For example, 90.7 g that displace 8 ml have 11.3 g/ml.
   *
   * @param mass its mass, above zero
   * @param displaced the volume it displaces, above zero
   * @return the density
   * @throws org.meltwright.units.ProblemException if mass, volume or density cannot be
   */
  public static Quantity<Density> displaced(Quantity<Mass> mass, Quantity<Volume> displaced) {
    double volume = CHECK.between(displaced, 1e-12, 1e3, "displaced volume");
    return QuantityKind.DENSITY.ofSi(kilograms(mass) / volume);
  }

  /**
   * Returns the density of what was weighed in air and hanging in a liquid.
   *
   * <p>ρ = ρ(liquid) · m / (m − m′). For example, 8.630 g in air and 7.800 g in water of 1.000 g/ml
   * have 10.4 g/ml. What floats needs a sinker; its apparent mass in the liquid is then negative.
   *
   * @param inAir its mass in air, above zero
   * @param inLiquid its apparent mass in the liquid, below that in air; negative for what floats
   *     and is pulled under
   * @param liquid the density of the liquid, above zero
   * @return the density
   * @throws org.meltwright.units.ProblemException if it is not lighter in the liquid
   */
  public static Quantity<Density> immersed(
      Quantity<Mass> inAir, Quantity<Mass> inLiquid, Quantity<Density> liquid) {
    double mass = kilograms(inAir);
    double displaced =
        CHECK.between(
            mass - QuantityKind.MASS.toSi(inLiquid), 1e-12, 1e6, "mass lost in the liquid in kg");
    return QuantityKind.DENSITY.ofSi(QuantityKind.DENSITY.toSi(liquid) * mass / displaced);
  }

  private static double kilograms(Quantity<Mass> mass) {
    return CHECK.between(mass, 1e-9, 1e6, "mass");
  }
}
