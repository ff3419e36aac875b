// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;

/** Questions that rules ask of a mix. The answers do not depend on the order of its materials. */
final class Mix {

  private static final Comparator<Material> BY_ID = Comparator.comparing(Material::id);

  private Mix() {}

  /** Returns the materials of which there is more than nothing, by id. */
  static List<Material> materials(Composition mix) {
    return IntStream.range(0, mix.size())
        .filter(i -> mix.massFractionValue(i) > 0)
        .mapToObj(i -> mix.materials().get(i))
        .sorted(BY_ID)
        .toList();
  }

  /** Returns the materials that match, themselves or in one of their constituents. */
  static List<Material> holding(Composition mix, Predicate<Material> wanted) {
    return materials(mix).stream().filter(m -> holds(m, wanted)).toList();
  }

  static boolean holds(Material material, Predicate<Material> wanted) {
    return parts(material).anyMatch(wanted);
  }

  /** Returns a material, what its name may stand for, and all that it is made of. */
  static Stream<Material> parts(Material material) {
    return Stream.concat(
        Stream.concat(Stream.of(material), material.alternatives().stream()),
        material.constituents().stream()
            .filter(c -> c.share().high().value() > 0)
            .map(Constituent::material)
            .flatMap(Mix::parts));
  }

  static Predicate<Material> family(MaterialFamily family) {
    return material -> material.family() == family;
  }

  /** Returns the share of the materials that match themselves, constituents not counted. */
  static MassFraction share(Composition mix, Predicate<Material> wanted) {
    double share =
        IntStream.range(0, mix.size())
            .filter(i -> wanted.test(mix.materials().get(i)))
            .mapToDouble(mix::massFractionValue)
            .sorted()
            .sum();
    return MassFraction.of(Math.min(1, share));
  }

  /** Returns the share of resin in what is wax or resin; zero if there is neither. */
  static double resinInMedium(Composition mix) {
    double resin = share(mix, family(MaterialFamily.RESIN)).value();
    double wax = share(mix, family(MaterialFamily.WAX)).value();
    return resin == 0 ? 0 : resin / (resin + wax);
  }

  /** Tells whether a material is water, or its data state water in it, at the low end too. */
  static boolean isWet(Material material) {
    return material.family() == MaterialFamily.WATER || statesWater(material);
  }

  /** Tells whether a material's data state that it holds water, at the low end too. */
  private static boolean statesWater(Material material) {
    return material
        .find(PropertyKey.WATER_CONTENT)
        .filter(water -> water.value().low().value() > 0)
        .isPresent();
  }

  static boolean isWaterMixable(Material material) {
    return material.id().contains("water-mixable");
  }
}
