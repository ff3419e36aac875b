// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.joda.money.Money;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.NumberRange;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Check;
import org.meltwright.units.Messages;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A figure between two bounds.
 *
 * @param figure what is bounded
 * @param low the low bound; negative infinity for none
 * @param high the high bound; infinity for none
 * @param place the rank by which it may give way; zero if it does not
 */
record Bounded(Figure figure, double low, double high, int place) implements Wish {

  /**
   * The guards of this package: what they say stands in the bundle beside {@link PlanningProblem}.
   */
  static final Check CHECK = Check.beside(PlanningProblem.class);

  static final int HARD = 0;

  /** Stands for the stock of a part, until the question tells it. */
  static final double ALL_OF_IT = Double.MAX_VALUE;

  private static final Messages TEXTS = Messages.beside(Bounded.class);

  private static final Set<PropertyKey<NumberRange>> ADDITIVE =
      Set.of(
          PropertyKey.ACID_VALUE,
          PropertyKey.ESTER_VALUE,
          PropertyKey.SAPONIFICATION_VALUE,
          PropertyKey.IODINE_VALUE);

  static Bounded share(Figure figure, MassFractionRange range) {
    double low = range.low().value();
    double high = range.high().value();
    return new Bounded(
        figure,
        low == 0 ? Double.NEGATIVE_INFINITY : low,
        high == 1 && low < 1 ? Double.POSITIVE_INFINITY : high,
        HARD);
  }

  static Bounded figure(PropertyKey<NumberRange> key, NumberRange range) {
    if (!ADDITIVE.contains(key)) {
      throw new ProblemException(Problem.of(PlanningProblem.NOT_ADDITIVE, key.inWords()));
    }
    key.require(range);
    return new Bounded(
        new Figures.Mean(key, range.unit()),
        range.low() <= 0 ? Double.NEGATIVE_INFINITY : range.low(),
        range.high(),
        HARD);
  }

  static Bounded cost(UnitPrice most) {
    double perKilogram = most.perKilogram().dividedBy(ExactMoney.of(Money.of(most.currency(), 1)));
    return new Bounded(
        new Figures.Cost(most.currency().getCode()), Double.NEGATIVE_INFINITY, perKilogram, HARD);
  }

  @Override
  public Wish ranked(int rank) {
    return new Bounded(figure, low, high, (int) CHECK.between(rank, 1, 99, "rank of a wish"));
  }

  @Override
  public OptionalInt rank() {
    return place == HARD ? OptionalInt.empty() : OptionalInt.of(place);
  }

  boolean isHard() {
    return place == HARD;
  }

  boolean hasLow() {
    return low > Double.NEGATIVE_INFINITY;
  }

  boolean hasHigh() {
    return high < Double.POSITIVE_INFINITY;
  }

  Bounded withLow(double newLow) {
    return new Bounded(figure, newLow, high, place);
  }

  Bounded withHigh(double newHigh) {
    return new Bounded(figure, low, newHigh, place);
  }

  /** The bound on one side. */
  double bound(boolean isUpper) {
    return isUpper ? high : low;
  }

  /** The same wish with another bound on one side. */
  Bounded with(boolean isUpper, double bound) {
    return isUpper ? withHigh(bound) : withLow(bound);
  }

  @Override
  public Bilingual inWords() {
    double least = figure.isInverse() ? high : low;
    double most = figure.isInverse() ? low : high;
    String key =
        low == ALL_OF_IT
            ? "wish.used-up"
            : Double.isInfinite(least)
                ? "wish.at-most"
                : Double.isInfinite(most)
                    ? "wish.at-least"
                    : low == high ? "wish.exactly" : "wish.between";
    return Bilingual.of(
        reader ->
            TEXTS.text(
                key,
                reader,
                Map.of(
                    "what", figure.name().in(reader),
                    "low", said(least, reader),
                    "high", said(most, reader))));
  }

  private String said(double bound, java.util.Locale reader) {
    return Double.isInfinite(bound) || bound == ALL_OF_IT ? "" : figure.inWords(bound).in(reader);
  }

  @Override
  public String toString() {
    return inWords() + (isHard() ? "" : " (rank " + place + ")");
  }
}
