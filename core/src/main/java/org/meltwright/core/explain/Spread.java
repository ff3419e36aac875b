// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.InverseErf;

/**
 * Where in its range an input is likely to lie (JCGM 101:2008, 6.4).
 *
 * <p>A thickness that was weighed is likelier near the middle of its range than at an end:
 *
 * <pre>{@code
 * Symbol thickness = Symbol.beside(Spread.class, "thickness", "m");
 * EstimateInput guessed =
 *     EstimateInput.of(thickness, 3e-4, 5e-4, EstimateInput.Direction.RAISES);
 * EstimateInput weighed = guessed.withSpread(Spread.NORMAL);
 * Drivers.of(thickness, List.of(guessed), v -> v.of(guessed)).likely(); // 0.305–0.495 mm
 * Drivers.of(thickness, List.of(weighed), v -> v.of(weighed)).likely(); // 0.316–0.484 mm
 * }</pre>
 */
public enum Spread {
  /** Evenly anywhere in its range: nothing but the ends is known. */
  EVEN,
  /** The likelier the nearer to the middle, as a triangle. */
  TRIANGULAR,
  /** Normally, the ends being two standard uncertainties away (k = 2); none lies beyond. */
  NORMAL;

  /** What two standard uncertainties of a normal distribution hold. */
  private static final double WITHIN_TWO = Erf.value(Math.sqrt(2));

  /**
   * The place in the range, from −1 to 1, below which a share of all cases lies; 0 to 1 exclusive.
   */
  double position(double share) {
    return switch (this) {
      case EVEN -> 2 * share - 1;
      case TRIANGULAR -> share < 0.5 ? Math.sqrt(2 * share) - 1 : 1 - Math.sqrt(2 * (1 - share));
      case NORMAL -> InverseErf.value((2 * share - 1) * WITHIN_TWO) / Math.sqrt(2);
    };
  }
}
