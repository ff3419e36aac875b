// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;

/** Questions about the pigments of a mix, answered by the one table of pigment hazards. */
final class Pigments {

  private Pigments() {}

  /** Finds pigments that match; one that cannot be told stays unassessed. */
  static Check which(Predicate<PigmentHazard> wanted) {
    return plan -> withUnknown(plan, Check.found(holding(plan, wanted)));
  }

  /** Returns the materials of a mix that hold a pigment which matches, by id. */
  static List<Material> holding(HeatingPlan plan, Predicate<PigmentHazard> wanted) {
    return plan.contents().holding(part -> PigmentHazards.of(part).filter(wanted).isPresent());
  }

  /** Tells whether a metal makes the pigment's dust toxic. */
  static boolean hasToxicMetal(PigmentHazard pigment) {
    return pigment.dust() == DustClass.TOXIC_METAL || pigment.dust() == DustClass.REFUSE_POWDER;
  }

  /**
   * Adds the materials of a mix whose pigment cannot be judged: a pigment that the table of pigment
   * hazards does not list, a paint or another colourant that does not say which it holds, or
   * whatever holds one of these.
   */
  static RuleOutcome withUnknown(HeatingPlan plan, RuleOutcome outcome) {
    for (Material material : plan.contents().materials()) {
      outcome = isUnknown(material) ? outcome.andNotAssessed(material, "pigment") : outcome;
    }
    return outcome;
  }

  private static boolean isUnknown(Material material) {
    if (material.family() == MaterialFamily.PIGMENT) {
      return !isListed(material);
    }
    return Contents.parts(material).anyMatch(Pigments::hidesItsPigment);
  }

  private static boolean hidesItsPigment(Material part) {
    boolean colours =
        part.family() == MaterialFamily.PIGMENT
            || part.family() == MaterialFamily.OIL_PAINT
            || part.role() == MaterialRole.COLOURANT;
    return colours && Contents.parts(part).noneMatch(Pigments::isListed);
  }

  private static boolean isListed(Material material) {
    return PigmentHazards.of(material).isPresent();
  }
}
