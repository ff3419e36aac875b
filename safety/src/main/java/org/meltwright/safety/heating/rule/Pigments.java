// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.Composition;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;

/** Questions about the pigments of a mix, answered by the one table of pigment hazards. */
final class Pigments {

  private Pigments() {}

  /** Returns the materials of a mix that hold a pigment which matches, by id. */
  static List<Material> holding(Composition mix, Predicate<PigmentHazard> wanted) {
    return Mix.holding(mix, part -> PigmentHazards.of(part).filter(wanted).isPresent());
  }

  /** Tells whether a metal makes the pigment's dust toxic. */
  static boolean hasToxicMetal(PigmentHazard pigment) {
    return pigment.dust() == DustClass.TOXIC_METAL || pigment.dust() == DustClass.REFUSE_POWDER;
  }

  /**
   * Returns the materials of a mix whose pigment cannot be judged: a pigment that the table of
   * pigment hazards does not list, a paint that holds one or does not say what it holds.
   */
  static List<Material> unknownIn(Composition mix) {
    return Mix.materials(mix).stream().filter(Pigments::isUnknown).toList();
  }

  private static boolean isUnknown(Material material) {
    boolean listed = PigmentHazards.of(material).isPresent();
    return switch (material.family()) {
      case PIGMENT -> !listed;
      case OIL_PAINT -> !listed && !holdsListedPigmentsOnly(material);
      default -> false;
    };
  }

  private static boolean holdsListedPigmentsOnly(Material paint) {
    List<Material> pigments =
        Mix.parts(paint).filter(part -> part.family() == MaterialFamily.PIGMENT).toList();
    return !pigments.isEmpty() && pigments.stream().noneMatch(Pigments::isUnknown);
  }
}
