// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Optional;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.equipment.VesselMaterial;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingLimits.Figure;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.PotFloor;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.FloorBand;

/** Whether wax is heated in paper, and how hot it is under it. */
final class Paper {

  private Paper() {}

  /** Finds paper that holds the wax. */
  static RuleOutcome review(HeatingPlan plan) {
    boolean cup = plan.vessel().filter(v -> v.material() == VesselMaterial.PAPER).isPresent();
    if (cup) {
      return RuleOutcome.found();
    }
    RuleOutcome liner = RuleOutcome.of(plan, Circumstance.PAPER_LINER);
    return liner.isFound() ? liner : withVessel(plan, liner);
  }

  /** A vessel of which nobody says what it is made of may be one of paper. */
  private static RuleOutcome withVessel(HeatingPlan plan, RuleOutcome liner) {
    if (plan.vessel().isEmpty()) {
      return liner.andNotAsked("vessel");
    }
    boolean isKnown = plan.vessel().get().material() != VesselMaterial.UNKNOWN;
    return isKnown ? liner : liner.andNotAssessed("vessel-material");
  }

  /** Finds paper that holds the wax on what is too hot for the wax. */
  static RuleOutcome reviewHeat(HeatingPlan plan) {
    RuleOutcome paper = review(plan);
    RuleOutcome outcome = paper.isFound() ? heat(plan) : paper;
    return outcome.isFound() || plan.heat().isPresent()
        ? outcome
        : outcome.andNotAsked("heat-source");
  }

  private static RuleOutcome heat(HeatingPlan plan) {
    Optional<PotFloor> floor = floor(plan);
    if (floor.isEmpty()) {
      return RuleOutcome.notAssessed("set-point");
    }
    if (plan.table().floorBand(floor.get().value()) != FloorBand.WORKING) {
      return RuleOutcome.found()
          .with("floor", floor.get())
          .at(Figure.HARD_CEILING, Figure.FLOOR_LIMIT);
    }
    return floor.get().isKnown() ? RuleOutcome.NOTHING : RuleOutcome.notAssessed("overshoot");
  }

  /** Returns what the paper stands on: the floor, or on a heated palette its surface. */
  private static Optional<PotFloor> floor(HeatingPlan plan) {
    return plan.potFloor()
        .or(
            () ->
                plan.heat()
                    .filter(heat -> heat.kind() == Kind.HEATED_PALETTE)
                    .flatMap(heat -> plan.bindingTemperature())
                    .map(wax -> new PotFloor(wax.value(), wax.isMeasured())));
  }
}
