// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.explain;

import java.util.Arrays;

/** A scale on which results may be easier to foretell; each rises with the result. */
enum Scale {
  AS_IT_IS(1),
  ROOT(0.5),
  LOGARITHM(0),
  RECIPROCAL_ROOT(-0.5),
  RECIPROCAL(-1);

  private final double power;

  Scale(double power) {
    this.power = power;
  }

  /** Whether all results have a place: what has no end only where the reciprocal is taken. */
  boolean holds(double[] results) {
    return Arrays.stream(results)
        .allMatch(r -> (power == 1 || r > 0) && (power < 0 || Double.isFinite(r)));
  }

  double to(double result) {
    if (power == 0) {
      return Math.log(result);
    }
    return power == 1 ? result : Math.signum(power) * Math.pow(result, power);
  }

  /** Back to the result; what lies beyond all results is nothing or has no end. */
  double back(double place) {
    if (power == 0) {
      return Math.exp(place);
    }
    return power == 1 ? place : Math.pow(Math.max(0, Math.signum(power) * place), 1 / power);
  }
}
