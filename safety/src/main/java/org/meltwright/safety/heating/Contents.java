// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Limit;
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

  /** Up to this share a resin without a published flash point is judged by the wax; policy. */
  private static final double MOST_RESIN = 0.25;

  /** From this share on fragrance is judged by the flash margin; policy. */
  private static final double MOST_FRAGRANCE = 0.10;

  private static final PerMaterial<List<Material>> PARTS =
      PerMaterial.of(material -> partsOf(material).toList());

  private final Composition mix;
  private final List<Material> materials;
  private volatile @Nullable FlashPoints flashPoints;

  Contents(Composition mix) {
    this.mix = mix;
    List<Material> held = new ArrayList<>(mix.size());
    for (int i = 0; i < mix.size(); i++) {
      if (mix.massFractionValue(i) > 0) {
        held.add(mix.materials().get(i));
      }
    }
    held.sort(Comparator.comparing(Material::id));
    this.materials = Collections.unmodifiableList(held);
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
    List<Material> holding = new ArrayList<>();
    for (Material material : materials) {
      if (holds(material, wanted)) {
        holding.add(material);
      }
    }
    return Collections.unmodifiableList(holding);
  }

  private static boolean holds(Material material, Predicate<Material> wanted) {
    for (Material part : PARTS.get(material)) {
      if (wanted.test(part)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns a material, what its name may stand for, and all that it is or may be made of.
   *
   * @param material the material
   * @return the material first, then its parts and theirs; one may come twice
   */
  public static Stream<Material> parts(Material material) {
    return PARTS.get(material).stream();
  }

  private static Stream<Material> partsOf(Material material) {
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
    double[] shares = new double[mix.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = mix.massFractionValue(i) * content(mix.materials().get(i), wanted, end);
    }
    Arrays.sort(shares);
    return MassFraction.of(Math.min(1, Arrays.stream(shares).sum()));
  }

  private static double content(
      Material material,
      Predicate<Material> wanted,
      Function<MassFractionRange, MassFraction> end) {
    if (wanted.test(material)) {
      return 1;
    }
    double content = 0;
    for (Constituent part : material.constituents()) {
      content += end.apply(part.share()).value() * content(part.material(), wanted, end);
    }
    return Math.min(1, content);
  }

  /**
   * Returns the lowest flash point that a rule may use, of what burns in the mix, without fragrance
   * below a tenth of it, which has rules of its own.
   *
   * @return the low end of its range; empty if none is known
   */
  public Optional<TemperaturePoint> lowestFlashPoint() {
    return flashPoints().lowest();
  }

  /**
   * Returns what burns, or may burn, in the mix and has no usable flash point.
   *
   * <p>A resin of which somebody looked in vain for one is said in the standing advice instead, up
   * to a quarter of the mix: nobody can answer it, and the wax around it is judged.
   *
   * @return the materials, by id; what is listed here is unknown, not safe
   */
  public List<Material> withoutFlashPoint() {
    List<Material> unknown = flashPoints().unknown();
    return hasResinThatNobodyKnows()
        ? unknown.stream().filter(material -> !isResinThatNobodyKnows(material)).toList()
        : unknown;
  }

  /**
   * Returns the fragrance and essential oil in the mix where all of it together stays below a tenth
   * and something else is there to thin it; camphor, menthol and thymol count with it.
   *
   * @return the materials, by id; empty if there is none, or from a tenth of the mix on, where the
   *     flash margin holds for it as for everything else
   */
  public List<Material> thinnedFragrance() {
    return Limit.reaches(fragranceShare(), MOST_FRAGRANCE)
        ? List.of()
        : materials.stream().filter(Contents::isFragrance).toList();
  }

  /**
   * Returns the share of all fragrance and essential oil together.
   *
   * @return the share by mass of the mix, from 0 to 1
   */
  public double fragranceShare() {
    double share = 0;
    for (Material material : materials) {
      share += isFragrance(material) ? mix.massFractionValue(material) : 0;
    }
    return share;
  }

  /**
   * Tells whether a material counts as fragrance, by its family or by its name: an essential oil, a
   * perfume, camphor, menthol or thymol.
   *
   * @param material the material
   * @return whether it does
   */
  public static boolean isFragrance(Material material) {
    return FragranceNames.isFragrance(material);
  }

  /**
   * Returns the lowest flash point that a rule may use, of some materials.
   *
   * @param some the materials
   * @return the low end of its range; empty if none is known
   */
  public Optional<TemperaturePoint> lowestFlashPointOf(List<Material> some) {
    return FlashPoints.of(some).lowest();
  }

  /**
   * Returns the lowest flash point of a material that a rule may use.
   *
   * @param material the material
   * @return the low end of its range; empty if none is known
   */
  public static Optional<TemperaturePoint> flashPoint(Material material) {
    return FlashPoints.of(List.of(material)).lowest();
  }

  /**
   * Returns what the standard catalogue calls by the names of a material of one's own that states
   * nothing else, as "olive oil": of waxes, fats and oils only.
   *
   * @param material the material
   * @return the catalogue's materials; empty if one's own says more than its name, or a name is
   *     none of theirs
   */
  public static List<Material> namesakes(Material material) {
    return Namesakes.of(material).orElse(List.of());
  }

  private List<Material> judgedByTheMargin() {
    List<Material> thinned = thinnedFragrance();
    return thinned.isEmpty()
        ? materials
        : materials.stream().filter(material -> !thinned.contains(material)).toList();
  }

  /** Whether there is such a resin, and little enough of it to be judged by the wax. */
  boolean hasResinThatNobodyKnows() {
    double share = 0;
    for (Material material : materials) {
      share += isResinThatNobodyKnows(material) ? mix.massFractionValue(material) : 0;
    }
    return share > 0 && !Limit.exceeds(share, MOST_RESIN);
  }

  private static boolean isResinThatNobodyKnows(Material material) {
    return material.family() == MaterialFamily.RESIN
        && material.usableFigures(PropertyKey.FLASH_POINT).isEmpty()
        && material.absence(PropertyKey.FLASH_POINT).isPresent();
  }

  /** Worked out once; two threads that meet work out the same. */
  FlashPoints flashPoints() {
    FlashPoints known = flashPoints;
    if (known == null) {
      known = FlashPoints.of(judgedByTheMargin());
      flashPoints = known;
    }
    return known;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Contents that && mix.equals(that.mix);
  }

  @Override
  public int hashCode() {
    return mix.hashCode();
  }

  @Override
  public String toString() {
    return "contents of " + mix;
  }
}
