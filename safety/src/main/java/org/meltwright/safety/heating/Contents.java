// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperaturePoint;

/**
 * What is in the pot, as a rule asks it: down to what each material is made of, and in an order
 * that does not depend on how the mix was written down.
 *
 * <p>For example, an oil paint in wax, and the oil within it:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Composition mix =
 *     Composition.ofParts(
 *         List.of(shelf.require("oil-paint-titanium-white"), shelf.require("beeswax-yellow")), 1, 9);
 * Contents contents = HeatingPlan.of(mix).contents();
 * contents.holding(m -> m.family() == MaterialFamily.DRYING_OIL); // [oil-paint-titanium-white]
 * contents.share(m -> m.family() == MaterialFamily.OIL_PAINT).high(); // 10.0 % by mass
 * contents.lowestFlashPoint().get(); // 204.0 °C
 * }</pre>
 *
 * <p>This class is immutable and thread-safe.
 */
public final class Contents {

  private final Composition mix;
  private final List<Material> materials;

  Contents(Composition mix) {
    this.mix = mix;
    this.materials =
        IntStream.range(0, mix.size())
            .filter(i -> mix.massFractionValue(i) > 0)
            .mapToObj(i -> mix.materials().get(i))
            .sorted(Comparator.comparing(Material::id))
            .toList();
  }

  /**
   * Returns the materials of which there is more than nothing.
   *
   * @return the materials, by id
   */
  public List<Material> materials() {
    return materials;
  }

  /**
   * Returns the materials that match, themselves or in one of their {@link #parts}.
   *
   * @param wanted what is asked for
   * @return those of the {@link #materials}, by id; empty if none does
   */
  public List<Material> holding(Predicate<Material> wanted) {
    return materials.stream().filter(m -> parts(m).anyMatch(wanted)).toList();
  }

  /**
   * Returns a material, what its name may stand for, and all that it is or may be made of.
   *
   * @param material the material
   * @return the material first, then its parts and theirs; one may come twice
   */
  public static Stream<Material> parts(Material material) {
    return Stream.concat(
        Stream.concat(Stream.of(material), material.alternatives().stream()),
        material.constituents().stream()
            .filter(c -> c.share().high().value() > 0)
            .map(Constituent::material)
            .flatMap(Contents::parts));
  }

  /**
   * Returns the share of what matches, by itself or as a constituent of something else.
   *
   * @param wanted what is asked for
   * @return the share by mass of the mix, from the low ends of all constituents to their high ends
   */
  public MassFractionRange share(Predicate<Material> wanted) {
    return new MassFractionRange(
        share(wanted, MassFractionRange::low), share(wanted, MassFractionRange::high));
  }

  private MassFraction share(
      Predicate<Material> wanted, Function<MassFractionRange, MassFraction> end) {
    double share =
        IntStream.range(0, mix.size())
            .mapToDouble(
                i -> mix.massFractionValue(i) * content(mix.materials().get(i), wanted, end))
            .sorted()
            .sum();
    return MassFraction.of(Math.min(1, share));
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

  /**
   * Returns the lowest flash point that a rule may use, of what burns in the mix.
   *
   * @return the low end of its range; empty if none is known
   */
  public Optional<TemperaturePoint> lowestFlashPoint() {
    return FlashPoints.of(materials).lowest();
  }

  /**
   * Returns what burns, or may burn, in the mix and has no usable flash point.
   *
   * @return the materials, by id; what is listed here is unknown, not safe
   */
  public List<Material> withoutFlashPoint() {
    return FlashPoints.of(materials).unknown();
  }
}
