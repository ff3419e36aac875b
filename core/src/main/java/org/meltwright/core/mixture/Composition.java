// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What a mix is made of: materials and their shares by mass, which sum to one.
 *
 * <p>Immutable and thread-safe. The order of the materials is that in which they were given.
 */
public final class Composition {

  private final List<Material> materials;
  private final double[] massFractions;

  /**
   * Returns the composition of one material only.
   *
   * @param material the material
   * @return its composition
   */
  public static Composition of(Material material) {
    return new Composition(List.of(material), new double[] {1});
  }

  /**
   * Returns the composition with parts by mass, in any common unit.
   *
   * <p>For example, parts 1 and 8 become shares of 1/9 and 8/9.
   *
   * @param parts the parts of each material, not negative; order is kept
   * @return the composition
   * @throws ProblemException if a part is negative or not finite, or no part is above zero
   */
  public static Composition ofParts(Map<Material, Double> parts) {
    double[] masses = parts.values().stream().mapToDouble(Double::doubleValue).toArray();
    double total = 0;
    for (double mass : masses) {
      if (!(mass >= 0 && mass < Double.POSITIVE_INFINITY)) {
        throw new ProblemException(Problem.of(MixtureProblem.AMOUNT, Double.toString(mass)));
      }
      total += mass;
    }
    if (!(total > 0 && total < Double.POSITIVE_INFINITY)) {
      throw new ProblemException(Problem.of(MixtureProblem.NO_PARTS, Double.toString(total)));
    }
    double sum = total;
    return new Composition(
        List.copyOf(parts.keySet()), Arrays.stream(masses).map(m -> m / sum).toArray());
  }

  private Composition(List<Material> materials, double[] massFractions) {
    this.materials = materials;
    this.massFractions = massFractions;
  }

  /**
   * Returns the materials.
   *
   * @return the materials, in the order given
   */
  public List<Material> materials() {
    return materials;
  }

  /**
   * Returns the number of materials.
   *
   * @return the number, at least one
   */
  public int size() {
    return massFractions.length;
  }

  /**
   * Returns the share of the material at a place.
   *
   * @param index the place, from zero
   * @return its share by mass, from 0 to 1
   */
  public double massFractionValue(int index) {
    return massFractions[index];
  }

  /**
   * Returns the share of a material.
   *
   * @param material the material
   * @return its share by mass; zero if it is not in the mix
   */
  public MassFraction massFraction(Material material) {
    int index = materials.indexOf(material);
    return index < 0 ? MassFraction.ZERO : MassFraction.of(massFractions[index]);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Composition that
        && materials.equals(that.materials)
        && Arrays.equals(massFractions, that.massFractions);
  }

  @Override
  public int hashCode() {
    return materials.hashCode() * 31 + Arrays.hashCode(massFractions);
  }

  @Override
  public String toString() {
    return materials + " " + Arrays.toString(massFractions);
  }
}
