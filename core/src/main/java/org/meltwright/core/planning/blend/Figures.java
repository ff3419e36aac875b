// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import static org.meltwright.core.planning.blend.Bounded.CHECK;

import org.joda.money.Money;
import org.meltwright.core.cost.CostProblem;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Density;
import org.meltwright.units.MassFraction;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityFormatter;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityRange;
import org.meltwright.units.VolumeFraction;

/** The figures that a wish may bound. */
final class Figures {

  private static final int DIGITS = 4;

  private Figures() {}

  static QuantityFormatter formatter() {
    return QuantityFormatter.ofSignificantDigits(DIGITS);
  }

  static Bilingual number(double value) {
    return Bilingual.of(reader -> formatter().withLocale(reader).format(value));
  }

  static Bilingual kilograms(double value) {
    return Bilingual.of(
        reader ->
            formatter()
                .withLocale(reader)
                .format(
                    QuantityKind.MASS, value, value < 1 ? MetricUnits.GRAM : MetricUnits.KILOGRAM));
  }

  static Bilingual share(double value) {
    MassFraction share = MassFraction.of(Math.min(1, Math.max(0, value)));
    return Bilingual.of(reader -> formatter().withLocale(reader).format(share));
  }

  /** The share of a part by mass. */
  record PartShare(String part) implements Figure {
    @Override
    public double over(BlendPart other, End end) {
      return other.name().equals(part) ? 1 : 0;
    }

    @Override
    public Bilingual name() {
      return Bilingual.of(part);
    }

    @Override
    public Bilingual inWords(double value) {
      return share(value);
    }
  }

  /** The share by mass of what is counted. */
  record MassShare(ShareOf what) implements Figure {
    @Override
    public double over(BlendPart part, End end) {
      if (end == End.MIDDLE) {
        return what.valueIn(part.composition());
      }
      MassFractionRange range = part.composition().share(what);
      return end.of(range.low().value(), 0, range.high().value());
    }

    @Override
    public Bilingual name() {
      return what.inWords();
    }

    @Override
    public Bilingual inWords(double value) {
      return share(value);
    }
  }

  /** The share by volume of what is counted. */
  record VolumeShare(ShareOf what, DensityBasis basis) implements Figure {
    @Override
    public Per per() {
      return Per.OTHER;
    }

    @Override
    public double over(BlendPart part, End end) {
      throw new IllegalStateException("a share by volume has no sum of its own");
    }

    /** Volume counted, times one less the bound; all other volume, times the bound. */
    @Override
    public double excess(BlendPart part, double bound, End end) {
      return Extremes.of(part.composition(), m -> excess(m, bound, end));
    }

    private double excess(Material material, double bound, End end) {
      MassFractionRange content = what.contentOf(material);
      double low = content.low().value();
      boolean isWholeOrNone = low == 1 || content.high().value() == 0;
      if (isWholeOrNone || material.constituents().isEmpty()) {
        double factor = low - bound;
        return factor * cubicMetresPerKilogram(material, basis, factor < 0 ? end.other() : end);
      }
      return Extremes.ofConstituents(material, m -> excess(m, bound, end), end);
    }

    @Override
    public Bilingual name() {
      return what.inWords();
    }

    @Override
    public Bilingual inWords(double value) {
      VolumeFraction share = VolumeFraction.of(Math.min(1, Math.max(0, value)));
      return Bilingual.of(reader -> formatter().withLocale(reader).format(share));
    }
  }

  /** How many times one share another is. */
  record RatioOf(ShareOf first, ShareOf second) implements Figure {
    @Override
    public Per per() {
      return Per.OTHER;
    }

    @Override
    public double over(BlendPart part, End end) {
      throw new IllegalStateException("a ratio has no sum of its own");
    }

    @Override
    public double excess(BlendPart part, double bound, End end) {
      return Extremes.of(part.composition(), m -> excess(m, bound, end));
    }

    private double excess(Material material, double bound, End end) {
      MassFractionRange over = first.contentOf(material);
      MassFractionRange under = second.contentOf(material);
      boolean isOneExact =
          over.low().equals(over.high())
              || under.low().equals(under.high())
              || material.constituents().isEmpty();
      if (!isOneExact) {
        return Extremes.ofConstituents(material, m -> excess(m, bound, end), end);
      }
      double small = over.low().value() - bound * under.high().value();
      double large = over.high().value() - bound * under.low().value();
      double middle = over.middle().value() - bound * under.middle().value();
      return end.of(small, middle, large);
    }

    @Override
    public Bilingual name() {
      Bilingual one = first.inWords();
      Bilingual two = second.inWords();
      return new Bilingual(
          one.english() + " : " + two.english(), one.german() + " : " + two.german());
    }

