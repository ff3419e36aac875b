// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialState;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.VolumeFraction;

/**
 * What a mix is made of: materials and their shares by mass, which sum to one.
 *
 * <p>Mass is the basis. Parts by volume become shares by mass with stated densities; the {@link
 * VolumeView} turns them back. For example:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
 * medium; // damar 11.111 % + beeswax-yellow 88.889 % by mass
 * medium.density(MaterialState.SOLID).centralSi(); // 967 kg/m³
 * }</pre>
 *
 * <p>Two compositions are equal if materials, order and shares are the same to the last digit;
 * {@link #isCloseTo} compares within a tolerance and whatever the order. Immutable and thread-safe.
 */
public final class Composition {

  private static final double PERCENT_SLACK = 0.1;
  private static final int SEARCHED_IN_LINE = 8;

  private final List<Material> materials;
  private final double[] massFractions;
  private final @Nullable Map<Material, Integer> places;

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
    return new Composition(List.copyOf(parts.keySet()), Amounts.normalised(values(parts)));
  }

  /**
   * Returns the composition with parts by mass, in any common unit.
   *
   * @param materials the materials; one that stands twice gets both parts
   * @param parts the parts, in the order of the materials, not negative
   * @return the composition
   * @throws ProblemException if there are not as many parts as materials, a part is negative or not
   *     finite, or no part is above zero
   */
  public static Composition ofParts(List<Material> materials, double... parts) {
    requireSameCount(materials.size(), parts.length);
    Set<Material> different = new LinkedHashSet<>(materials);
    if (different.size() == materials.size()) {
      return new Composition(List.copyOf(materials), Amounts.normalised(parts));
    }
    return blend(materials.stream().map(Composition::of).toList(), parts);
  }

  /**
   * Returns the composition with shares in per cent by mass.
   *
   * @param percents the shares, which make up 100 within 0.1; what rounding left is spread evenly
   * @return the composition
   * @throws ProblemException if a share is negative or they do not make up 100
   */
  public static Composition ofPercents(Map<Material, Double> percents) {
    double total = Amounts.sum(values(percents));
    if (!(Math.abs(total - 100) <= PERCENT_SLACK)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.NOT_A_WHOLE, Bilingual.of(total).plus(" %")));
    }
    return ofParts(percents);
  }

  /**
   * Returns the composition with parts by volume.
   *
   * <p>For example, 1 : 6 by true volume with 1.07 and 0.96 g/ml is 15.7 : 84.3 by mass.
   *
   * @param parts the parts of each material by volume, in any common unit, not negative
   * @param basis the state that the volumes were measured in: solid, melt or loose bulk
   * @return the composition
   * @throws ProblemException if a part is negative or not finite, no part is above zero, or a
   *     density is missing
   */
  public static Composition ofVolumeParts(Map<Material, Double> parts, DensityBasis basis) {
    List<Material> materials = List.copyOf(parts.keySet());
    DensityTable densities = basis.table(materials);
    double[] masses = values(parts);
    for (int i = 0; i < masses.length; i++) {
      masses[i] *= densities.middle(i);
    }
    return new Composition(materials, Amounts.normalised(masses));
  }

  /**
   * Starts a composition of parts by mass, each named next to its material.
   *
   * @return a builder without parts
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Returns the composition of two materials in a ratio by mass.
   *
   * <p>The ratio names its sides, so each material is given by the name of its side, never by its
   * place: 1:7 resin:wax cannot be read as seven parts of resin.
   *
   * @param ratio the ratio; 1 : 8 gives shares of 1/9 and 8/9
   * @param sides the material of each side of the ratio, by the name of the side
   * @return the composition, in the order of the ratio
   * @throws ProblemException if the names are not those of the ratio's two sides
   */
  public static Composition ofRatio(MixingRatio ratio, Map<String, Material> sides) {
    if (!sides.keySet().equals(Set.of(ratio.firstSide(), ratio.secondSide()))) {
      throw new ProblemException(
          Problem.of(MixtureProblem.RATIO_SIDES, String.join(", ", new TreeSet<>(sides.keySet())))
              .with("sides", ratio.firstSide() + ", " + ratio.secondSide()));
    }
    List<Material> materials =
        Stream.of(ratio.firstSide(), ratio.secondSide()).map(sides::get).toList();
    return ofParts(materials, ratio.firstParts(), ratio.secondParts());
  }

  /**
   * Returns what comes of mixing compositions.
   *
   * @param compositions what is mixed
   * @param masses how much of each, in any common unit, not negative
   * @return the composition of the whole
   * @throws ProblemException if there are not as many masses as compositions, a mass is negative or
   *     not finite, or no mass is above zero
   */
  public static Composition blend(List<Composition> compositions, double... masses) {
    requireSameCount(compositions.size(), masses.length);
    double[] weights = Amounts.normalised(masses);
    Map<Material, Integer> union = new LinkedHashMap<>();
    for (Composition each : compositions) {
      each.materials.forEach(m -> union.putIfAbsent(m, union.size()));
    }
    double[] shares = new double[union.size()];
    for (int c = 0; c < weights.length; c++) {
      Composition each = compositions.get(c);
      for (int i = 0; i < each.massFractions.length; i++) {
        shares[union.getOrDefault(each.materials.get(i), -1)] += weights[c] * each.massFractions[i];
      }
    }
    return new Composition(List.copyOf(union.keySet()), Amounts.normalised(shares));
  }

  private static double[] values(Map<Material, Double> parts) {
    return parts.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void requireSameCount(int materials, int amounts) {
    if (materials != amounts) {
      throw new ProblemException(
          Problem.of(MixtureProblem.COUNT, Integer.toString(amounts))
              .with("expected", Integer.toString(materials)));
    }
  }

  private Composition(List<Material> materials, double[] massFractions) {
    this.materials = materials;
    this.massFractions = massFractions;
    this.places = massFractions.length > SEARCHED_IN_LINE ? places(materials) : null;
  }

  private static Map<Material, Integer> places(List<Material> materials) {
    Map<Material, Integer> places = new HashMap<>(materials.size() * 2);
    for (Material material : materials) {
      places.put(material, places.size());
    }
    return places;
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
   * Returns the share of a material as a plain number.
   *
   * @param material the material
   * @return its share by mass, from 0 to 1; zero if it is not in the mix
   */
  public double massFractionValue(Material material) {
    int index = indexOf(material);
    return index < 0 ? 0 : massFractions[index];
  }

  /**
   * Returns the share of a material.
   *
   * @param material the material
   * @return its share by mass; zero if it is not in the mix
   */
  public MassFraction massFraction(Material material) {
    return MassFraction.of(massFractionValue(material));
  }

  /**
   * Returns the share of what is asked for, such as free oil, by mass of the whole mix.
   *
   * @param what what is counted
   * @return its share as a range; the ends are equal where every figure is exact
   * @throws ProblemException if a material is itself a mix of which the parts are not stated
   */
  public MassFractionRange share(ShareOf what) {
    double low = 0;
    double high = 0;
    for (int i = 0; i < massFractions.length; i++) {
      MassFractionRange content = what.contentOf(materials.get(i));
      low += massFractions[i] * content.low().value();
      high += massFractions[i] * content.high().value();
    }
    return new MassFractionRange(
        MassFraction.of(Amounts.clamp(Math.min(low, high))), MassFraction.of(Amounts.clamp(high)));
  }

  /**
   * Returns the shares by volume and the density in a state.
   *
   * @param basis the state of matter, and where its densities come from
   * @return the view
   * @throws ProblemException if a density is missing; the problem names material and property
   */
  public VolumeView volumeView(DensityBasis basis) {
    return volumeView(basis.table(materials));
  }

  /**
   * Returns the shares by volume and the density, with densities that were looked up before.
   *
   * @param densities the densities of this composition's materials, in its order
   * @return the view
   * @throws ProblemException if the table holds another number of densities
   */
  public VolumeView volumeView(DensityTable densities) {
    requireSameCount(size(), densities.size());
    return new VolumeView(this, densities);
  }

  /**
   * Returns the density in a state, by additive volumes: 1/ρ = Σ wᵢ/ρᵢ.
   *
   * <p>Low and high take every material at the low and the high end of its range. Air between
   * pieces and volume changes in mixing are not in it.
   *
   * @param state the state of matter
   * @return the density
   * @throws ProblemException if a density is missing; the problem names material and property
   */
  public Estimate<Density> density(MaterialState state) {
    return density(DensityBasis.of(state));
  }

  /**
   * Returns the density on a basis, by additive volumes: 1/ρ = Σ wᵢ/ρᵢ.
   *
   * @param basis the state of matter, and where its densities come from
   * @return the density
   * @throws ProblemException if a density is missing; the problem names material and property
   */
  public Estimate<Density> density(DensityBasis basis) {
    return volumeView(basis).density();
  }

  /**
   * Tells whether two compositions are the same within a tolerance, whatever their order; what one
   * of them does not hold counts as zero.
   *
   * @param other the other composition
   * @param tolerance the largest difference of a share allowed, where 0.001 is 0.1 %
   * @return whether no share differs by more
   */
  public boolean isCloseTo(Composition other, double tolerance) {
    return holdsWithin(other, tolerance) && other.holdsWithin(this, tolerance);
  }

  private boolean holdsWithin(Composition other, double tolerance) {
    for (int i = 0; i < massFractions.length; i++) {
      double difference = massFractions[i] - other.massFractionValue(materials.get(i));
      if (!(Math.abs(difference) <= tolerance)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Returns a composition of the same materials with other parts by mass.
   *
   * @param parts the parts, in the order of the materials, not negative
   * @return the new composition
   * @throws ProblemException if there are not as many parts as materials, a part is negative or not
   *     finite, or no part is above zero
   */
  public Composition withParts(double... parts) {
    requireSameCount(massFractions.length, parts.length);
    return new Composition(materials, Amounts.normalised(parts));
  }

  /**
   * Returns a composition in which a material has a share and all else keeps its proportions.
   *
   * @param material the material, new to the mix or not
   * @param share the share it is to have by mass
   * @return the new composition
   * @throws ProblemException if the mix holds nothing else and the share is below one
   */
  public Composition with(Material material, MassFraction share) {
    if (share.value() == 1) {
      return of(material);
    }
    Composition rest = massFractionValue(material) > 0 ? without(material) : this;
    return blend(List.of(rest, of(material)), share.complement().value(), share.value());
  }

  /**
   * Returns a composition in which a new material takes a share of the volume.
   *
   * <p>For example, 8 % by volume of a pigment of 4.17 g/ml in a base of 0.971 g/ml is 27.2 g per
   * 100 g.
   *
   * @param material the material
   * @param share the share of the whole volume that it is to take
   * @param basis the state that volumes are counted in
   * @return the new composition
   * @throws ProblemException if a density is missing or the mix holds nothing else
   */
  public Composition with(Material material, VolumeFraction share, DensityBasis basis) {
    Composition rest = massFractionValue(material) > 0 ? without(material) : this;
    double restMass =
        share.complement().value() * rest.volumeView(basis).densityKilogramsPerCubicMetre();
    double mass = share.value() * basis.table(List.of(material)).middle(0);
    return blend(List.of(rest, of(material)), restMass, mass);
  }

  /**
   * Returns a composition without a material; all else keeps its proportions.
   *
   * @param material the material to leave out
   * @return the new composition
   * @throws ProblemException if the mix does not hold it or holds nothing else
   */
  public Composition without(Material material) {
    double[] rest = massFractions.clone();
    rest[requireIndex(material)] = 0;
    double[] shares = Amounts.normalised(rest);
    List<Material> kept = new ArrayList<>(materials);
    int gap = indexOf(material);
    kept.remove(gap);
    double[] keptShares = new double[shares.length - 1];
    System.arraycopy(shares, 0, keptShares, 0, gap);
    System.arraycopy(shares, gap + 1, keptShares, gap, keptShares.length - gap);
    return new Composition(List.copyOf(kept), keptShares);
  }

  /**
   * Returns a composition in which one material takes the place of part of another.
   *
   * @param from the material that gives way
   * @param to the material that takes its place
   * @param share how much of the whole changes, by mass
   * @param cap the largest share that the new material may reach
   * @return the new composition
   * @throws ProblemException if there is less of the first than that, or the second would pass its
   *     cap
   */
  public Composition replacing(Material from, Material to, MassFraction share, MassFraction cap) {
    double there = massFractions[requireIndex(from)];
    if (Limit.exceeds(share.value(), there)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.MORE_THAN_THERE_IS, Bilingual.of(share))
              .with("most", Bilingual.of(MassFraction.of(there))));
    }
    double reached = massFractionValue(to) + share.value();
    if (Limit.exceeds(reached, cap.value())) {
      throw new ProblemException(
          Problem.of(
                  MixtureProblem.ABOVE_CAP, Bilingual.of(MassFraction.of(Amounts.clamp(reached))))
              .with("material", to.id())
              .with("cap", Bilingual.of(cap)));
    }
    double[] rest = massFractions.clone();
    rest[indexOf(from)] = Math.max(0, there - share.value());
    double left = Amounts.sum(rest);
    if (left == 0) {
      return of(to);
    }
    return blend(List.of(withParts(rest), of(to)), left, share.value());
  }

  /**
   * Returns the composition down to stated constituents, each at the middle of its share.
   *
   * @return the composition of constituents; this one if no material states any
   */
  public Composition expanded() {
    if (materials.stream().allMatch(m -> m.constituents().isEmpty())) {
      return this;
    }
    List<Composition> parts = new ArrayList<>();
    for (Material material : materials) {
      parts.add(Constituents.expanded(material));
    }
    return blend(parts, massFractions);
  }

  private int requireIndex(Material material) {
    int index = indexOf(material);
    if (index < 0) {
      throw new ProblemException(
          Problem.of(MixtureProblem.NOT_IN_MIX, material.id()).with("materials", names()));
    }
    return index;
  }

  private int indexOf(Material material) {
    return places == null ? materials.indexOf(material) : places.getOrDefault(material, -1);
  }

  private String names() {
    StringJoiner names = new StringJoiner(", ");
    materials.stream().limit(SEARCHED_IN_LINE).forEach(m -> names.add(m.id()));
    return names + (materials.size() > SEARCHED_IN_LINE ? ", …" : "");
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

  /**
   * Returns materials and shares, locale-free.
   *
   * @return for example "resin 11.111 % + wax 88.889 % by mass"
   */
  @Override
  public String toString() {
    StringJoiner text = new StringJoiner(" + ", "", " by mass");
    for (int i = 0; i < massFractions.length; i++) {
      text.add(
          String.format(Locale.ROOT, "%s %.3f %%", materials.get(i).id(), massFractions[i] * 100));
    }
    return text.toString();
  }

  /** Gathers the parts of a composition; not thread-safe. */
  public static final class Builder {

    private final List<Material> materials = new ArrayList<>();
    private final List<Double> parts = new ArrayList<>();

    private Builder() {}

    /**
     * Adds a part; parts of a material that is there already are added up.
     *
     * @param material the material
     * @param byMass how much of it, in any unit that all parts share; zero or more
     * @return this builder
     */
    public Builder part(Material material, double byMass) {
      materials.add(material);
      parts.add(byMass);
      return this;
    }

    /**
     * Puts the parts together.
     *
     * @return the composition, in the order of the parts
     * @throws ProblemException if a part is negative or not finite, or none is above zero
     */
    public Composition build() {
      return ofParts(materials, parts.stream().mapToDouble(Double::doubleValue).toArray());
    }
  }
}
