// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleOutcome;

/**
 * More than 12 learners to a teacher, more than 8 if any is under 18 and no other adult helps, or a
 * class without one.
 */
final class ClassSize {

  /** So many adults share a studio without being a class; common practice. */
  private static final int MOST_WITHOUT_TEACHER = 3;

  private ClassSize() {}

  static RuleOutcome review(HeatingPlan plan) {
    return plan.people().map(ClassSize::review).orElseGet(() -> RuleOutcome.notAsked("people"));
  }

  /**
   * Young people are fewer to a teacher: 8, the low end for adults, and up to 12 with an adult more
   * who helps.
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
    return people.minors() > people.adults() ? Math.min(people.adults(), 2 * people.teachers()) : 0;
  }
}
