// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.units.Limit;

/**
 * The largest amount of a composition that what is on the shelf allows, and what runs out first.
 *
 * <p>For example, medium at 1 : 8 from 200 g of resin and 2 kg of wax:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
 * LargestBatch most = LargestBatch.of(medium, List.of(resin, wax), 0.2, 2.0);
 * most.mixture().massKilograms(); // 1.8 kg
 * most.runsOut(); // [damar]
 * most.leftKilograms(wax); // 0.4 kg
 * }</pre>
 *
 * <p>What the shelf holds of a material adds up, whatever the lots and versions; where the
 * composition names a lot, that lot alone serves. What stands first on the shelf is taken first.
 *
 * <p>Immutable and thread-safe.
 */
public final class LargestBatch {

  private final Mixture mixture;
  private final List<Material> shelf;
  private final double[] left;
  private final List<Material> runsOut;

  /**
   * Returns the largest amount of a composition.
   *
   * @param composition what is to be made
   * @param shelf the materials that are there; what is not named is not there
   * @param kilograms how much there is of each, in the order of the shelf, in kg
   * @return the largest amount; nothing if a material is missing
   * @throws org.meltwright.units.ProblemException if there are not as many amounts as materials, or
   *     an amount is negative or not finite
   */
  public static LargestBatch of(
      Composition composition, List<Material> shelf, double... kilograms) {
    Composition.requireSameCount(shelf.size(), kilograms.length);
    for (double amount : kilograms) {
      Amounts.require(amount, "kg");
    }
    double most = Double.POSITIVE_INFINITY;
    for (int line : called(composition)) {
      Material asked = composition.materials().get(line);
      most = Math.min(most, sum(shelf, kilograms, asked) / composition.massFractionValue(asked));
    }
    return new LargestBatch(new Mixture(composition, most), List.copyOf(shelf), kilograms.clone());
  }

  /** The lines of which there is more than nothing, those that name a lot first. */
  private static List<Integer> called(Composition composition) {
    return IntStream.range(0, composition.size())
        .filter(i -> composition.massFractionValue(i) > 0)
        .boxed()
        .sorted(Comparator.comparing(i -> composition.materials().get(i).lot().isEmpty()))
        .toList();
  }

  private static double sum(List<Material> shelf, double[] kilograms, Material asked) {
    ExactSum sum = new ExactSum();
    for (int i = 0; i < kilograms.length; i++) {
      if (shelf.get(i).isMeantBy(asked)) {
        sum.add(kilograms[i]);
      }
    }
    return sum.value();
  }

  private LargestBatch(Mixture mixture, List<Material> shelf, double... there) {
    this.mixture = mixture;
    this.shelf = shelf;
    this.left = there.clone();
    List<Integer> called = called(mixture.composition());
    called.forEach(this::take);
    this.runsOut = List.copyOf(runningOut(called, there));
  }

  /** Takes what one line of the mix needs. */
  private void take(int line) {
    double needed = mixture.massKilograms() * mixture.composition().massFractionValue(line);
    for (int i = 0; i < left.length && needed > 0; i++) {
      if (shelf.get(i).isMeantBy(mixture.composition().materials().get(line))) {
        double taken = Math.min(left[i], needed);
        left[i] -= taken;
        needed -= taken;
      }
    }
  }

  private List<Material> runningOut(List<Integer> called, double[] there) {
    List<Material> out = new ArrayList<>();
    for (int line : called) {
      Material material = mixture.composition().materials().get(line);
      if (Limit.reaches(mixture.massKilograms(material), sum(shelf, there, material))) {
        empty(material);
        if (out.stream().noneMatch(material::isMeantBy)) {
          out.add(material);
        }
      }
    }
    return out;
  }

  /** Leaves nothing of what is used up, not even what rounding would. */
  private void empty(Material material) {
    for (int i = 0; i < left.length; i++) {
      if (shelf.get(i).isMeantBy(material)) {
        left[i] = 0;
      }
    }
  }

  /**
   * Returns the largest amount.
   *
   * @return the mixture; its mass is zero if a material is missing
   */
  public Mixture mixture() {
    return mixture;
  }

  /**
   * Returns what runs out first.
   *
   * @return the material, or several that run out together
   */
  public List<Material> runsOut() {
    return runsOut;
  }

  /**
   * Returns what stays on the shelf of a material.
   *
   * @param material the material: all that there is of it, or of its lot if it names one
   * @return what is left of it, in kg; zero if it was not there
   */
  public double leftKilograms(Material material) {
    return sum(shelf, left, material);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LargestBatch that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(mixture, shelf, DoubleStream.of(left).boxed().toList());
  }

  @Override
  public String toString() {
    return "at most " + mixture;
  }
}
