// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.mixture;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A sum that does not depend on the order of what is added: the double nearest to the exact sum.
 *
 * <p>Each addition keeps its rounding error beside the sum, without error; what is lost of the
 * errors in turn, which takes numbers sixteen powers of ten apart, is kept as a decimal.
 *
 * <p>Not thread-safe; for one sum.
 */
final class ExactSum {

  /** Twice the square of half a last place: the bound, and room for its own rounding. */
  private static final double DOUBT = 0x1p-105;

  private double high;
  private double low;
  private @Nullable BigDecimal rest;

  /** Adds a finite number. */
  void add(double value) {
    double sum = high + value;
    double error = error(high, value, sum);
    double lower = low + error;
    double lost = error(low, error, lower);
    high = sum;
    low = lower;
    if (lost != 0) {
      rest = (rest == null ? BigDecimal.ZERO : rest).add(new BigDecimal(lost));
    }
  }

  /** What rounding took from a sum; exact for doubles of any size that do not overflow. */
  private static double error(double a, double b, double sum) {
    double part = sum - a;
    return (a - (sum - part)) + (b - part);
  }

  /** Returns the sum, rounded once. */
  double value() {
    return rest == null
        ? high + low
        : rest.add(new BigDecimal(high)).add(new BigDecimal(low)).doubleValue();
  }

  /**
   * Returns the sum of finite numbers that are not negative, rounded once.
   *
   * <p>The errors of a plain sum, added up, decide how it is rounded, unless they come as near to
   * half a last place as their own errors reach: each error is at most half a last place of the
   * sum, so n of them added in turn err by less than (n · 2⁻⁵³)² of it.
   */
  static double of(double... values) {
    double sum = 0;
    double errors = 0;
    for (double value : values) {
      double next = sum + value;
      errors += sum >= value ? value - (next - sum) : sum - (next - value);
      sum = next;
    }
    double doubt = DOUBT * values.length * values.length * sum;
    double least = sum + (errors - doubt);
    return least == sum + (errors + doubt) ? least : exactly(values);
  }

  private static double exactly(double... values) {
    ExactSum sum = new ExactSum();
    for (double value : values) {
      sum.add(value);
    }
    return sum.value();
  }
}
