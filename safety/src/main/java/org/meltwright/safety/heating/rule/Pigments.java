// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.function.Predicate;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
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
   * pigment hazards does not list, a paint or another colourant that does not say which it holds,
   * or whatever holds one of these.
   */
  static List<Material> unknownIn(Composition mix) {
    return Mix.materials(mix).stream().filter(Pigments::isUnknown).toList();
  }

  private static boolean isUnknown(Material material) {
    if (material.family() == MaterialFamily.PIGMENT) {
      return !isListed(material);
    }
    return Mix.parts(material).anyMatch(Pigments::hidesItsPigment);
  }

  private static boolean hidesItsPigment(Material part) {
    boolean colours =
        part.family() == MaterialFamily.PIGMENT
            || part.family() == MaterialFamily.OIL_PAINT
            || part.role() == MaterialRole.COLOURANT;
    return colours && Mix.parts(part).noneMatch(Pigments::isListed);
  }

  private static boolean isListed(Material material) {
    return PigmentHazards.of(material).isPresent();
  }
}
