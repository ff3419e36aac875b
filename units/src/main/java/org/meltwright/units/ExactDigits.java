// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The fewest digits from which reading finds a value again, bit for bit. */
final class ExactDigits {

  private static final int MOST_OF_A_DOUBLE = 17;
  private static final int MOST = 40;

  private ExactDigits() {}

  /**
   * Shortens {@code value}, or its exact form if no double will do, to the fewest digits from which
   * {@code back} leads to {@code target}.
   */
  static BigDecimal find(
      double value,
      double target,
      Function<BigDecimal, Double> back,
      @Nullable BigDecimal exactValue) {
    BigDecimal start = new BigDecimal(value);
    for (int digits = 1; digits <= MOST_OF_A_DOUBLE; digits++) {
      BigDecimal candidate = round(start, digits);
      if (back.apply(candidate) == target) {
        return candidate;
      }
    }
    if (exactValue != null) {
      for (int digits = MOST_OF_A_DOUBLE + 1; digits <= MOST; digits++) {
        BigDecimal candidate = round(exactValue, digits);
        if (back.apply(candidate) == target) {
          return candidate;
        }
      }
    }
    return nearby(value, target, back);
  }

  /** One of the neighbours; a value near which none leads back is written as it is. */
  private static BigDecimal nearby(double value, double target, Function<BigDecimal, Double> back) {
    for (double neighbour : new double[] {Math.nextUp(value), Math.nextDown(value)}) {
      if (back.apply(BigDecimal.valueOf(neighbour)) == target) {
        return BigDecimal.valueOf(neighbour);
      }
    }
    return BigDecimal.valueOf(value);
  }

  /** Rounded, with as many digits as asked for when they are more than a double has. */
  private static BigDecimal round(BigDecimal value, int digits) {
    BigDecimal rounded = value.round(new MathContext(digits, RoundingMode.HALF_EVEN));
    int missing = digits - rounded.precision();
    return digits > MOST_OF_A_DOUBLE && missing > 0 && rounded.signum() != 0
        ? rounded.setScale(rounded.scale() + missing)
        : rounded;
  }
}
