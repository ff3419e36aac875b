// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
 * LargestBatch most = LargestBatch.of(medium, Map.of(resin, 0.2, wax, 2.0));
 * most.mixture().massKilograms(); // 1.8 kg
 * most.runsOut(); // [damar]
 * most.leftKilograms().get(wax); // 0.4 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class LargestBatch {

  private final Mixture mixture;
  private final List<Material> runsOut;
  private final Map<Material, Double> leftKilograms;

  /**
   * Returns the largest amount of a composition.
   *
   * @param composition what is to be made
   * @param shelfKilograms what is there of each material, in kg; what is not named is not there
   * @return the largest amount; nothing if a material is missing
   * @throws org.meltwright.units.ProblemException if an amount is negative or not finite
   */
  public static LargestBatch of(Composition composition, Map<Material, Double> shelfKilograms) {
    shelfKilograms.values().forEach(kg -> Amounts.require(kg, "kg"));
    double most = Double.POSITIVE_INFINITY;
    for (int i = 0; i < composition.size(); i++) {
      if (composition.massFractionValue(i) > 0) {
        double there = shelfKilograms.getOrDefault(composition.materials().get(i), 0.0);
        most = Math.min(most, there / composition.massFractionValue(i));
      }
    }
    return new LargestBatch(new Mixture(composition, most), shelfKilograms);
  }

  private LargestBatch(Mixture mixture, Map<Material, Double> shelf) {
    this.mixture = mixture;
    List<Material> out = new ArrayList<>();
    Map<Material, Double> left = new LinkedHashMap<>();
    shelf.forEach((m, kg) -> left.put(m, Math.max(0, kg - mixture.massKilograms(m))));
    for (Material material : mixture.composition().materials()) {
      double there = shelf.getOrDefault(material, 0.0);
      double used = mixture.massKilograms(material);
      boolean called = mixture.composition().massFractionValue(material) > 0;
      if (called && Limit.reaches(used, there)) {
        out.add(material);
        left.computeIfPresent(material, (m, kg) -> 0.0);
      }
    }
    this.runsOut = List.copyOf(out);
    this.leftKilograms = java.util.Collections.unmodifiableMap(left);
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
   * Returns what stays on the shelf.
   *
   * @return what is left of each material, in kg
   */
  public Map<Material, Double> leftKilograms() {
    return leftKilograms;
  }
}
