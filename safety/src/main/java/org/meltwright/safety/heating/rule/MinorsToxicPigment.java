// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.People;
import org.meltwright.safety.heating.RuleOutcome;

/** Somebody under 18 where a toxic pigment is used. */
final class MinorsToxicPigment {

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
