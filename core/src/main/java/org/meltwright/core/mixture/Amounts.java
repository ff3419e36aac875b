// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/** Checks and sums of plain amounts; all operations of this package count through it. */
final class Amounts {

  /** Beyond these a sum of 10,000 parts could leave the range of a double. */
  private static final double SMALLEST_TOTAL = 1e-290;

  private static final double LARGEST = 1e290;
  private static final double LARGEST_CUBIC_METRES = 1e12;

  private Amounts() {}

  /** Returns a mass in kg; a refusal tells it in its own unit. */
  static double require(Quantity<Mass> mass) {
    double kilograms = QuantityKind.MASS.toSi(mass);
    if (kilograms >= 0 && kilograms <= LARGEST) {
      return kilograms + 0.0;
    }
    throw new ProblemException(Problem.of(MixtureProblem.AMOUNT, Bilingual.of(mass)));
  }

  /** Returns a volume in m³; a refusal tells it in its own unit. */
  static double requireVolume(Quantity<Volume> volume) {
    return MixtureProblem.CHECK.between(volume, 0, LARGEST_CUBIC_METRES, "volume");
  }

  static double require(double amount, String unit) {
    if (amount >= 0 && amount <= LARGEST) {
      return amount + 0.0;
    }
    throw new ProblemException(
        Problem.of(
            MixtureProblem.AMOUNT, Bilingual.of(amount).plus(unit.isEmpty() ? "" : " " + unit)));
  }

  /** Returns the parts divided by their sum, in a new array; their order makes no difference. */
  static double[] normalised(double... parts) {
    double total = total(parts);
    double[] shares = new double[parts.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = parts[i] / total + 0.0; // no zero with a sign
    }
    return shares;
  }

  /**
   * Returns the parts as multiples of a power of two near their sum, in a new array: without
   * rounding, and so that a product with a share neither vanishes nor overflows.
   */
  static double[] scaled(double... parts) {
    double unit = Math.scalb(1.0, -Math.getExponent(total(parts)));
    double[] multiples = new double[parts.length];
    for (int i = 0; i < multiples.length; i++) {
      multiples[i] = parts[i] * unit;
    }
    return multiples;
  }

  /** Checks the parts and adds them up, in one pass: this is what a mix costs. */
  private static double total(double... parts) {
    double sum = 0;
    double errors = 0;
    boolean canBe = true;
    for (double part : parts) {
      canBe &= part >= 0 && part <= LARGEST;
      double next = sum + part;
      errors += ExactSum.error(sum, part, next);
      sum = next;
    }
    if (!canBe) {
      Arrays.stream(parts).forEach(part -> require(part, ""));
    }
    double total = ExactSum.rounded(sum, errors, parts);
    if (!(total >= SMALLEST_TOTAL)) {
      throw new ProblemException(Problem.of(MixtureProblem.NO_PARTS, Bilingual.of(total)));
    }
    return total;
  }

  /** Puts a computed share back into 0 to 1, from which rounding may have carried it a hair. */
  static double clamp(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
