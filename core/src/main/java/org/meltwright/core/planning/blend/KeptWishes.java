// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;

/** The hard wishes held against amounts that were weighed out, not worked out. */
final class KeptWishes {

  private static final double SLACK = 1e-9;

  /** One side of a wish as a sum over the amounts. */
  private static final class Side {

    private final Wish wish;
    private final double[] factors;
    private final double bound;

    /** 1 for a high bound, −1 for a low one. */
    private final int sign;

    Side(Wish wish, double[] factors, double bound, int sign) {
      this.wish = wish;
      this.factors = factors;
      this.bound = bound;
      this.sign = sign;
    }

    boolean isKept(double... amounts) {
      double sum = 0;
      double size = Math.abs(bound);
      for (int p = 0; p < amounts.length; p++) {
        double term = factors[p] * amounts[p];
        sum += term;
        size = Math.max(size, Math.abs(term));
      }
      return sign * (sum - bound) <= SLACK * size;
    }
  }

  private final Coefficients coefficients;
  private final List<BlendPart> parts;
  private final List<Side> sides = new ArrayList<>();
  private final List<Bounded> changes = new ArrayList<>();

  KeptWishes(Coefficients coefficients, List<Wish> wishes, boolean everyLot) {
    this.coefficients = coefficients;
    this.parts = coefficients.parts();
    for (Wish wish : wishes) {
      if (wish instanceof Bounded bounded && bounded.isHard()) {
        add(bounded, everyLot);
      }
    }
  }

  private void add(Bounded wish, boolean everyLot) {
    if (wish.figure() instanceof Figures.Change) {
      changes.add(wish);
      return;
    }
    if (wish.hasLow()) {
      sides.add(side(wish, false, everyLot ? Figure.End.SMALLEST : Figure.End.MIDDLE));
    }
    if (wish.hasHigh()) {
      sides.add(side(wish, true, everyLot ? Figure.End.LARGEST : Figure.End.MIDDLE));
    }
  }

  private Side side(Bounded wish, boolean isUpper, Figure.End end) {
    double bound = wish.bound(isUpper);
    double[] factors = coefficients.excess(wish.figure(), bound, end);
    boolean isAmount = wish.figure().per() == Figure.Per.AMOUNT;
    return new Side(wish, factors, isAmount ? bound : 0, isUpper ? 1 : -1);
  }

  boolean areKept(double... kilograms) {
    return sides.stream().allMatch(s -> s.isKept(kilograms))
        && changes.stream().allMatch(c -> isKept(c, kilograms));
  }

  /** The wishes that amounts do not keep. */
  List<Wish> broken(double... kilograms) {
    List<Wish> broken = new ArrayList<>();
    sides.stream().filter(s -> !s.isKept(kilograms)).forEach(s -> broken.add(s.wish));
    changes.stream().filter(c -> !isKept(c, kilograms)).forEach(broken::add);
    return broken.stream().distinct().toList();
  }

  private boolean isKept(Bounded change, double... kilograms) {
    Composition recipe = ((Figures.Change) change.figure()).recipe();
    Composition made =
        Composition.blend(parts.stream().map(BlendPart::composition).toList(), kilograms);
    return change(made, recipe) <= change.high() + SLACK;
  }

  /** Half the sum of the differences of all shares. */
  static double change(Composition made, Composition recipe) {
    double sum = 0;
    for (Material material : made.materials()) {
      sum += Math.abs(share(made, material) - share(recipe, material));
    }
    for (Material material : recipe.materials()) {
      sum += made.materials().contains(material) ? 0 : share(recipe, material);
    }
    return sum / 2;
  }

  private static double share(Composition mix, Material material) {
    int line = mix.materials().indexOf(material);
    return line < 0 ? 0 : mix.massFractionValue(line);
  }
}
