// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.MassFractionRange;
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

  /** Returns the share of what matches, in constituents too, at the high end of its range. */
  static MassFraction share(Composition mix, Predicate<Material> wanted) {
    return MassFraction.of(share(mix, wanted, MassFractionRange::high));
  }

  private static double share(
      Composition mix, Predicate<Material> wanted, Function<MassFractionRange, MassFraction> end) {
    double share =
        IntStream.range(0, mix.size())
            .mapToDouble(
                i -> mix.massFractionValue(i) * content(mix.materials().get(i), wanted, end))
            .sorted()
            .sum();
    return Math.min(1, share);
  }

  private static double content(
      Material material,
      Predicate<Material> wanted,
      Function<MassFractionRange, MassFraction> end) {
    if (wanted.test(material)) {
      return 1;
    }
    double content =
        material.constituents().stream()
            .mapToDouble(c -> end.apply(c.share()).value() * content(c.material(), wanted, end))
            .sum();
    return Math.min(1, content);
  }

  /** Returns the highest share of resin in what is wax or resin; zero if there is neither. */
  static double mostResinInMedium(Composition mix) {
    return resinInMedium(mix, MassFractionRange::high, MassFractionRange::low);
  }

  /** Returns the lowest share of resin in what is wax or resin; zero if there is neither. */
  static double leastResinInMedium(Composition mix) {
    return resinInMedium(mix, MassFractionRange::low, MassFractionRange::high);
  }

  private static double resinInMedium(
      Composition mix,
      Function<MassFractionRange, MassFraction> resinEnd,
      Function<MassFractionRange, MassFraction> waxEnd) {
    double resin = share(mix, family(MaterialFamily.RESIN), resinEnd);
    double wax = share(mix, family(MaterialFamily.WAX), waxEnd);
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
    return Wording.WATER_MIXABLE.isIn(material);
  }
}
