// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.meltwright.core.source.Source;
import org.meltwright.units.Limit;
import org.meltwright.units.TemperaturePoint;

/**
 * The two classes that ask for the liquid itself: aspiration by viscosity, flame by flash point.
 */
final class LiquidClassifier {

  private LiquidClassifier() {}

  /** Takes the answer by shares back where the mixture is solid or thick, or cannot be decided. */
  static HazardFinding aspiration(HazardFinding byShares, HazardMixture mixture, RuleSet rules) {
    if (mixture.state().filter(s -> s == PhysicalState.SOLID).isPresent()) {
      return answer(byShares, HazardStatus.NOT_CLASSIFIED, "solid-at-40");
    }
    OptionalDouble viscosity = mixture.viscosityAt40SquareMillimetresPerSecond();
    if (viscosity.isPresent()
        && Limit.exceeds(
            viscosity.getAsDouble(), rules.bound("aspiration-viscosity-up-to-mm2-per-s"))) {
      return answer(byShares, HazardStatus.NOT_CLASSIFIED, "viscous");
    }
    if (!byShares.isClassified() || viscosity.isPresent()) {
      return byShares;
    }
    return answer(byShares, HazardStatus.INSUFFICIENT_DATA, "viscosity-missing");
  }

  private static HazardFinding answer(HazardFinding found, HazardStatus status, String remark) {
    boolean settled = status == HazardStatus.NOT_CLASSIFIED;
    return new HazardFinding(
        found.hazardClass(),
        status,
        List.of(),
        found.rule(),
        found.workings(),
        settled ? List.of() : found.open(),
        List.of(remark));
  }

  static HazardFinding flammable(Source rule, HazardMixture mixture, RuleSet rules) {
    Optional<PhysicalState> state = mixture.state();
    if (state.isEmpty()) {
      return open(rule, "state-missing");
    }
    return switch (state.orElseThrow()) {
      case SOLID -> flammable(rule, HazardStatus.NOT_CLASSIFIED, List.of(), "not-a-liquid");
      case GAS -> open(rule, "gas-not-assessed");
      case LIQUID ->
          mixture
              .flashPoint()
              .map(flash -> flammable(rule, flash, mixture, rules))
              .orElseGet(() -> open(rule, "flash-point-missing"));
    };
  }

  private static HazardFinding flammable(
      Source rule, TemperaturePoint flash, HazardMixture mixture, RuleSet rules) {
    if (Limit.exceeds(flash, bound(rules, "flash-flammable-up-to-celsius"))) {
      return flammable(rule, HazardStatus.NOT_CLASSIFIED, List.of(), "flash-point-high");
    }
    if (Limit.reaches(flash, bound(rules, "flash-highly-flammable-below-celsius"))) {
      return classified(rule, "3", "flash-point");
    }
    return mixture
        .initialBoilingPoint()
        .map(
            t ->
                Limit.exceeds(t, bound(rules, "boiling-extremely-flammable-up-to-celsius"))
                    ? classified(rule, "2", "flash-point")
                    : classified(rule, "1", "flash-point"))
        .orElseGet(() -> classified(rule, "1", "boiling-point-missing"));
  }

  private static TemperaturePoint bound(RuleSet rules, String name) {
    return TemperaturePoint.ofCelsius(rules.bound(name));
  }

  private static HazardFinding classified(Source rule, String category, String remark) {
    HazardClass c = HazardClass.FLAMMABLE_LIQUID;
    HazardCategory reached = HazardCategory.of(c, category, LabelElements.statement(c, category));
    return flammable(rule, HazardStatus.CLASSIFIED, List.of(reached), remark);
  }

  private static HazardFinding open(Source rule, String remark) {
    return flammable(rule, HazardStatus.INSUFFICIENT_DATA, List.of(), remark);
  }

  private static HazardFinding flammable(
      Source rule, HazardStatus status, List<HazardCategory> categories, String remark) {
    return new HazardFinding(
        HazardClass.FLAMMABLE_LIQUID,
        status,
        categories,
        rule,
        List.of(),
        List.of(),
        List.of(remark));
  }
}
