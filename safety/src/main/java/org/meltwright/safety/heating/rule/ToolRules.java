// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.TOOL;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.using;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.units.Limit;

/** Tools that heat. */
final class ToolRules {

  /** Medium of 1 part resin to 10 parts wax, or less resin, is for low heat. */
  private static final double LOW_HEAT_RESIN = 1.0 / 11;

  private static final Predicate<HeatingPlan> FLAME_OR_HOT_AIR = uses(Kind.TORCH, Kind.HEAT_GUN);

  /** What lights paper or vapour beside it. */
  private static final Predicate<HeatingPlan> FLAME_GLOW_OR_HOT_AIR =
      FLAME_OR_HOT_AIR.or(uses(Kind.OPEN_COIL_OR_GAS));

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              danger("flame-near-solvent", TOOL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(FLAME_GLOW_OR_HOT_AIR, stated(Circumstance.OPEN_SOLVENT_NEAR))),
          new Rule(
              danger("flame-near-paper", TOOL, Source.COMMON_PRACTICE).asBlocking(),
              using(FLAME_GLOW_OR_HOT_AIR, stated(Circumstance.PAPER_NEAR))),
          new Rule(
              warning("flame-near-plastic", TOOL, Source.COMMON_PRACTICE).asFixed(),
              using(FLAME_GLOW_OR_HOT_AIR, stated(Circumstance.PLASTIC_NEAR))),
          new Rule(
              danger("flame-near-gas-cylinder", TOOL, Source.COMMON_PRACTICE).asBlocking(),
              using(FLAME_GLOW_OR_HOT_AIR, stated(Circumstance.GAS_CYLINDER_NEAR))),
          new Rule(
              caution("heat-gun-outlet", TOOL, Source.COMMON_PRACTICE),
              using(uses(Kind.HEAT_GUN), HotTool::gun)),
          new Rule(
              warning("heat-gun-at-full", TOOL, Source.COMMON_PRACTICE),
              using(uses(Kind.HEAT_GUN), HotTool::gunAtFull)),
          new Rule(
              caution("iron-too-hot", TOOL, Sources.IRON_DOTS),
              using(uses(Kind.IRON), HotTool::iron)),
          new Rule(
              caution("low-heat-wax-under-flame", TOOL, Source.COMMON_PRACTICE),
              using(FLAME_OR_HOT_AIR, whether(ToolRules::isForLowHeat))),
          new Rule(
              danger("flame-near-pot", TOOL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(FLAME_OR_HOT_AIR, stated(Circumstance.POT_NEAR_FLAME))),
          new Rule(
              warning("alone-with-flame", TOOL, Source.COMMON_PRACTICE),
              using(uses(Kind.TORCH), stated(Circumstance.ALONE_WITH_FLAME))),
          new Rule(
              warning("waxy-clothing", TOOL, Sources.GREASY_CLOTH).asBlocking(),
              using(
                  FLAME_OR_HOT_AIR.or(uses(Kind.LAMP)),
                  stated(Circumstance.WAXY_CLOTHING_NEAR_FLAME))),
          new Rule(
              warning("lamp-near-what-burns", TOOL, Sources.HEAT_LAMPS).asBlocking(),
              using(uses(Kind.LAMP), stated(Circumstance.LAMP_NEAR_WHAT_BURNS))),
          new Rule(
              danger("dust-fire", TOOL, Source.COMMON_PRACTICE).asBlocking(),
              using(
                  FLAME_GLOW_OR_HOT_AIR.or(uses(Kind.LAMP)), stated(Circumstance.DUST_IN_THE_AIR))),
          new Rule(
              warning("iron-within-flash-margin", TOOL, Sources.MATERIAL_FIGURES),
              using(uses(Kind.IRON), HotTool::ironWithinMargin)),
          new Rule(
              danger("iron-at-flash-point", TOOL, Sources.MATERIAL_FIGURES).asBlocking().asFixed(),
              using(uses(Kind.IRON), HotTool::ironAtFlashPoint)),
          new Rule(
              danger("flame-without-air", TOOL, Source.COMMON_PRACTICE),
              using(uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS), AirChanges::hardlyAny)),
          new Rule(
              danger("flame-without-lid", TOOL, Source.COMMON_PRACTICE),
              using(FLAME_OR_HOT_AIR, stated(Circumstance.NO_LID))));

  private ToolRules() {}

  private static boolean isForLowHeat(HeatingPlan plan) {
    return !Limit.exceeds(Medium.leastResin(plan), LOW_HEAT_RESIN);
  }
}
