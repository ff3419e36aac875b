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

  /** Returns the sum, rounded once. */
  double value() {
    return rest == null
        ? high + low
        : rest.add(new BigDecimal(high)).add(new BigDecimal(low)).doubleValue();
  }

  /** Returns the sum of finite numbers that are not negative, rounded once. */
  static double of(double... values) {
    double sum = 0;
    double errors = 0;
    for (double value : values) {
      double next = sum + value;
      errors += error(sum, value, next);
      sum = next;
    }
    return rounded(sum, errors, values);
  }

  /** Returns what rounding took from a sum of two, without error unless the sum overflows. */
  static double error(double a, double b, double sum) {
    return Math.abs(a) >= Math.abs(b) ? b - (sum - a) : a - (sum - b);
  }

  /**
   * Returns the exact sum of numbers that are not negative, rounded once, from their plain sum and
   * its errors added up.
   *
   * <p>The errors decide how the sum is rounded, unless they come as near to half a last place as
   * their own errors reach: each is at most half a last place of the sum, so n of them added in
   * turn err by less than (n · 2⁻⁵³)² of it.
   */
  static double rounded(double sum, double errors, double... values) {
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
