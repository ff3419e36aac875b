// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.TOOL;
import static org.meltwright.safety.heating.rule.Check.has;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.when;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
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

  /** Medium of 1 part resin to 8 parts wax, or more resin, is for high heat. */
  private static final double HIGH_HEAT_RESIN = 1.0 / 9;

  private static final Predicate<HeatingPlan> FLAME_OR_HOT_AIR = uses(Kind.TORCH, Kind.HEAT_GUN);

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              danger("flame-near-solvent", TOOL, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              whether(FLAME_OR_HOT_AIR.and(has(Circumstance.OPEN_SOLVENT_NEAR)))),
          new Rule(
              warning("flame-near-paper", TOOL, Source.COMMON_PRACTICE),
              whether(uses(Kind.TORCH).and(has(Circumstance.PAPER_NEAR)))),
          new Rule(
              warning("flame-near-plastic", TOOL, Source.COMMON_PRACTICE),
              whether(FLAME_OR_HOT_AIR.and(has(Circumstance.PLASTIC_NEAR)))),
          new Rule(
              caution("heat-gun-outlet", TOOL, Source.COMMON_PRACTICE),
              when(uses(Kind.HEAT_GUN), HotTool::gun)),
          new Rule(
              caution("iron-too-hot", TOOL, Sources.IRON_DOTS),
              when(uses(Kind.IRON), HotTool::iron)),
          new Rule(notice("lamp-distance", TOOL, Sources.STUDIO_GUIDE), whether(uses(Kind.LAMP))),
          new Rule(
              caution("low-heat-wax-under-flame", TOOL, Source.COMMON_PRACTICE),
              whether(FLAME_OR_HOT_AIR.and(ToolRules::isForLowHeat))),
          new Rule(
              notice("high-heat-wax-under-low-tools", TOOL, Source.COMMON_PRACTICE),
              whether(
                  uses(Kind.IRON, Kind.LAMP)
                      .and(FLAME_OR_HOT_AIR.negate())
                      .and(ToolRules::isForHighHeat))));

  private ToolRules() {}

  private static boolean isForLowHeat(HeatingPlan plan) {
    return !Limit.exceeds(Medium.leastResin(plan), LOW_HEAT_RESIN);
  }

  private static boolean isForHighHeat(HeatingPlan plan) {
    return Limit.reaches(Medium.mostResin(plan), HIGH_HEAT_RESIN);
  }
}
