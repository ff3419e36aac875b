// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** Too few air changes: below 6 an hour for one person, 8 for a class. */
final class AirChanges {

  /** Air changes an hour in a studio of one person. */
  private static final double ALONE = 6;

  /** Air changes an hour for a class, and where it is not stated who works. */
  private static final double CLASS = 8;

  /** Below this, in air changes an hour, the air of a room hardly changes; common practice. */
  private static final double HARDLY_ANY = 2;

  private AirChanges() {}

  /** Finds a room whose air hardly changes. */
  static RuleOutcome hardlyAny(HeatingPlan plan) {
    return review(plan, HARDLY_ANY);
  }

  static RuleOutcome review(HeatingPlan plan) {
    double least = plan.people().filter(p -> !p.isClass()).isPresent() ? ALONE : CLASS;
    return hardlyAny(plan).isFound() ? RuleOutcome.NOTHING : review(plan, least);
  }

  private static RuleOutcome review(HeatingPlan plan, double least) {
    if (plan.room().isEmpty()) {
      return RuleOutcome.notAsked("room");
    }
    if (plan.room().get().airChangesPerHour().isEmpty()) {
      return RuleOutcome.notAssessed("extraction");
    }
    double changes = plan.room().get().airChangesPerHour().getAsDouble();
    return RuleOutcome.foundIf(!Limit.reaches(changes, least))
        .with("changes", changes)
        .with("least", least);
  }
}
