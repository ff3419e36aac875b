// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.measurement;

import org.apache.commons.numbers.gamma.RegularizedBeta;

/** How many standard uncertainties hold 95.45 %: 2 for a normal distribution, more for few. */
final class CoverageFactor {

  /** What two standard uncertainties of a normal distribution hold, JCGM 100:2008, table G.1. */
  static final double LEVEL = 0.9545;

  private static final double ENDLESS = 1e6;

  private CoverageFactor() {}

  /** Student's t for a level and degrees of freedom, JCGM 100:2008, table G.2. */
  static double of(double freedom) {
    if (freedom > ENDLESS) {
      return 2;
    }
    double low = 0;
    double high = 100;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      if (inside(middle, freedom) < LEVEL) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.max(2, low);
  }

  private static double inside(double t, double freedom) {
    return 1 - RegularizedBeta.value(freedom / (freedom + t * t), freedom / 2, 0.5);
  }
}
