// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleOutcome;

/** What a rule looks for in a plan, and the words that the tables of rules are written in. */
@FunctionalInterface
interface Check {

  RuleOutcome review(HeatingPlan plan);

  /** Finds that a condition holds. */
  static Check whether(Predicate<HeatingPlan> condition) {
    return plan -> RuleOutcome.foundIf(condition.test(plan));
  }

  /** Finds a wrong that is stated; what nobody mentioned is not asked. */
  static Check stated(Circumstance circumstance) {
    return plan -> RuleOutcome.of(plan, circumstance);
  }

  /** Looks only where a wrong is stated; where nobody mentioned it, it is not asked. */
  static Check whenStated(Circumstance circumstance, Check check) {
    return plan -> {
      RuleOutcome outcome = plan.denies(circumstance) ? RuleOutcome.NOTHING : check.review(plan);
      return outcome.equals(RuleOutcome.NOTHING) || plan.has(circumstance)
          ? outcome
          : RuleOutcome.notAsked(circumstance.id());
    };
  }

  /** Looks for one thing first, and for another if that is not found. */
  static Check either(Check one, Check other) {
    return plan -> {
      RuleOutcome first = one.review(plan);
      RuleOutcome second = first.isFound() ? first : other.review(plan);
      return second.isFound() || first.equals(RuleOutcome.NOTHING) ? second : first;
    };
  }

  static Predicate<HeatingPlan> not(Predicate<HeatingPlan> condition) {
    return condition.negate();
  }

  /**
   * Looks only where something of a kind heats, the melt or the work; where that is not found and
   * nobody says what heats the melt, it is not asked.
   */
  static Check using(Predicate<HeatingPlan> uses, Check check) {
    return plan -> {
      RuleOutcome outcome = uses.test(plan) ? check.review(plan) : RuleOutcome.NOTHING;
      return outcome.isFound() || plan.heat().isPresent()
          ? outcome
          : outcome.andNotAsked("heat-source");
    };
  }

  /** Finds that something of a kind heats, the melt or the work. */
  static Check using(Predicate<HeatingPlan> uses) {
    return using(uses, plan -> RuleOutcome.found());
  }

  static Predicate<HeatingPlan> uses(HeatSource.Kind... anyOf) {
    Predicate<HeatingPlan> uses = plan -> false;
    for (HeatSource.Kind kind : anyOf) {
      uses = uses.or(plan -> plan.uses(kind));
    }
    return uses;
  }

  static Predicate<HeatingPlan> mixHolds(Predicate<Material> wanted) {
    return plan -> !plan.contents().holding(wanted).isEmpty();
  }

  static Predicate<Material> family(MaterialFamily family) {
    return material -> material.family() == family;
  }

  /** Finds the materials that match, themselves or in what they are made of. */
  static Check holding(Predicate<Material> wanted) {
    return plan -> found(plan.contents().holding(wanted));
  }

  static RuleOutcome found(List<Material> materials) {
    return RuleOutcome.foundIf(!materials.isEmpty()).with("materials", materials);
  }

  /** Finds people who match; who works must be stated. */
  static Check ofPeople(Predicate<People> wanted) {
    return plan ->
        plan.people()
            .map(people -> RuleOutcome.foundIf(wanted.test(people)))
            .orElseGet(() -> RuleOutcome.notAsked("people"));
  }
}
