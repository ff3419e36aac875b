// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.math.BigDecimal;

/**
 * A line as it is printed for the balance, beside what it is exactly.
 *
 * <p>For example:
 *
 * <pre>{@code
 * ExactLine exact = ExactLine.of(grams(0.3), ScaleInterval.of(grams(1)));
 * RoundedLine printed = LineRounding.of(List.of(exact)).lines().get(0);
 * printed.printedKilograms(); // 0.0000 kg
 * // a kitchen balance cannot weigh it: take a finer one
 * printed.isBelowInterval(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param exactKilograms the exact mass in kg
 * @param printedKilograms the printed mass in kg, a whole number of the interval's steps
 * @param interval the interval of its balance
 */
public record RoundedLine(double exactKilograms, double printedKilograms, ScaleInterval interval) {

  /**
   * Returns what rounding added.
   *
   * @return printed less exact, in kg; negative where rounding took away
   */
  public double errorKilograms() {
    return BigDecimal.valueOf(printedKilograms)
        .subtract(BigDecimal.valueOf(exactKilograms))
        .doubleValue();
  }

  /**
   * Tells whether the balance cannot show this line, since it is less than one step: weigh it on a
   * finer balance, or make a larger batch.
   *
   * @return whether the exact mass is above zero and below one step
   */
  public boolean isBelowInterval() {
    return interval.isTooCoarseFor(exactKilograms);
  }
}
