// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/** Checks and sums of plain amounts; all operations of this package count through it. */
final class Amounts {

  /** Beyond these a sum of 10,000 parts could leave the range of a double. */
  private static final double SMALLEST_TOTAL = 1e-290;

  private static final double LARGEST = 1e290;

  private Amounts() {}

  /** Returns a mass in kg; a refusal tells it in its own unit. */
  static double require(Quantity<Mass> mass) {
    double kilograms = QuantityKind.MASS.toSi(mass);
    if (kilograms >= 0 && kilograms <= LARGEST) {
      return kilograms + 0.0;
    }
    throw new ProblemException(Problem.of(MixtureProblem.AMOUNT, Bilingual.of(mass)));
  }

  static double require(double amount, String unit) {
    if (amount >= 0 && amount <= LARGEST) {
      return amount + 0.0;
    }
    throw new ProblemException(
        Problem.of(
            MixtureProblem.AMOUNT, Bilingual.of(amount).plus(unit.isEmpty() ? "" : " " + unit)));
  }

  /** Returns the parts divided by their sum, in a new array. */
  static double[] normalised(double... parts) {
    double total = 0;
    for (double part : parts) {
      total += require(part, "");
    }
    if (!(total >= SMALLEST_TOTAL)) {
      throw new ProblemException(Problem.of(MixtureProblem.NO_PARTS, Bilingual.of(total)));
    }
    double[] shares = new double[parts.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = parts[i] / total;
    }
    return shares;
  }

  static double sum(double[] values) {
    return Arrays.stream(values).sum();
  }

  /** Puts a computed share back into 0 to 1, from which rounding may have carried it a hair. */
  static double clamp(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
