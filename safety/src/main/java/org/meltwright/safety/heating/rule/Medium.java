// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.safety.heating.HeatingPlan;

/** The share of resin in what is wax or resin of a mix; zero if there is no resin. */
final class Medium {

  private Medium() {}

  static double mostResin(HeatingPlan plan) {
    double resin = share(plan, MaterialFamily.RESIN).high().value();
    return resinInMedium(resin, share(plan, MaterialFamily.WAX).low().value());
  }

  static double leastResin(HeatingPlan plan) {
    double resin = share(plan, MaterialFamily.RESIN).low().value();
    return resinInMedium(resin, share(plan, MaterialFamily.WAX).high().value());
  }

  private static MassFractionRange share(HeatingPlan plan, MaterialFamily family) {
    return plan.contents().share(Check.family(family));
  }

  private static double resinInMedium(double resin, double wax) {
    return resin == 0 ? 0 : resin / (resin + wax);
  }
}
