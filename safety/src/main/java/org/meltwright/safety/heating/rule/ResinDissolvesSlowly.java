// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.ArrayList;
import java.util.List;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.TemperaturePoint;

/**
 * Wax colder than a resin dissolves from: a matter of crushing, stirring and waiting, never of more
 * heat. The resin's own melting figure is no part of this.
 */
final class ResinDissolvesSlowly {

  private ResinDissolvesSlowly() {}

  static RuleOutcome review(HeatingPlan plan) {
    List<Material> resins =
        plan.contents().materials().stream()
            .filter(material -> material.family() == MaterialFamily.RESIN)
            .toList();
    if (resins.isEmpty()) {
      return RuleOutcome.NOTHING;
    }
    return WaxTemperature.review(
        plan, wax -> WaxTemperature.ruledOut(plan, review(resins, wax.value()), wax));
  }

  private static RuleOutcome review(List<Material> resins, TemperaturePoint wax) {
    List<Material> slow = new ArrayList<>();
    RuleOutcome missing = RuleOutcome.NOTHING;
    for (Material resin : resins) {
      var bound = resin.find(PropertyKey.DISSOLVES_FROM);
      if (bound.isEmpty()) {
        missing = missing.andNotAssessed(resin, "dissolves-from");
      } else if (wax.isBelow(bound.get().value().range().low())) {
        slow.add(resin);
      }
    }
    return missing
        .andFoundIf(!slow.isEmpty())
        .with("wax", wax)
        .with("materials", List.copyOf(slow));
  }
}
