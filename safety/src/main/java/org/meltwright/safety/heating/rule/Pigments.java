// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
import org.meltwright.safety.naming.NamedHazard;

/** Questions about the pigments of a mix, answered by the one table of pigment hazards. */
final class Pigments {

  private static final List<String> METALS_WITH_A_RULE = List.of("Pb", "Hg", "As");

  private static final Set<String> BURN_AS_POWDER =
      Set.of(
          "carbon-black",
          "vine-black",
          "prussian-blue",
          "bronze-powder",
          "aluminium-powder",
          "zinc-dust");

  private static final PerMaterial<Optional<PigmentHazard>> HAZARD =
      PerMaterial.of(Pigments::hazard);

  private static final PerMaterial<Boolean> UNKNOWN =
      PerMaterial.of(m -> isUnknown(m, part -> isListed(part) || HazardNames.isFalseFriend(part)));

  private static final PerMaterial<Boolean> UNKNOWN_IN_HEAT =
      PerMaterial.of(m -> isUnknown(m, Pigments::isListed));

  private Pigments() {}

  /** Finds pigments that match; one that cannot be told stays unassessed. */
  static Check which(Predicate<PigmentHazard> wanted) {
    return plan -> withUnknown(plan, Check.found(holding(plan, wanted)));
  }

  /** Finds pigments that take less heat; what is no toxic metal may be one of them. */
  static Check whichInHeat(Predicate<PigmentHazard> wanted) {
    return plan -> withUnknown(plan, Check.found(holding(plan, wanted)), UNKNOWN_IN_HEAT);
  }

  /** Returns the materials of a mix that hold a pigment which matches, by id. */
  static List<Material> holding(HeatingPlan plan, Predicate<PigmentHazard> wanted) {
    return plan.contents().holding(part -> HAZARD.get(part).filter(wanted).isPresent());
  }

  /** Tells whether a metal makes the pigment's dust toxic. */
  static boolean hasToxicMetal(PigmentHazard pigment) {
    return pigment.dust() == DustClass.TOXIC_METAL || pigment.dust() == DustClass.REFUSE_POWDER;
  }

  /** Tells whether no flame may reach it; toxic metals are told by themselves. */
  static boolean isKeptFromFlame(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.FLAME_FREE && !hasToxicMetal(pigment);
  }

  /** Tells whether no flame may reach it because of a toxic metal. */
  static boolean isToxicAndKeptFromFlame(PigmentHazard pigment) {
    return pigment.heatUse() == HeatUse.FLAME_FREE && hasToxicMetal(pigment);
  }

  /** Tells whether its powder burns, or smoulders on by itself. */
  static boolean burns(PigmentHazard pigment) {
    return BURN_AS_POWDER.contains(pigment.id());
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
    return withUnknown(plan, outcome, UNKNOWN);
  }

  private static RuleOutcome withUnknown(
      HeatingPlan plan, RuleOutcome outcome, PerMaterial<Boolean> unknown) {
    for (Material material : plan.contents().materials()) {
      outcome = unknown.get(material) ? outcome.andNotAssessed(material, "pigment") : outcome;
    }
    return outcome;
  }

  private static boolean isUnknown(Material material, Predicate<Material> isKnown) {
    return material.family() == MaterialFamily.PIGMENT
        ? !isKnown.test(material)
        : Contents.parts(material).anyMatch(part -> hidesItsPigment(part, isKnown));
  }

  private static boolean hidesItsPigment(Material part, Predicate<Material> isKnown) {
    boolean colours =
        part.family() == MaterialFamily.PIGMENT
            || part.family() == MaterialFamily.OIL_PAINT
            || part.role() == MaterialRole.COLOURANT;
    return colours && Contents.parts(part).noneMatch(isKnown);
  }

  private static boolean isListed(Material material) {
    return HAZARD.get(material).isPresent()
        || HazardNames.of(material).stream().anyMatch(Pigments::isCertain);
  }

  /** A name of several things, or of a substitute, does not tell which pigment it is. */
  private static boolean isCertain(NamedHazard name) {
    return name.standing() == NamedHazard.Standing.NAMED;
  }

  /** What the table says of a pigment, or of what the catalogue calls by its name. */
  private static Optional<PigmentHazard> hazard(Material material) {
    Optional<PigmentHazard> listed = PigmentHazards.of(material);
    boolean isBareName =
        listed.isEmpty()
            && material.cas().isEmpty()
            && material.colourIndexName().isEmpty()
            && HazardNames.of(material).isEmpty();
    return isBareName
        ? byCatalogueName(material).or(() -> HazardNames.ordinaryPigment(material))
        : listed.or(() -> byListedName(material));
  }

  /** Tells whether the pigment table judges a material, whatever its names say. */
  static boolean isJudged(Material material) {
    return HAZARD.get(material).isPresent();
  }

  /**
   * What is kept from flames and no more: a name that is certain tells the pigment. What is melted
   * only or never heated has rules of names.
   */
  private static Optional<PigmentHazard> byListedName(Material material) {
    List<NamedHazard> told = HazardNames.of(material);
    boolean keptFromFlame =
        told.stream().allMatch(n -> isCertain(n) && n.heatUse() == HeatUse.FLAME_FREE);
    return keptFromFlame
        ? told.stream().flatMap(n -> n.hazard().pigment().stream()).findFirst()
        : Optional.empty();
  }

  /** A name of the catalogue stands for its pigment, where nothing else is said of it. */
  private static Optional<PigmentHazard> byCatalogueName(Material material) {
    List<Optional<PigmentHazard>> meant =
        Stream.of(material.name(Locale.ENGLISH), material.name(Locale.GERMAN))
            .flatMap(name -> MaterialCatalogue.standard().matches(name).stream())
            .map(PigmentHazards::of)
            .toList();
    boolean areMild = meant.stream().allMatch(p -> p.filter(Pigments::isMild).isPresent());
    return areMild
        ? meant.stream().flatMap(Optional::stream).min(Comparator.comparing(PigmentHazard::heatUse))
        : Optional.empty();
  }

  private static boolean isMild(PigmentHazard pigment) {
    return pigment.heatUse() != HeatUse.NEVER_HEATED && !hasToxicMetal(pigment);
  }
}