    @Override
    public Bilingual inWords(double value) {
      return number(value);
    }

    @Override
    public Step step() {
      return Step.TENTH;
    }
  }

  /** The mean by mass of a figure of the materials, such as the acid value. */
  record Mean(PropertyKey<NumberRange> key, String unitOfFigure) implements Figure {
    @Override
    public double over(BlendPart part, End end) {
      return Extremes.of(part.composition(), m -> of(m, end));
    }

    private double of(Material material, End end) {
      NumberRange range = material.require(key).value();
      if (range.isOpenAbove()) {
        throw new ProblemException(
            Problem.of(PlanningProblem.OPEN_FIGURE, material.id()).with("figure", key.inWords()));
      }
      return end.of(range.low(), range.middle(), range.high());
    }

    @Override
    public Bilingual name() {
      return key.inWords();
    }

    @Override
    public Bilingual inWords(double value) {
      return number(value).plus(" " + unitOfFigure);
    }

    @Override
    public Step step() {
      return Step.ONE;
    }
  }

  /** The volume of a kilogram, told as a density. */
  record SpecificVolume(DensityBasis basis) implements Figure {
    @Override
    public double over(BlendPart part, End end) {
      return Extremes.of(part.composition(), m -> cubicMetresPerKilogram(m, basis, end));
    }

    @Override
    public Bilingual name() {
      return CHECK.name("density");
    }

    @Override
    public Bilingual inWords(double value) {
      return number(1 / value).plus(" kg/m³");
    }

    @Override
    public Step step() {
      return Step.TEN_KILOGRAMS_PER_CUBIC_METRE;
    }

    @Override
    public double moved(double value, double steps) {
      double size = step().size();
      return 1 / Math.max(size, 1 / value + steps * size);
    }

    @Override
    public boolean isInverse() {
      return true;
    }
  }

  /** What a kilogram costs. */
  record Cost(String currency) implements Figure {
    @Override
    public double over(BlendPart part, End end) {
      return perKilogram(part, currency);
    }

    static double perKilogram(BlendPart part, String currency) {
      UnitPrice price =
          part.price()
              .orElseThrow(
                  () -> new ProblemException(Problem.of(CostProblem.PRICE_MISSING, part.name())));
      if (!price.currency().getCode().equals(currency)) {
        throw new ProblemException(
            Problem.of(CostProblem.CURRENCY_MIXED, currency)
                .with("other", price.currency().getCode()));
      }
      return price.perKilogram().dividedBy(ExactMoney.of(Money.of(price.currency(), 1)));
    }

    @Override
    public Bilingual name() {
      return CHECK.name("cost");
    }

    @Override
    public Bilingual inWords(double value) {
      return number(value).plus(" " + currency + "/kg");
    }

    @Override
    public Step step() {
      return Step.ONE;
    }
  }

  /** How much of a part goes in, in kg; of all of them if none is named. */
  record Amount(String part) implements Figure {
    static final String ALL = "";

    @Override
    public Per per() {
      return Per.AMOUNT;
    }

    @Override
    public double over(BlendPart other, End end) {
      return part.equals(ALL) || other.name().equals(part) ? 1 : 0;
    }

    @Override
    public Bilingual name() {
      return part.equals(ALL) ? CHECK.name("amount") : Bilingual.of(part);
    }

    @Override
    public Bilingual inWords(double value) {
      return kilograms(value);
    }

    @Override
    public Step step() {
      return Step.HUNDRED_GRAMS;
    }
  }

  /** How much of the blend differs from a recipe: half the sum of all differences of shares. */
  record Change(Composition recipe) implements Figure {
    @Override
    public double over(BlendPart part, End end) {
      return 0;
    }

    @Override
    public Bilingual name() {
      return CHECK.name("change of the recipe");
    }

    @Override
    public Bilingual inWords(double value) {
      return share(value);
    }
  }

  /**
   * What a kilogram takes; a mix without a figure of its own what any shares of its constituents
   * may take.
   */
  private static double cubicMetresPerKilogram(
      Material material, DensityBasis basis, Figure.End end) {
    QuantityRange<Density> density = basis.density(material);
    double own = end.of(1 / density.highSi(), 1 / density.middleSi(), 1 / density.lowSi());
    boolean isOfParts =
        !material.constituents().isEmpty() && material.find(basis.property(material)).isEmpty();
    if (end == Figure.End.MIDDLE || !isOfParts) {
      return own;
    }
    double any = Extremes.ofConstituents(material, m -> cubicMetresPerKilogram(m, basis, end), end);
    return end == Figure.End.LARGEST ? Math.max(own, any) : Math.min(own, any);
  }
}
