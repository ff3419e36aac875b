// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.Estimate;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MaterialState;
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
 * <p>The lines stand in the order given, for showing; no answer depends on it. Equal materials are
 * one line; two versions or two lots of one material are two, and none of their figures is lost.
 * What is asked by material adds up all lines that are {@linkplain Material#isMeantBy meant}.
 *
 * <p>Two compositions are equal if they hold equal materials with the same shares to the last bit,
 * whatever the order. A share is its part divided by the double nearest to the exact sum of all, so
 * 1 : 8 equals 2 : 16; 0.1 : 0.8 may differ in the last bit, for a double holds no exact tenth, and
 * {@link #isCloseTo} is for that. Immutable and thread-safe.
 */
public final class Composition {

  private static final double PERCENT_SLACK = 0.1;

  /** What normalised shares may miss the whole by. */
  private static final double WHOLE_SLACK = 1e-13;

  private final Lines lines;
  private final double[] massFractions;

  /**
   * Returns the composition of one material only.
   *
   * @param material the material
   * @return its composition
   */
  public static Composition of(Material material) {
    return new Composition(new Lines(List.of(material)), 1);
  }

  /**
   * Returns the composition with parts by mass, in any common unit.
   *
   * <p>For example, parts 1 and 8 become shares of 1/9 and 8/9.
   *
   * @param materials the materials; equal ones become one line with the sum of their parts
   * @param parts the parts, in the order of the materials, not negative
   * @return the composition
   * @throws ProblemException if there are not as many parts as materials, a part is negative or not
   *     finite, or no part is above zero
   */
  public static Composition ofParts(List<Material> materials, double... parts) {
    requireSameCount(materials.size(), parts.length);
    if (Lines.areDifferent(materials)) {
      return new Composition(new Lines(materials), Amounts.normalised(parts));
    }
    return blend(materials.stream().map(Composition::of).toList(), parts);
  }

  /**
   * Returns this composition as it is written down.
   *
   * @return the draft, which reads back as an equal composition
   * @throws ProblemException if two materials of one id and lot are in it
   */
  public CompositionDraft toDraft() {
    return CompositionDraft.of(this);
  }

  /**
   * Returns the composition with shares in per cent by mass.
   *
   * @param materials the materials, as in {@link #ofParts}
   * @param percents the shares, in the order of the materials, which make up 100 within 0.1; what
   *     rounding left is spread evenly
   * @return the composition
   * @throws ProblemException if there are not as many shares as materials, a share is negative or
   *     they do not make up 100
   */
  public static Composition ofPercents(List<Material> materials, double... percents) {
    requireSameCount(materials.size(), percents.length);
    double total = ExactSum.of(percents);
    if (!(Math.abs(total - 100) <= PERCENT_SLACK)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.NOT_A_WHOLE, Bilingual.of(total).plus(" %")));
    }
    return ofParts(materials, percents);
  }

  /** The composition of shares as they are, if they are one: no rounding is added to them. */
  static Composition ofShares(List<Material> materials, double... shares) {
    boolean isWhole = Math.abs(ExactSum.of(shares) - 1) <= WHOLE_SLACK;
    return isWhole && Lines.areDifferent(materials)
        ? new Composition(new Lines(materials), shares.clone())
        : ofPercents(materials, Arrays.stream(shares).map(share -> share * 100).toArray());
  }

  /**
   * Returns the composition with parts by volume.
   *
   * <p>For example, 1 : 6 by true volume with 1.07 and 0.96 g/ml is 15.7 : 84.3 by mass.
   *
   * @param basis the state that the volumes were measured in: solid, melt or loose bulk
   * @param materials the materials, as in {@link #ofParts}
   * @param volumes the parts by volume, in the order of the materials, in any common unit, not
   *     negative
   * @return the composition
   * @throws ProblemException if there are not as many parts as materials, a part is negative or not
   *     finite, no part is above zero, or a density is missing
   */
  public static Composition ofVolumeParts(
      DensityBasis basis, List<Material> materials, double... volumes) {
    requireSameCount(materials.size(), volumes.length);
    DensityTable densities = basis.table(materials);
    double[] masses = new double[volumes.length];
    for (int i = 0; i < masses.length; i++) {
      masses[i] = volumes[i] * densities.middle(i);
    }
    return ofParts(materials, masses);
  }

  /**
   * Starts a composition of parts by mass, each named next to its material.
   *
   * @return a builder without parts
   */
  public static CompositionBuilder builder() {
    return new CompositionBuilder();
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
    double[] weights = Amounts.scaled(masses);
    Map<Material, ExactSum> lines = new LinkedHashMap<>();
    for (int c = 0; c < weights.length; c++) {
      Composition each = compositions.get(c);
      for (int i = 0; i < each.massFractions.length; i++) {
        lines
            .computeIfAbsent(each.materials().get(i), m -> new ExactSum())
            .add(weights[c] * each.massFractions[i]);
      }
    }
    double[] parts = lines.values().stream().mapToDouble(ExactSum::value).toArray();
    return new Composition(new Lines(List.copyOf(lines.keySet())), Amounts.normalised(parts));
  }

  static void requireSameCount(int materials, int amounts) {
    if (materials != amounts) {
      throw new ProblemException(
          Problem.of(MixtureProblem.COUNT, Integer.toString(amounts))
              .with("expected", Integer.toString(materials)));
    }
  }

  private Composition(Lines lines, double... massFractions) {
    this.lines = lines;
    this.massFractions = massFractions;
  }

  /**
   * Returns the materials, one for each line.
   *
   * @return the materials in the order given, all different; some may be versions or lots of one
   */
  public List<Material> materials() {
    return lines.materials();
  }

  /**
   * Returns the number of lines.
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
   * @param material the material: every line of it, or of its lot if it names one
   * @return its share by mass, from 0 to 1; zero if it is not in the mix
   */
  public double massFractionValue(Material material) {
    return Amounts.clamp(lines.sumOver(material, massFractions));
  }

  /**
   * Returns the share of a material.
   *
   * @param material the material: every line of it, or of its lot if it names one
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
    ExactSum low = new ExactSum();
    ExactSum high = new ExactSum();
    for (int i = 0; i < massFractions.length; i++) {
      if (massFractions[i] == 0) {
        continue; // of what is not there nothing need be known
      }
      MassFractionRange content = what.contentOf(materials().get(i));
      low.add(massFractions[i] * content.low().value());
      high.add(massFractions[i] * content.high().value());
    }
    return new MassFractionRange(
        MassFraction.of(Amounts.clamp(Math.min(low.value(), high.value()))),
        MassFraction.of(Amounts.clamp(high.value())));
  }

  /**
   * Returns the mean of a figure over the lines, weighted by mass: Σ wᵢ · xᵢ.
   *
   * <p>The order of the lines makes no difference, to the last bit.
   *
   * @param figure the figure x of a line, by its place, finite
   * @return the mean, in the unit of the figure
   */
  public double mean(IntToDoubleFunction figure) {
    ExactSum sum = new ExactSum();
    for (int i = 0; i < massFractions.length; i++) {
      sum.add(massFractions[i] * figure.applyAsDouble(i));
    }
    return sum.value();
  }

  /**
   * Returns the shares by volume and the density in a state.
   *
   * @param basis the state of matter, and where its densities come from
   * @return the view
   * @throws ProblemException if a density is missing; the problem names material and property
   */
  public VolumeView volumeView(DensityBasis basis) {
    return volumeView(basis.table(materials()));
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
   * Tells whether two compositions hold equal materials with shares that are the same within a
   * tolerance, whatever their order; what one of them does not hold counts as zero.
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
      int there = other.lines.lineOf(materials().get(i));
      double difference = massFractions[i] - (there < 0 ? 0 : other.massFractions[there]);
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
    return new Composition(lines, Amounts.normalised(parts));
  }

  /**
   * Returns a composition in which a material has a share and all else keeps its proportions.
   *
   * @param material the material, new to the mix or not; it takes the place of every line of it, or
   *     of its lot if it names one
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
   * @param material the material to leave out: every line of it, or of its lot if it names one
   * @return the new composition
   * @throws ProblemException if the mix does not hold it or holds nothing else
   */
  public Composition without(Material material) {
    lines.requireHeld(material);
    List<Material> kept = new ArrayList<>();
    double[] parts = new double[massFractions.length];
    for (int i = 0; i < massFractions.length; i++) {
      if (!materials().get(i).isMeantBy(material)) {
        parts[kept.size()] = massFractions[i];
        kept.add(materials().get(i));
      }
    }
    return ofParts(kept, Arrays.copyOf(parts, kept.size()));
  }

  /**
   * Returns a composition in which one material takes the place of part of another.
   *
   * @param from the material that gives way, several lines of it in proportion
   * @param to the material that takes its place
   * @param share how much of the whole changes, by mass
   * @param cap the largest share that the new material may reach
   * @return the new composition
   * @throws ProblemException if there is less of the first than that, or the second would pass its
   *     cap
   */
  public Composition replacing(Material from, Material to, MassFraction share, MassFraction cap) {
    double there = lines.requireHeld(from).sumOver(from, massFractions);
    if (Limit.exceeds(share.value(), there)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.MORE_THAN_THERE_IS, Bilingual.of(share))
              .with("most", Bilingual.of(MassFraction.of(Amounts.clamp(there)))));
    }
    double[] rest = massFractions.clone();
    lines.reduce(rest, from, Math.max(0, there - share.value()));
    double left = ExactSum.of(rest);
    Composition result =
        left == 0 ? of(to) : blend(List.of(withParts(rest), of(to)), left, share.value());
    double reached = result.massFractionValue(to);
    if (Limit.exceeds(reached, cap.value())) {
      throw new ProblemException(
          Problem.of(MixtureProblem.ABOVE_CAP, Bilingual.of(MassFraction.of(reached)))
              .with("material", to.toString())
              .with("cap", Bilingual.of(cap)));
    }
    return result;
  }

  /**
   * Returns the composition down to stated constituents, each at the middle of its share.
   *
   * @return the composition of constituents; this one if no material states any
   */
  public Composition expanded() {
    return Constituents.expanded(this);
  }

  /**
   * Returns the composition down to stated constituents, but for those materials that stay whole: a
   * medium whose own melting range is known need not be taken apart to know it.
   *
   * @param stays says of a material whether it is not to be taken apart
   * @return the composition of constituents; this one if none is taken apart
   */
  public Composition expandedUnless(Predicate<Material> stays) {
    return Constituents.expandedUnless(this, stays);
  }

  Lines lines() {
    return lines;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Composition that && size() == that.size() && holdsAllOf(that));
  }

  private boolean holdsAllOf(Composition that) {
    for (int i = 0; i < massFractions.length; i++) {
      int there = that.lines.lineOf(materials().get(i));
      if (there < 0 || massFractions[i] != that.massFractions[there]) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    int hash = 0;
    for (int i = 0; i < massFractions.length; i++) {
      hash += materials().get(i).hashCode() ^ Double.hashCode(massFractions[i]);
    }
    return hash;
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
          String.format(Locale.ROOT, "%s %.3f %%", materials().get(i), massFractions[i] * 100));
    }
    return text.toString();
  }
}
