// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Optional;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.BindingTemperature;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.Severity;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;
import org.meltwright.units.TemperatureDifference;
import org.meltwright.units.TemperaturePoint;

/**
 * Fragrance and essential oil in wax, all of it together: below a tenth of the mix its vapour is
 * thinned, so its own flash point binds and not the margin below it. Policy.
 */
final class Fragrance {

  /** Up to this share its vapour hardly counts without a flame. */
  private static final double TRACE = 0.02;

  /** Room below the flash point, from which on more than a trace of it draws a warning. */
  private static final TemperatureDifference ROOM = TemperatureDifference.ofKelvin(15);

  private Fragrance() {}

  /** Finds wax from which fragrance may light; the blocking rule takes over where it does. */
  static RuleOutcome warns(HeatingPlan plan) {
    return review(plan, false);
  }

  /** Finds wax at which fragrance must not be. */
  static RuleOutcome blocks(HeatingPlan plan) {
    return review(plan, true);
  }

  private static RuleOutcome review(HeatingPlan plan, boolean blocking) {
    List<Material> fragrance = plan.contents().thinnedFragrance();
    if (fragrance.isEmpty()) {
      return RuleOutcome.NOTHING;
    }
    RuleOutcome outcome = RuleOutcome.NOTHING;
    for (Material material : fragrance) {
      if (Contents.flashPoint(material).isEmpty()) {
        outcome = outcome.andNotAssessed(material, "flash-point", Severity.WARNING);
      }
    }
    Optional<TemperaturePoint> flash = plan.contents().lowestFlashPointOf(fragrance);
    if (flash.isEmpty()) {
      return outcome;
    }
    if (plan.bindingTemperature().isEmpty()) {
      return outcome.andNotAssessed(plan.heat().isPresent() ? "liquid-reading" : "wax-temperature");
    }
    return judged(plan, outcome, flash.get(), plan.bindingTemperature().get(), blocking);
  }

  private static RuleOutcome judged(
      HeatingPlan plan,
      RuleOutcome outcome,
      TemperaturePoint flash,
      BindingTemperature wax,
      boolean blocking) {
    double share = plan.contents().fragranceShare();
    boolean trace = !Limit.exceeds(share, TRACE);
    TemperaturePoint from = trace ? flash : flash.minus(ROOM);
    boolean open = isOpenHeat(plan);
    boolean warns = Limit.reaches(wax.value(), from);
    boolean blocks = open ? warns : !trace && Limit.reaches(wax.value(), flash);
    RuleOutcome found =
        outcome
            .andFoundIf(blocking ? blocks : warns && !blocks)
            .with("share", MassFraction.of(share))
            .with("wax", wax.value())
            .with("flash", flash);
    return warns ? found : WaxTemperature.ruledOut(plan, found, wax);
  }

  private static boolean isOpenHeat(HeatingPlan plan) {
    return plan.sources().stream()
        .map(HeatSource::kind)
        .anyMatch(kind -> kind.isFlameOrGlow() || kind == HeatSource.Kind.HEAT_GUN);
  }
}
