// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.MaterialRole;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.naming.HazardNames;

/** Questions about the pigments of a mix, answered by the one table of pigment hazards. */
final class Pigments {

  private static final List<String> METALS_WITH_A_RULE = List.of("Pb", "Hg", "As");
  private static final PerMaterial<Optional<PigmentHazard>> HAZARD =
      PerMaterial.of(PigmentHazards::of);

  private static final PerMaterial<Boolean> UNKNOWN = PerMaterial.of(Pigments::isUnknown);

  private Pigments() {}

  /** Finds pigments that match; one that cannot be told stays unassessed. */
  static Check which(Predicate<PigmentHazard> wanted) {
    return plan -> withUnknown(plan, Check.found(holding(plan, wanted)));
  }

  /** Returns the materials of a mix that hold a pigment which matches, by id. */
  static List<Material> holding(HeatingPlan plan, Predicate<PigmentHazard> wanted) {
    return plan.contents().holding(part -> HAZARD.get(part).filter(wanted).isPresent());
  }

  /** Tells whether a metal makes the pigment's dust toxic. */
  static boolean hasToxicMetal(PigmentHazard pigment) {
    return pigment.dust() == DustClass.TOXIC_METAL || pigment.dust() == DustClass.REFUSE_POWDER;
  }

  /** Tells whether its dust is harmful, and no more than that. */
  static boolean isHarmfulPowder(PigmentHazard pigment) {
    return pigment.dust() == DustClass.HARMFUL;
  }

  /** Tells whether it is a chromate without lead, which has a rule of its own. */
  static boolean isNeverHeatedChromate(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.NEVER_HEATED
        && pigment.holds("Cr")
        && METALS_WITH_A_RULE.stream().noneMatch(pigment::holds);
  }

  /**
   * Tells whether no hot air and no flame may reach it. Of what is never heated, the metals with a
   * rule of their own are told there.
   */
  static boolean isMeltedAtMost(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.MELTED_ONLY
        || (pigment.heatUse() == HeatUse.NEVER_HEATED
            && METALS_WITH_A_RULE.stream().noneMatch(pigment::holds)
            && !pigment.holds("Cr"));
  }

  /**
   * Adds the materials of a mix whose pigment cannot be judged: a pigment that the table of pigment
   * hazards does not list, a paint or another colourant that does not say which it holds, or
   * whatever holds one of these.
   */
  static RuleOutcome withUnknown(HeatingPlan plan, RuleOutcome outcome) {
    for (Material material : plan.contents().materials()) {
      outcome = UNKNOWN.get(material) ? outcome.andNotAssessed(material, "pigment") : outcome;
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
    return HAZARD.get(material).isPresent()
        || !HazardNames.of(material).isEmpty()
        || bearsAListedName(material);
  }

  /** A name of the catalogue stands for its pigment, where nothing else is said of it. */
  private static boolean bearsAListedName(Material material) {
    if (material.cas().isPresent() || material.colourIndexName().isPresent()) {
      return false;
    }
    List<Material> meant =
        Stream.of(material.name(Locale.ENGLISH), material.name(Locale.GERMAN))
            .flatMap(name -> MaterialCatalogue.standard().matches(name).stream())
            .toList();
    return !meant.isEmpty()
        && meant.stream().allMatch(m -> PigmentHazards.of(m).filter(Pigments::isMild).isPresent());
  }

  private static boolean isMild(PigmentHazard pigment) {
    return pigment.heatUse() != HeatUse.NEVER_HEATED && !hasToxicMetal(pigment);
  }
}
