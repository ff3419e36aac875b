// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.Arrays;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** Checks and sums of plain amounts; all operations of this package count through it. */
final class Amounts {

  /** Beyond these a sum of 10,000 parts could leave the range of a double. */
  private static final double SMALLEST_TOTAL = 1e-290;

  private static final double LARGEST = 1e290;

  private Amounts() {}

  static double require(double amount, String unit) {
    if (amount >= 0 && amount <= LARGEST) {
      return amount + 0.0;
    }
    throw new ProblemException(
        Problem.of(MixtureProblem.AMOUNT, unit.isEmpty() ? "" + amount : amount + " " + unit));
  }

  /** Returns the parts divided by their sum, in a new array; their order makes no difference. */
  static double[] normalised(double... given) {
    double[] parts = required(given);
    double total = total(parts);
    double[] shares = new double[parts.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = parts[i] / total;
    }
    return shares;
  }

  /**
   * Returns the parts as multiples of a power of two near their sum, in a new array: without
   * rounding, and so that a product with a share neither vanishes nor overflows.
   */
  static double[] scaled(double... given) {
    double[] parts = required(given);
    double unit = Math.scalb(1.0, -Math.getExponent(total(parts)));
    double[] multiples = new double[parts.length];
    for (int i = 0; i < multiples.length; i++) {
      multiples[i] = parts[i] * unit;
    }
    return multiples;
  }

  /** Returns the parts, copied only if a zero has a sign. */
  private static double[] required(double[] parts) {
    boolean plain = true;
    for (double part : parts) {
      plain &= Double.doubleToRawLongBits(part) >= 0 && part <= LARGEST;
    }
    return plain ? parts : Arrays.stream(parts).map(part -> require(part, "")).toArray();
  }

  private static double total(double[] parts) {
    double total = ExactSum.of(parts);
    if (!(total >= SMALLEST_TOTAL)) {
      throw new ProblemException(Problem.of(MixtureProblem.NO_PARTS, Double.toString(total)));
    }
    return total;
  }

  /** Puts a computed share back into 0 to 1, from which rounding may have carried it a hair. */
  static double clamp(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
