// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.Room;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.units.Limit;

/** Too few air changes: below 6 an hour for one person, 8 for a class. */
final class AirChanges {

  /** Air changes an hour in a studio of one person. */
  private static final double ALONE = 6;

  /** Air changes an hour for a class, and where it is not stated who works. */
  private static final double CLASS = 8;

  private AirChanges() {}

  static RuleOutcome review(HeatingPlan plan) {
    if (plan.room().isEmpty()) {
      return RuleOutcome.notAssessed("room");
    }
    Room room = plan.room().get();
    if (room.airChangesPerHour().isEmpty()) {
      return RuleOutcome.notAssessed("extraction");
    }
    double changes = room.airChangesPerHour().getAsDouble();
    double least = plan.people().filter(p -> !p.isClass()).isPresent() ? ALONE : CLASS;
    return RuleOutcome.foundIf(!Limit.reaches(changes, least))
        .with("changes", changes)
        .with("least", least);
  }
}
