// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.math.BigDecimal;
import org.meltwright.units.ScaleInterval;

/**
 * A line as it is printed for the balance, beside what it is exactly.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Material white = MaterialCatalogue.standard().require("titanium-white-rutile");
 * Recipe tint = Recipe.builder("tint").part(wax, 999).part(white, 1).build();
 * Balance kitchen = Balance.of("kitchen", grams(5000), grams(1));
 * WeighingSheet sheet = WeighingSheet.of(Batch.of(tint, grams(300)), List.of(kitchen));
 * RoundedLine printed = sheet.lines().get(1).rounded();
 * printed.exactKilograms(); // 0.0003 kg
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
