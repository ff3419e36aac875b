// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Arrays;
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

  /** Looks only where a condition holds; elsewhere nothing is found and nothing is missing. */
  static Check when(Predicate<HeatingPlan> condition, Check check) {
    return plan -> condition.test(plan) ? check.review(plan) : RuleOutcome.NOTHING;
  }

  static Predicate<HeatingPlan> has(Circumstance circumstance) {
    return plan -> plan.has(circumstance);
  }

  static Predicate<HeatingPlan> uses(HeatSource.Kind... anyOf) {
    return plan -> Arrays.stream(anyOf).anyMatch(plan::uses);
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
            .orElseGet(() -> RuleOutcome.notAssessed("people"));
  }
}
