// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.ToDoubleFunction;

/** The fewest digits from which reading finds a value again, bit for bit. */
final class ExactDigits {

  private static final int MOST = 40;

  private ExactDigits() {}

  /** Shortens a number to the fewest digits from which {@code back} leads to the target. */
  static BigDecimal find(BigDecimal exact, double target, ToDoubleFunction<BigDecimal> back) {
    BigDecimal candidate = exact;
    for (int digits = 1; digits <= MOST; digits++) {
      candidate = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (back.applyAsDouble(candidate) == target) {
        return candidate;
      }
    }
    return candidate;
  }
}
