// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.planning.PlanningProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.ScaleInterval;

/** Answers one question: searches, then makes amounts of shares, steps of amounts, and reasons. */
final class BlendSolver {

  private static final double NOTHING = 1e-12;

  private final BlendSearch search;
  private final List<Wish> wishes;
  private final BlendAim aim;
  private final @Nullable Composition usual;

  BlendSolver(BlendSearch search, List<Wish> wishes, BlendAim aim, @Nullable Composition usual) {
    this.search = search;
    this.wishes = wishes;
    this.aim = aim;
    this.usual = usual;
  }

  BlendAnswer answer(boolean everyLot, @Nullable ScaleInterval interval) {
    BlendSearch.Best best =
        aim instanceof BlendAim.Most ? most(everyLot) : search.best(wishes, aim, kilogram());
    return switch (best.kind()) {
      case OPTIMAL -> found(best, everyLot, interval);
      case INFEASIBLE -> impossible();
      case UNDECIDED -> new BlendAnswer.Undecided();
      case UNBOUNDED ->
          throw new ProblemException(Problem.of(PlanningProblem.NO_STOCK, aim.toString()));
    };
  }

  private static BlendModel.Size kilogram() {
    return BlendModel.Size.KILOGRAM;
  }

  /**
   * How much is made is open, and nothing at all would keep every share: so what ranked wishes must
   * give way is found for a kilogram first, and they are hard then.
   */
  private BlendSearch.Best most(boolean everyLot) {
    BlendSearch.Best shape = search.best(wishes, null, kilogram());
    if (!shape.isFound()) {
      return shape;
    }
    double[] kilograms = amounts(shape.model().amounts(shape.answer()), shape.model());
    List<Wish> fixed = new ArrayList<>();
    for (Wish wish : wishes) {
      fixed.add(wish instanceof Bounded b && !b.isHard() ? fixed(b, everyLot, kilograms) : wish);
    }
    BlendSearch.Best best = search.best(fixed, aim, BlendModel.Size.WHOLE);
    return best.isFound() && sum(best.model().amounts(best.answer())) <= NOTHING
        ? search.best(fixed, aim, kilogram())
        : best;
  }

  private Bounded fixed(Bounded wish, boolean everyLot, double... kilograms) {
    Bounded hard = new Bounded(wish.figure(), wish.low(), wish.high(), Bounded.HARD);
    if (hard.hasLow()) {
      double reached = Reached.of(search.coefficients(), wish, false, everyLot, kilograms);
      hard = hard.withLow(Math.min(hard.low(), reached));
    }
    if (hard.hasHigh()) {
      double reached = Reached.of(search.coefficients(), wish, true, everyLot, kilograms);
      hard = hard.withHigh(Math.max(hard.high(), reached));
    }
    return hard;
  }

  private BlendAnswer impossible() {
    Conflicts conflicts = new Conflicts(search, wishes);
    List<Concession> set = conflicts.set().stream().map(conflicts::concession).toList();
    return conflicts.isUndecided() || set.isEmpty()
        ? new BlendAnswer.Undecided()
        : new BlendAnswer.Impossible(set);
  }

  private BlendAnswer found(
      BlendSearch.Best best, boolean everyLot, @Nullable ScaleInterval interval) {
    EqualBlends equals = new EqualBlends(search, best, aim, usual);
    double[] kilograms = amounts(equals.shown(), best.model());
    KeptWishes kept = new KeptWishes(search.coefficients(), wishes, everyLot);
    double[] weighed = interval == null ? kilograms : weighed(interval, kilograms, kept);
    List<BlendLine> lines = new ArrayList<>();
    double whole = sum(equals.shown());
    for (int p = 0; p < kilograms.length; p++) {
      lines.add(
          new BlendLine(
              search.parts().get(p),
              equals.shown()[p] / whole,
              kilograms[p],
              weighed[p],
              Math.min(1, equals.least(p) / whole),
              Math.min(1, equals.most(p) / whole)));
    }
    return new BlendAnswer.Found(
        new BlendAnswer.Found.Proved(
            lines,
            aim,
            value(best, kilograms),
            new Worths(search, best, aim).all(),
            concessions(everyLot, kilograms),
            interval == null ? List.of() : kept.broken(weighed),
            equals.areSeveral(),
            best.certificate()));
  }

  private double value(BlendSearch.Best best, double... kilograms) {
    if (aim instanceof BlendAim.Most most) {
      return IntStream.range(0, kilograms.length)
          .filter(p -> most.names().contains(search.parts().get(p).name()))
          .mapToDouble(p -> kilograms[p])
          .sum();
    }
    return Math.max(0, best.answer().objective()) + 0.0;
  }

  private List<Concession> concessions(boolean everyLot, double... kilograms) {
    List<Concession> made = new ArrayList<>();
    for (Bounded wish : BlendSearch.bounded(wishes)) {
      for (boolean isUpper : new boolean[] {false, true}) {
        if (!wish.isHard() && (isUpper ? wish.hasHigh() : wish.hasLow())) {
          double bound = wish.bound(isUpper);
          double reached = Reached.of(search.coefficients(), wish, isUpper, everyLot, kilograms);
          double miss = isUpper ? reached - bound : bound - reached;
          if (miss > 1e-8 * BlendModel.weight(wish, bound)) {
            made.add(Concession.made(wish, bound, reached));
          }
        }
      }
    }
    return made;
  }

  private double[] weighed(ScaleInterval interval, double[] kilograms, KeptWishes kept) {
    double[] stock =
        search.parts().stream()
            .mapToDouble(p -> p.stockKilograms().orElse(Double.POSITIVE_INFINITY))
            .toArray();
    return new ScaleSteps(interval, kilograms, stock, kept::areKept, this::measure).rounded();
  }

  /** The aim of amounts that are weighed, where it can be told by a sum; else none is better. */
  private double measure(double... kilograms) {
    double sum = 0;
    if (aim instanceof BlendAim.LeastCost cost) {
      double[] prices = search.coefficients().over(cost.figure(), Figure.End.MIDDLE);
      for (int p = 0; p < kilograms.length; p++) {
        sum += kilograms[p] * prices[p];
      }
      return sum / sum(kilograms);
    }
    if (aim instanceof BlendAim.Most most) {
      for (int p = 0; p < kilograms.length; p++) {
        sum -= most.names().contains(search.parts().get(p).name()) ? kilograms[p] : 0;
      }
    }
    return sum;
  }

  private static double sum(double... values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** The whole where its size is set; else the most that the stock allows, or the least wished. */
  private double[] amounts(double[] shown, BlendModel model) {
    if (model.size() == BlendModel.Size.WHOLE) {
      return shown;
    }
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    for (Bounded wish : BlendSearch.bounded(wishes)) {
      if (wish.figure() instanceof Figures.Amount amount) {
        double taken = 0;
        double[] counted = search.coefficients().over(amount, Figure.End.MIDDLE);
        for (int p = 0; p < shown.length; p++) {
          taken += shown[p] * counted[p];
        }
        if (taken > NOTHING && wish.isHard()) {
          low = wish.hasLow() ? Math.max(low, wish.low() / taken) : low;
          high = wish.hasHigh() ? Math.min(high, wish.high() / taken) : high;
        }
      }
    }
    double whole = Double.isFinite(high) ? high : low > 0 ? low : 1;
    double[] amounts = shown.clone();
    for (int p = 0; p < amounts.length; p++) {
      amounts[p] *= whole;
    }
    return amounts;
  }
}
