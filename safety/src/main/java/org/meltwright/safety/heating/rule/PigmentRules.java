// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.PIGMENT;
import static org.meltwright.safety.heating.rule.Check.has;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.when;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingRule;

/** Pigments that heat or breath turns into a poison. */
final class PigmentRules {

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              danger("lead", PIGMENT, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              Pigments.which(pigment -> pigment.holds("Pb"))),
          new Rule(
              danger("arsenic", PIGMENT, Sources.STUDIO_GUIDE).asBlocking().asFixed(),
              Pigments.which(pigment -> pigment.holds("As"))),
          new Rule(
              danger("mercury", PIGMENT, Sources.STUDIO_GUIDE).asBlocking().asFixed(),
              Pigments.which(pigment -> pigment.holds("Hg"))),
          new Rule(
              warning("pigment-melt-only", PIGMENT, Source.COMMON_PRACTICE).asBlocking(),
              when(
                  uses(Kind.TORCH, Kind.HEAT_GUN),
                  Pigments.which(pigment -> pigment.heatUse() == HeatUse.MELTED_ONLY))),
          new Rule(
              caution("pigment-no-flame", PIGMENT, Source.COMMON_PRACTICE),
              when(
                  uses(Kind.TORCH),
                  Pigments.which(pigment -> pigment.heatUse() == HeatUse.FLAME_FREE))),
          new Rule(
              notice("dry-powder", PIGMENT, Sources.STATE_ENCAUSTICS),
              whether(has(Circumstance.DRY_POWDER))),
          new Rule(
              warning("toxic-powder", PIGMENT, Sources.STATE_ENCAUSTICS),
              when(has(Circumstance.DRY_POWDER), Pigments.which(Pigments::hasToxicMetal))));

  private PigmentRules() {}
}
