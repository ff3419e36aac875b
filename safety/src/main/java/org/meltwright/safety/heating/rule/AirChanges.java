// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.Severity;
import org.meltwright.units.Limit;

/** Too few air changes: below 6 an hour for one person, 8 for a class. */
final class AirChanges {

  /** Air changes an hour in a studio of one person. */
  private static final double ALONE = 6;

  /** Air changes an hour for a class, and where it is not stated who works. */
  private static final double CLASS = 8;

  /** Below this, in air changes an hour, the air of a room hardly changes; common practice. */
  private static final double HARDLY_ANY = 2;

  /** Room for each person below which air that nobody draws off is soon used; common practice. */
  private static final double ROOM_A_HEAD_CUBIC_METRES = 10;

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
      Severity severity = isCrowded(plan) ? Severity.WARNING : Severity.CAUTION;
      return RuleOutcome.NOTHING.andNotAssessed("extraction", severity);
    }
    double changes = plan.room().get().airChangesPerHour().getAsDouble();
    return RuleOutcome.foundIf(!Limit.reaches(changes, least))
        .with("changes", changes)
        .with("least", least);
  }

  private static boolean isCrowded(HeatingPlan plan) {
    double volume = plan.room().get().volumeCubicMetres();
    return plan.people()
        .filter(p -> volume < ROOM_A_HEAD_CUBIC_METRES * (p.teachers() + p.adults() + p.minors()))
        .isPresent();
  }
}
