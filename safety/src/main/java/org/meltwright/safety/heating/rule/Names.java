// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.safety.hazard.DustClass;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.naming.HazardNames;
import org.meltwright.safety.naming.NameKind;
import org.meltwright.safety.naming.NamedHazard;
import org.meltwright.units.Bilingual;

/** What the names of materials that are none of the catalogue's own tell. */
final class Names {

  /** Metals whose pigments have a rule of their own. */
  private static final List<String> METALS_WITH_A_RULE = List.of("Pb", "As", "Hg");

  /** A wax of unknown make is asked for. */
  private static final Set<NameKind> ASKED_FOR = Set.of(NameKind.WAX);

  private static final PerMaterial<List<NamedHazard>> TOLD = PerMaterial.of(Names::told);

  private Names() {}

  /** What the pigment table judges is told there, unless a name says worse than the number. */
  private static List<NamedHazard> told(Material material) {
    List<NamedHazard> all = HazardNames.of(material);
    return !Pigments.isJudged(material)
        ? all
        : all.stream().filter(n -> n.against().isPresent() || n.dust().isEmpty()).toList();
  }

  /** Finds a name that tells a compound of a metal which is never heated. */
  static Check neverHeated(String metal) {
    return plan -> named(plan, n -> isNeverHeated(n) && n.hazard().mayHold(metal));
  }

  /**
   * Finds any other name of what is never heated; what the pigment table knows is told there, and
   * camphor in a mix counts as fragrance.
   */
  static RuleOutcome neverHeated(HeatingPlan plan) {
    boolean neat = plan.contents().materials().size() == 1;
    return named(
        plan,
        n ->
            isNeverHeated(n)
                && (neat || n.hazard().kind() != NameKind.FRAGRANCE)
                && METALS_WITH_A_RULE.stream().noneMatch(n.hazard()::mayHold));
  }

  /** Finds materials whose name tells a toxic metal or a dust that is refused. */
  static List<Material> toxic(HeatingPlan plan) {
    return plan.contents().materials().stream()
        .filter(m -> TOLD.get(m).stream().anyMatch(Names::isToxicByName))
        .toList();
  }

  private static boolean isToxicByName(NamedHazard name) {
    return name.isBinding() && name.dust().filter(Names::isToxic).isPresent();
  }

  /** Tells whether the name of a material that is no mixture tells a drying oil. */
  static boolean isDryingOil(Material material) {
    return material.family() != MaterialFamily.OIL_PAINT
        && material.constituents().isEmpty()
        && TOLD.get(material).stream().anyMatch(NamedHazard::isDryingOil);
  }

  static RuleOutcome meltedOnly(HeatingPlan plan) {
    return named(plan, n -> n.isBinding() && n.heatUse() == HeatUse.MELTED_ONLY);
  }

  static RuleOutcome toxicPowder(HeatingPlan plan) {
    return named(plan, Names::isToxicByName);
  }

  private static boolean isToxic(DustClass dust) {
    return dust == DustClass.TOXIC_METAL || dust == DustClass.REFUSE_POWDER;
  }

  private static boolean isNeverHeated(NamedHazard name) {
    return name.isBinding()
        && name.heatUse() == HeatUse.NEVER_HEATED
        && !ASKED_FOR.contains(name.hazard().kind());
  }

  private static RuleOutcome named(HeatingPlan plan, Predicate<NamedHazard> wanted) {
    List<Material> materials = new ArrayList<>();
    List<Bilingual> words = new ArrayList<>();
    for (Material material : plan.contents().materials()) {
      List<NamedHazard> told = TOLD.get(material).stream().filter(wanted).limit(1).toList();
      told.forEach(n -> words.add(Bilingual.of(n::text)));
      materials.addAll(told.isEmpty() ? List.of() : List.of(material));
    }
    return Check.found(materials).with("names", words);
  }
}
