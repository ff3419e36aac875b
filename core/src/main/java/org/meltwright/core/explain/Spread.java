// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.InverseErf;

/** Where in its range an input is likely to lie (JCGM 101:2008, 6.4). */
public enum Spread {
  /** Evenly anywhere in its range: nothing but the ends is known. */
  EVEN {
    @Override
    double position(double share) {
      return 2 * share - 1;
    }
  },
  /** The likelier the nearer to the middle, as a triangle. */
  TRIANGULAR {
    @Override
    double position(double share) {
      return share < 0.5 ? Math.sqrt(2 * share) - 1 : 1 - Math.sqrt(2 * (1 - share));
    }
  },
  /** Normally, the ends being two standard uncertainties away (k = 2); none lies beyond. */
  NORMAL {
    @Override
    double position(double share) {
      return InverseErf.value((2 * share - 1) * WITHIN_TWO) / Math.sqrt(2);
    }
  };

  /** What two standard uncertainties of a normal distribution hold. */
  private static final double WITHIN_TWO = Erf.value(Math.sqrt(2));

  /**
   * The place in the range, from −1 to 1, below which a share of all cases lies; 0 to 1 exclusive.
   */
  abstract double position(double share);
}
