// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/** Numbers of more digits than a {@code double} gives back when printed. */
final class ManyDigits {

  /** Decimals of up to 15 digits come back from a double as they were. */
  static final int DIGITS_OF_EVERY_DOUBLE = 15;

  /** Above it doubles skip whole numbers, and the engine keeps a number as a whole one. */
  static final double MOST_WHOLE = 0x1p53;

  private static final BigDecimal WHOLE_IN_DOUBLE = new BigDecimal(MOST_WHOLE);

  private ManyDigits() {}

  /** The number if a double would lose digits of it; null for all others. */
  static @Nullable BigDecimal of(Number number) {
    if (number instanceof BigInteger whole) {
      return beyondDouble(new BigDecimal(whole));
    }
    if (number instanceof Long whole) {
      return beyondDouble(BigDecimal.valueOf(whole));
    }
    return number instanceof BigDecimal decimal ? beyondDouble(decimal) : null;
  }

  private static @Nullable BigDecimal beyondDouble(BigDecimal number) {
    if (number.abs().compareTo(WHOLE_IN_DOUBLE) > 0) {
      return number;
    }
    if (number.precision() <= DIGITS_OF_EVERY_DOUBLE) {
      return null;
    }
    return BigDecimal.valueOf(number.doubleValue()).compareTo(number) == 0 ? null : number;
  }
}
