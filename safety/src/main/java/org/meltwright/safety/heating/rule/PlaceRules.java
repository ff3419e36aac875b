// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.PLACE;
import static org.meltwright.safety.heating.rule.Check.has;
import static org.meltwright.safety.heating.rule.Check.ofPeople;
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
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.People;

/** Who works, and what stands near. */
final class PlaceRules {

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              danger("minors-with-flame", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              when(uses(Kind.TORCH), ofPeople(People::hasMinors))),
          new Rule(
              danger("minors-alone", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              ofPeople(PlaceRules::areMinorsAlone)),
          new Rule(
              warning("minors-dry-powder", PLACE, Sources.SCHOOL_GUIDELINES).asBlocking(),
              when(has(Circumstance.DRY_POWDER), ofPeople(People::hasMinors))),
          new Rule(
              warning("children-toxic-pigment", PLACE, Sources.SCHOOL_GUIDELINES).asBlocking(),
              ChildrenToxicPigment::review),
          new Rule(
              warning("minors-high-heat", PLACE, Source.COMMON_PRACTICE),
              when(uses(Kind.HEAT_GUN), ofPeople(People::hasMinors))),
          new Rule(
              notice("minors-consent", PLACE, Source.COMMON_PRACTICE), ofPeople(People::hasMinors)),
          new Rule(caution("class-size", PLACE, Source.COMMON_PRACTICE), ClassSize::review),
          new Rule(
              warning("unattended", PLACE, Source.COMMON_PRACTICE).asBlocking(),
              whether(has(Circumstance.UNATTENDED))),
          new Rule(
              warning("solvent-near-heat", PLACE, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              whether(has(Circumstance.OPEN_SOLVENT_NEAR))),
          new Rule(caution("air-changes", PLACE, Source.COMMON_PRACTICE), AirChanges::review),
          new Rule(
              caution("water-near", PLACE, Source.COMMON_PRACTICE),
              whether(has(Circumstance.WATER_NEAR))),
          new Rule(
              warning("no-lid-or-blanket", PLACE, Source.COMMON_PRACTICE),
              whether(has(Circumstance.NO_LID_OR_BLANKET))),
          new Rule(
              warning("water-extinguisher", PLACE, Sources.WAX_FIRES),
              whether(has(Circumstance.WATER_EXTINGUISHER))),
          new Rule(
              warning("oily-rags", PLACE, Sources.OILY_RAG_CANS),
              whether(has(Circumstance.OILY_RAGS))));

  private PlaceRules() {}

  /** Where no minor is counted and the youngest is one, an adult too few was counted. */
  private static boolean areMinorsAlone(People people) {
    int mostAdults = people.minors() == 0 ? 1 : 0;
    return people.hasMinors() && people.teachers() == 0 && people.adults() <= mostAdults;
  }
}
