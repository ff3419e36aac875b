// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.planning.blend;

import org.meltwright.core.mixture.Composition;

/** What the figure of a wish comes to in amounts of parts, at the end that a bound is held at. */
final class Reached {

  private static final int HALVINGS = 200;

  private Reached() {}

  static double of(
      Coefficients parts, Bounded wish, boolean isUpper, boolean everyLot, double... kilograms) {
    Figure figure = wish.figure();
    Figure.End end =
        !everyLot ? Figure.End.MIDDLE : isUpper ? Figure.End.LARGEST : Figure.End.SMALLEST;
    if (figure instanceof Figures.Change change) {
      Composition made =
          Composition.blend(parts.parts().stream().map(BlendPart::composition).toList(), kilograms);
      return KeptWishes.change(made, change.recipe());
    }
    return figure.per() == Figure.Per.OTHER
        ? quotient(parts, figure, end, kilograms)
        : sum(parts, figure, end, kilograms);
  }

  private static double sum(
      Coefficients parts, Figure figure, Figure.End end, double... kilograms) {
    double[] factors = parts.over(figure, end);
    double over = 0;
    double whole = 0;
    for (int p = 0; p < kilograms.length; p++) {
      over += kilograms[p] * factors[p];
      whole += kilograms[p];
    }
    return figure.per() == Figure.Per.AMOUNT ? over : over / whole;
  }

  /** The bound at which nothing exceeds it: found by halving, since what exceeds only falls. */
  private static double quotient(
      Coefficients parts, Figure figure, Figure.End end, double... kilograms) {
    double low = 0;
    double high = 1;
    while (excess(parts, figure, high, end, kilograms) > 0 && high < 1e12) {
      high *= 2;
    }
    for (int i = 0; i < HALVINGS && high - low > 1e-15 * high; i++) {
      double middle = low + (high - low) / 2;
      if (excess(parts, figure, middle, end, kilograms) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static double excess(
      Coefficients parts, Figure figure, double bound, Figure.End end, double... kilograms) {
    double[] factors = parts.excess(figure, bound, end);
    double sum = 0;
    for (int p = 0; p < kilograms.length; p++) {
      sum += kilograms[p] * factors[p];
    }
    return sum;
  }
}
