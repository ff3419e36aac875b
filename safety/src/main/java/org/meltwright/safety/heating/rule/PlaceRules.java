// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.PLACE;
import static org.meltwright.safety.heating.rule.Check.ofPeople;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Check.uses;
import static org.meltwright.safety.heating.rule.Check.using;
import static org.meltwright.safety.heating.rule.Check.whenStated;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.material.Material;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleOutcome;

/** Who works, and what stands near. */
final class PlaceRules {

  /** The age from which on anything hot may be in the room; guidance, common practice. */
  private static final int NEAR_HEAT = 3;

  /** Below this age a child is kept from hot things by a fence, not by a word; common practice. */
  private static final int SMALL = 7;

  /** Below this age nobody works at hot wax or with hot tools; guidance, common practice. */
  private static final int HOT_WAX = 12;

  /** Below this age nobody works with hot air; guidance, common practice. */
  private static final int HOT_AIR = 16;

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              danger("minors-with-flame", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(uses(Kind.TORCH, Kind.OPEN_COIL_OR_GAS), ofPeople(People::hasMinors))),
          new Rule(
              danger("minors-alone", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              ofPeople(PlaceRules::areMinorsAlone)),
          new Rule(
              warning("minors-dry-powder", PLACE, Sources.SCHOOL_GUIDELINES).asBlocking().asFixed(),
              whenStated(Circumstance.DRY_POWDER, ofPeople(People::hasMinors))),
          new Rule(
              warning("minors-toxic-pigment", PLACE, Sources.SCHOOL_GUIDELINES)
                  .asBlocking()
                  .asFixed(),
              MinorsToxicPigment::review),
          new Rule(
              danger("children-nothing-hot", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              plan -> youngerThan(NEAR_HEAT, plan)),
          new Rule(
              warning("minors-high-heat", PLACE, Source.COMMON_PRACTICE).asFixed(),
              using(uses(Kind.HEAT_GUN), ofPeople(People::hasMinors))),
          new Rule(
              notice("minors-consent", PLACE, Source.COMMON_PRACTICE), PlaceRules::consentMissing),
          new Rule(warning("class-size", PLACE, Source.COMMON_PRACTICE), ClassSize::review),
          new Rule(
              warning("unattended", PLACE, Source.COMMON_PRACTICE).asBlocking(),
              stated(Circumstance.UNATTENDED)),
          new Rule(
              warning("solvent-near-heat", PLACE, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              stated(Circumstance.OPEN_SOLVENT_NEAR)),
          new Rule(caution("air-changes", PLACE, Source.COMMON_PRACTICE), AirChanges::review),
          new Rule(
              warning("water-near", PLACE, Source.COMMON_PRACTICE),
              stated(Circumstance.WATER_NEAR)),
          new Rule(warning("no-lid", PLACE, Source.COMMON_PRACTICE), stated(Circumstance.NO_LID)),
          new Rule(
              warning("water-extinguisher", PLACE, Sources.WAX_FIRES),
              stated(Circumstance.WATER_EXTINGUISHER)),
          new Rule(
              danger("oily-rags", PLACE, Sources.OILY_RAG_CANS).asBlocking(),
              stated(Circumstance.OILY_RAGS)),
          new Rule(
              warning("dust-in-the-air", PLACE, Source.COMMON_PRACTICE),
              stated(Circumstance.DUST_IN_THE_AIR)),
          new Rule(
              danger("dust-with-class", PLACE, Source.COMMON_PRACTICE),
              whenStated(Circumstance.DUST_IN_THE_AIR, ofPeople(People::isClass))),
          new Rule(
              warning("aerosol-near", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              stated(Circumstance.AEROSOL_NEAR)),
          new Rule(
              warning("gas-cylinder-near", PLACE, Source.COMMON_PRACTICE),
              stated(Circumstance.GAS_CYLINDER_NEAR)),
          new Rule(
              danger("oxidiser-near", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              stated(Circumstance.OXIDISER_NEAR)),
          new Rule(
              danger("coiled-reel", PLACE, Sources.CABLE_REEL), stated(Circumstance.COILED_REEL)),
          new Rule(
              caution("no-residual-current-device", PLACE, Sources.EXTENSION_LEADS),
              stated(Circumstance.NO_RESIDUAL_CURRENT_DEVICE)),
          new Rule(
              warning("no-smoke-alarm", PLACE, Sources.PAN_FIRES),
              stated(Circumstance.NO_SMOKE_ALARM)),
          new Rule(
              danger("carried-hot-and-full", PLACE, Sources.SCHOOL_BATIK),
              stated(Circumstance.CARRIED_HOT_AND_FULL)),
          new Rule(
              warning("no-cooling-place", PLACE, Source.COMMON_PRACTICE),
              stated(Circumstance.NO_COOLING_PLACE)),
          new Rule(
              warning("hot-pour-into-cold-glass", PLACE, Source.COMMON_PRACTICE),
              stated(Circumstance.HOT_POUR_INTO_COLD_GLASS)),
          new Rule(
              caution("health-not-asked", PLACE, Source.COMMON_PRACTICE),
              PlaceRules::healthNotAsked),
          new Rule(
              warning("children-at-heat", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              PlaceRules::areChildrenAtHeat),
          new Rule(
              caution("small-children-near", PLACE, Source.COMMON_PRACTICE).asFixed(),
              plan -> youngerThan(SMALL, plan)),
          new Rule(
              warning("children-hot-tools", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(uses(Kind.IRON, Kind.HEAT_GUN, Kind.LAMP), plan -> youngerThan(HOT_WAX, plan))),
          new Rule(
              warning("minors-hot-air", PLACE, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              using(uses(Kind.HEAT_GUN), plan -> youngerThan(HOT_AIR, plan))),
          new Rule(
              notice("paper-near", PLACE, Source.COMMON_PRACTICE), stated(Circumstance.PAPER_NEAR)),
          new Rule(warning("no-air", PLACE, Source.COMMON_PRACTICE), AirChanges::hardlyAny));

  private PlaceRules() {}

  private static RuleOutcome consentMissing(HeatingPlan plan) {
    if (plan.people().isEmpty()) {
      return RuleOutcome.notAsked("people");
    }
    return plan.people().get().hasMinors()
        ? RuleOutcome.of(plan, Circumstance.NO_WRITTEN_CONSENT)
        : RuleOutcome.NOTHING;
  }

  /** One who works alone need not ask a group. */
  private static RuleOutcome healthNotAsked(HeatingPlan plan) {
    if (plan.people().isEmpty()) {
      return RuleOutcome.notAsked("people");
    }
    return plan.people().get().isClass()
        ? RuleOutcome.of(plan, Circumstance.PREGNANCY_OR_ASTHMA_NOT_ASKED)
        : RuleOutcome.NOTHING;
  }

  private static RuleOutcome areChildrenAtHeat(HeatingPlan plan) {
    return plan.people().filter(People::potHandledByAdults).isPresent()
        ? RuleOutcome.NOTHING
        : youngerThan(HOT_WAX, plan);
  }

  /** Finds that the youngest is too young; where minors are counted, an age is needed. */
  private static RuleOutcome youngerThan(int age, HeatingPlan plan) {
    if (plan.people().isEmpty()) {
      return RuleOutcome.notAsked("people");
    }
    People people = plan.people().get();
    if (people.youngest().isEmpty()) {
      return people.hasMinors() ? RuleOutcome.notAssessed("age") : RuleOutcome.NOTHING;
    }
    int youngest = people.youngest().getAsInt();
    return RuleOutcome.foundIf(youngest < age).with("age", youngest);
  }

  /** Where no minor is counted and the youngest is one, an adult too few was counted. */
  private static boolean areMinorsAlone(People people) {
    int mostAdults = people.minors() == 0 ? 1 : 0;
    return people.hasMinors() && people.teachers() == 0 && people.adults() <= mostAdults;
  }

  /** Somebody under 18 where a toxic pigment is used. */
  private static final class MinorsToxicPigment {

    private MinorsToxicPigment() {}

    static RuleOutcome review(HeatingPlan plan) {
      List<Material> toxic =
          Stream.concat(
                  Pigments.holding(plan, Pigments::hasToxicMetal).stream(),
                  Names.toxic(plan).stream())
              .distinct()
              .sorted(Comparator.comparing(Material::id))
              .toList();
      RuleOutcome outcome =
          toxic.isEmpty()
              ? RuleOutcome.NOTHING
              : Check.ofPeople(People::hasMinors).review(plan).with("materials", toxic);
      return Pigments.withUnknown(plan, outcome);
    }
  }

  /**
   * More than 12 learners to a teacher, more than 8 if any is under 18 and no other adult helps, or
   * a class without one.
   */
  private static final class ClassSize {

    /** So many adults share a studio without being a class; common practice. */
    private static final int MOST_WITHOUT_TEACHER = 3;

    private ClassSize() {}

    static RuleOutcome review(HeatingPlan plan) {
      return plan.people().map(ClassSize::review).orElseGet(() -> RuleOutcome.notAsked("people"));
    }

    /**
     * Young people are fewer to a teacher: 8, the low end for adults, and up to 12 with an adult
     * more who helps.
     */
    private static int mostPerTeacher(People people) {
      return people.hasMinors() && helpers(people) < Math.max(1, people.teachers()) ? 8 : 12;
    }

    private static RuleOutcome review(People people) {
      int learners = people.adults() + people.minors() - helpers(people);
      boolean nobodyTeaches =
          people.teachers() == 0 && (people.hasMinors() || learners > MOST_WITHOUT_TEACHER);
      boolean tooMany =
          nobodyTeaches || learners > mostPerTeacher(people) * Math.max(1, people.teachers());
      return RuleOutcome.foundIf(tooMany)
          .with("learners", learners)
          .with("teachers", people.teachers());
    }

    /** Where most are under 18, up to two other adults to a teacher are there to help. */
    private static int helpers(People people) {
      return people.minors() > people.adults()
          ? Math.min(people.adults(), 2 * people.teachers())
          : 0;
    }
  }
}
