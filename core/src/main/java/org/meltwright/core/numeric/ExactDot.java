// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

/** Sums of products with the rounding errors of both kept beside them. */
final class ExactDot {

  private ExactDot() {}

  /** Returns b − a·x, as if reckoned with twice the digits. */
  static double residual(double b, double[] a, double... x) {
    double sum = b;
    double errors = 0;
    for (int i = 0; i < x.length; i++) {
      if (a[i] != 0 && x[i] != 0) {
        double product = -a[i] * x[i];
        double next = sum + product;
        double there = next - sum;
        errors += (sum - (next - there)) + (product - there) + Math.fma(-a[i], x[i], -product);
        sum = next;
      }
    }
    return sum + errors;
  }
}
