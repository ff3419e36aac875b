// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.material.Constituent;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.units.Bilingual;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * What a share is a share of: an ingredient as it is weighed, or a constituent inside ingredients.
 *
 * <p>Every share is by mass of the whole mix. "30 %" of oil paint and 30 % of free oil differ by a
 * factor of 1.4 to 8: {@link #OIL_PAINT} counts the paint as it comes from the tube, {@link
 * #FREE_OIL} the oil in it, as a range, from the paint's own constituents.
 *
 * <p>For example, 30 % of a tube white that itself holds 18 to 30 % of oil:
 *
 * <pre>{@code
 * Material white = MaterialCatalogue.standard().require("oil-paint-titanium-white");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition colour = Composition.ofPercents(List.of(white, wax), 30, 70);
 * colour.share(ShareOf.OIL_PAINT).high().percent(); // 30.0 %
 * colour.share(ShareOf.FREE_OIL).low().percent(); // 5.4 %
 * colour.share(ShareOf.FREE_OIL).high().percent(); // 9.0 %
 * }</pre>
 *
 * <p>Two are equal if they count the same at the same end of its range; those of {@link
 * #ofConstituents} only if the test is the same object. Immutable and thread-safe.
 */
public final class ShareOf {

  /** Oil paint, as it is weighed. */
  public static final ShareOf OIL_PAINT = ofFamily(MaterialFamily.OIL_PAINT);

  /** Oil that is free in the mix: added as such, or brought in by a paint. */
  public static final ShareOf FREE_OIL =
      ofConstituents(
          "free oil",
          m ->
              m.family() == MaterialFamily.DRYING_OIL
                  || (m.role() == MaterialRole.OIL && m.family() != MaterialFamily.OIL_PAINT));

  /** Pigment: dry, or inside a paint; fillers are not in it. */
  public static final ShareOf PIGMENT =
      ofConstituents("pigment", m -> m.family() == MaterialFamily.PIGMENT);

  /** Pigments and fillers: what a pigment volume concentration counts. */
  public static final ShareOf PIGMENT_AND_FILLER =
      ofConstituents(
          "pigment and filler",
          m -> m.family() == MaterialFamily.PIGMENT || m.family() == MaterialFamily.FILLER);

  /** Resin: as such, or inside another ingredient. */
  public static final ShareOf RESIN =
      ofConstituents("resin", m -> m.family() == MaterialFamily.RESIN);

  private static final Symbol SHARE = Symbol.beside(ShareOf.class, "share by mass", "");
  private static final Symbol PART = Symbol.beside(ShareOf.class, "part by mass", "");

  private record Meant(Material asked) implements Predicate<Material> {

    @Override
    public boolean test(Material material) {
      return material.isMeantBy(asked);
    }

    /** The figures of what is asked for make no difference. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Meant that
          && asked.isMeantBy(that.asked)
          && that.asked.isMeantBy(asked);
    }

    @Override
    public int hashCode() {
      return asked.hashCode();
    }
  }

  private record OfFamily(MaterialFamily family) implements Predicate<Material> {

    @Override
    public boolean test(Material material) {
      return material.family() == family;
    }
  }

  private final String name;
  private final Predicate<Material> counted;
  private final boolean looksInside;
  private final double position;

  /**
   * Returns the share of one material, as it is weighed.
   *
   * @param material the material: every line of it, or of its lot if it names one
   * @return what is counted
   */
  public static ShareOf material(Material material) {
    return new ShareOf(material.toString(), new Meant(material), false, 0.5);
  }

  /**
   * Returns the share of all materials of a family, as they are weighed.
   *
   * @param family the family
   * @return what is counted
   */
  public static ShareOf ofFamily(MaterialFamily family) {
    String name = family.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return new ShareOf(name, new OfFamily(family), false, 0.5);
  }

  /**
   * Returns the share of what is counted wherever it is, inside other materials too.
   *
   * @param name what it is called in texts
   * @param counted tells which materials count in full
   * @return what is counted
   */
  public static ShareOf ofConstituents(String name, Predicate<Material> counted) {
    return new ShareOf(name, counted, true, 0.5);
  }

  private ShareOf(String name, Predicate<Material> counted, boolean looksInside, double position) {
    this.name = name;
    this.counted = counted;
    this.looksInside = looksInside;
    this.position = position;
  }

  /**
   * Returns what it is called in texts.
   *
   * @return for example "free oil"
   */
  public String name() {
    return name;
  }

  /**
   * Returns what it is called in both languages.
   *
   * @return the name, with the German of what this library counts
   */
  public Bilingual inWords() {
    return MixtureProblem.CHECK.name(name);
  }

  /**
   * Returns the same share, where a calculation needs one number, at the low end of its range.
   *
   * @return what is counted, at the low end
   */
  public ShareOf atLow() {
    return new ShareOf(name, counted, looksInside, 0);
  }

  /**
   * Returns the same share, where a calculation needs one number, at the high end of its range: the
   * safe end for an upper limit.
   *
   * @return what is counted, at the high end
   */
  public ShareOf atHigh() {
    return new ShareOf(name, counted, looksInside, 1);
  }

  /**
   * Returns how much of what is counted a material holds.
   *
   * @param material the material
   * @return the share by mass of the material
   * @throws ProblemException if the material is itself a mix of which the parts are not stated
   */
  public MassFractionRange contentOf(Material material) {
    if (counted.test(material)) {
      return MassFractionRange.of(MassFraction.ONE);
    }
    if (!looksInside) {
      return MassFractionRange.of(MassFraction.ZERO);
    }
    return inside(material, new HashMap<>());
  }

  /**
   * Returns what the share in a mix hangs on; its central value has every constituent at the middle
   * of its range.
   *
   * @param composition the mix
   * @return the drivers of its share by mass: what each constituent makes of its material
   * @throws ProblemException if a material is itself a mix of which the parts are not stated
   */
  public Drivers driversIn(Composition composition) {
    composition.share(this);
    List<Integer> there =
        IntStream.range(0, composition.size())
            .filter(i -> composition.massFractionValue(i) > 0)
            .boxed()
            .toList();
    return Drivers.of(
        SHARE.of(inWords()),
        there.stream().flatMap(i -> inputs(composition.materials().get(i)).stream()).toList(),
        values ->
            there.stream()
                .mapToDouble(
                    i ->
                        composition.massFractionValue(i)
                            * contentOf(composition.materials().get(i), values))
                .sum());
  }

  /** The part of a material that each of its constituents makes, as far as that is to be known. */
  private List<EstimateInput> inputs(Material material) {
    if (counted.test(material) || !looksInside) {
      return List.of();
    }
    List<EstimateInput> inputs = new ArrayList<>();
    for (Constituent part : partsThatHold(material)) {
      inputs.add(input(material, part));
      inputs.addAll(inputs(part.material()));
    }
    return inputs;
  }

  /** The constituents that hold any of what is counted. */
  private List<Constituent> partsThatHold(Material material) {
    return material.constituents().stream()
        .filter(part -> contentOf(part.material()).high().value() > 0)
        .toList();
  }

  private static EstimateInput input(Material material, Constituent part) {
    Bilingual what =
        Bilingual.of(locale -> part.material().name(locale) + " / " + material.name(locale));
    return EstimateInput.of(
        PART.of(what),
        part.share().low().value(),
        part.share().high().value(),
        EstimateInput.Direction.RAISES);
  }

  /** How much of what is counted a material holds, for one value of each constituent's part. */
  private double contentOf(Material material, Drivers.Values values) {
    if (counted.test(material) || !looksInside) {
      return counted.test(material) ? 1 : 0;
    }
    double content = 0;
    for (Constituent part : partsThatHold(material)) {
      content += values.of(input(material, part)) * contentOf(part.material(), values);
    }
    return Amounts.clamp(content);
  }

  /**
   * Returns the materials of which it is not known how much of what is counted they hold.
   *
   * @param materials the materials
   * @return those that are themselves a mix of which the parts are not stated, or hold such a mix,
   *     in their order; empty if {@link #contentOf} tells it for all
   */
  public List<Material> unknown(List<Material> materials) {
    Map<Material, Boolean> seen = new HashMap<>();
    return materials.stream().filter(m -> isUnknown(m, seen)).toList();
  }

  private boolean isUnknown(Material material, Map<Material, Boolean> seen) {
    Boolean known = seen.get(material);
    if (known == null) {
      known =
          looksInside
              && !counted.test(material)
              && (isUnstatedMix(material)
                  || material.constituents().stream().anyMatch(c -> isUnknown(c.material(), seen)));
      seen.put(material, known);
    }
    return known;
  }

  private MassFractionRange inside(Material material, Map<Material, MassFractionRange> seen) {
    MassFractionRange known = seen.get(material);
    if (known != null) {
      return known;
    }
    if (isUnstatedMix(material)) {
      throw new ProblemException(
          Problem.of(MixtureProblem.CONSTITUENTS_UNKNOWN, material.id())
              .with("counted", inWords()));
    }
    double low = 0;
    double high = 0;
    for (Constituent part : material.constituents()) {
      MassFractionRange content =
          counted.test(part.material())
              ? MassFractionRange.of(MassFraction.ONE)
              : inside(part.material(), seen);
      low += part.share().low().value() * content.low().value();
      high += part.share().high().value() * content.high().value();
    }
    MassFractionRange result =
        new MassFractionRange(
            MassFraction.of(Amounts.clamp(low)), MassFraction.of(Amounts.clamp(high)));
    seen.put(material, result);
    return result;
  }

  /** Tells whether a material counts in full. */
  boolean counts(Material material) {
    return counted.test(material);
  }

  /** A mix down to what counts in full or not at all, constituents at the middle of their range. */
  Composition expanded(Composition mix) {
    return looksInside ? mix.expandedUnless(counted) : mix;
  }

  private static boolean isUnstatedMix(Material material) {
    boolean isMix =
        material.family() == MaterialFamily.OIL_PAINT
            || material.family() == MaterialFamily.DISPERSION;
    return isMix && material.constituents().isEmpty();
  }

  /**
   * Returns the share in a mix as one number.
   *
   * @param composition the mix
   * @return its share by mass, from 0 to 1, at the place of its range that was chosen: the middle,
   *     unless {@link #atLow} or {@link #atHigh}
   * @throws ProblemException if a material is itself a mix of which the parts are not stated
   */
  public double valueIn(Composition composition) {
    MassFractionRange range = composition.share(this);
    double low = range.low().value();
    return low + position * (range.high().value() - low);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ShareOf that
        && name.equals(that.name)
        && counted.equals(that.counted)
        && looksInside == that.looksInside
        && position == that.position;
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + Double.hashCode(position);
  }

  @Override
  public String toString() {
    return name;
  }
}
