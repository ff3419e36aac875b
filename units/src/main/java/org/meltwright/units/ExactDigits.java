// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.ToDoubleFunction;

/** The fewest digits from which reading finds a value again, bit for bit. */
final class ExactDigits {

  private static final int MOST = 40;
  private static final int LONG = 20;

  private ExactDigits() {}

  /** Shortens a number to the fewest digits from which {@code back} leads to the target. */
  static BigDecimal find(BigDecimal exact, double target, ToDoubleFunction<BigDecimal> back) {
    for (int digits = 1; digits <= MOST; digits++) {
      BigDecimal candidate = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (back.applyAsDouble(candidate) == target) {
        return candidate;
      }
    }
    return written(exact);
  }

  /**
   * A number whose few digits a double would take for another value: a twentieth digit, too small
   * to change the value, has it read exactly.
   */
  private static BigDecimal written(BigDecimal exact) {
    BigDecimal last = BigDecimal.ONE.scaleByPowerOfTen(exact.precision() - exact.scale() - LONG);
    return exact.signum() < 0 ? exact.subtract(last) : exact.add(last);
  }
}
