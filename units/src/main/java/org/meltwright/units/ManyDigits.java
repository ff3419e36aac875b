// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/** Numbers of more digits than a {@code double} gives back when printed. */
final class ManyDigits {

  /** Decimals of up to 15 digits come back from a double as they were. */
  static final int DIGITS_OF_EVERY_DOUBLE = 15;

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
    if (number.precision() <= DIGITS_OF_EVERY_DOUBLE) {
      return null;
    }
    double nearest = number.doubleValue();
    boolean same =
        Double.isFinite(nearest)
            && (BigDecimal.valueOf(nearest).compareTo(number) == 0 || isWhole(number, nearest));
    return same ? null : number;
  }

  /** The engine turns whole doubles into integers; these are the doubles they were. */
  private static boolean isWhole(BigDecimal number, double nearest) {
    return nearest == Math.rint(nearest) && new BigDecimal(nearest).compareTo(number) == 0;
  }
}
