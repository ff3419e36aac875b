// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Bisection to the last bit, for monotone functions whose root is bracketed.
 *
 * <pre>{@code
 * Roots.bisect(x -> x * x - 2, 0, 2); // 1.414213562373095
 * }</pre>
 */
public final class Roots {

  private static final int HALVINGS = 200;

  private Roots() {}

  /**
   * Returns where a function that changes sign once between two ends is zero.
   *
   * @param function the function
   * @param low the lower end
   * @param high the upper end
   * @return the place, to the last bit; an end if the sign does not change
   */
  public static double bisect(DoubleUnaryOperator function, double low, double high) {
    boolean risesFromBelow = function.applyAsDouble(low) < 0;
    double below = low;
    double above = high;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = below + (above - below) / 2;
      if (middle <= below || middle >= above) {
        break;
      }
      if (function.applyAsDouble(middle) < 0 == risesFromBelow) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return below + (above - below) / 2;
  }
}
