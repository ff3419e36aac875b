// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.PIGMENT;
import static org.meltwright.safety.heating.rule.Check.either;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.using;
import static org.meltwright.safety.heating.rule.Check.whenStated;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingRule;

/** Pigments that heat or breath turns into a poison. */
final class PigmentRules {

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              danger("lead", PIGMENT, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              either(Pigments.which(pigment -> pigment.holds("Pb")), Names.neverHeated("Pb"))),
          new Rule(
              danger("arsenic", PIGMENT, Sources.STUDIO_GUIDE).asBlocking().asFixed(),
              either(Pigments.which(pigment -> pigment.holds("As")), Names.neverHeated("As"))),
          new Rule(
              danger("mercury", PIGMENT, Sources.STUDIO_GUIDE).asBlocking().asFixed(),
              either(Pigments.which(pigment -> pigment.holds("Hg")), Names.neverHeated("Hg"))),
          new Rule(
              danger("chromate", PIGMENT, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              Pigments.which(Pigments::isNeverHeatedChromate)),
          new Rule(
              danger("named-never-heated", PIGMENT, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              Names::neverHeated),
          new Rule(
              warning("named-melted-only", PIGMENT, Source.COMMON_PRACTICE).asBlocking(),
              using(
                  uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS, Kind.HEAT_GUN, Kind.LAMP),
                  Names::meltedOnly)),
          new Rule(
              warning("named-toxic-powder", PIGMENT, Source.COMMON_PRACTICE),
              whenStated(Circumstance.DRY_POWDER, Names::toxicPowder)),
          new Rule(
              warning("pigment-melt-only", PIGMENT, Source.COMMON_PRACTICE).asBlocking(),
              using(
                  uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS, Kind.HEAT_GUN, Kind.LAMP),
                  Pigments.whichInHeat(Pigments::isMeltedAtMost))),
          new Rule(
              caution("pigment-no-flame", PIGMENT, Source.COMMON_PRACTICE),
              using(
                  uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS),
                  Pigments.whichInHeat(Pigments::isKeptFromFlame))),
          new Rule(
              warning("toxic-pigment-flame", PIGMENT, Source.COMMON_PRACTICE),
              using(
                  uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS),
                  Pigments.whichInHeat(Pigments::isToxicAndKeptFromFlame))),
          new Rule(
              notice("dry-powder", PIGMENT, Sources.STATE_ENCAUSTICS),
              stated(Circumstance.DRY_POWDER)),
          new Rule(
              warning("toxic-powder", PIGMENT, Sources.STATE_ENCAUSTICS),
              whenStated(Circumstance.DRY_POWDER, Pigments.which(Pigments::hasToxicMetal))),
          new Rule(
              warning("burning-powder-flame", PIGMENT, Source.COMMON_PRACTICE),
              using(
                  uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS, Kind.HEAT_GUN),
                  whenStated(Circumstance.DRY_POWDER, Pigments.whichInHeat(Pigments::burns)))),
          new Rule(
              notice("harmful-powder", PIGMENT, Source.COMMON_PRACTICE),
              whenStated(Circumstance.DRY_POWDER, Pigments.which(Pigments::isHarmfulPowder))));

  private PigmentRules() {}
}
