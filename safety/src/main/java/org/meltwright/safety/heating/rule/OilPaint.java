// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;

/** The share of oil paint in a mix, and beside it the share of free oil, which is another thing. */
final class OilPaint {

  private OilPaint() {}

  /** Returns a finding if the share of oil paint reaches one limit and not the next. */
  static RuleOutcome review(HeatingPlan plan, double from, double below) {
    MassFraction share = plan.contents().share(Check.family(MaterialFamily.OIL_PAINT)).high();
    boolean within = Limit.reaches(share.value(), from) && !Limit.reaches(share.value(), below);
    return within
        ? withFreeOil(plan, RuleOutcome.found().with("paint", share))
        : RuleOutcome.NOTHING;
  }

  private static RuleOutcome withFreeOil(HeatingPlan plan, RuleOutcome found) {
    List<Material> unstated =
        plan.contents().materials().stream()
            .flatMap(Contents::parts)
            .filter(OilPaint::isUnstatedMix)
            .distinct()
            .toList();
    if (unstated.isEmpty()) {
      return found.with("oil", Optional.of(plan.mix().share(ShareOf.FREE_OIL)));
    }
    RuleOutcome outcome = found.with("oil", Optional.empty());
    for (Material paint : unstated) {
      outcome = outcome.andNotAssessed(paint, "constituents");
    }
    return outcome;
  }

  private static boolean isUnstatedMix(Material material) {
    boolean isMix =
        material.family() == MaterialFamily.OIL_PAINT
            || material.family() == MaterialFamily.DISPERSION;
    return isMix && material.constituents().isEmpty();
  }
}
