// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.MIX;
import static org.meltwright.safety.heating.rule.Check.family;
import static org.meltwright.safety.heating.rule.Check.has;
import static org.meltwright.safety.heating.rule.Check.holding;
import static org.meltwright.safety.heating.rule.Check.mixHolds;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.util.List;
import java.util.Set;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleOutcome;

/** What is in the pot. */
final class MixRules {

  private static final Set<String> GLYCERIDES = Set.of("soy-wax", "japan-wax", "stearic-acid");

  static final List<HeatingRule> ALL =
      List.of(
          new Rule(
              notice("oil-paint-noted", MIX, Source.COMMON_PRACTICE),
              plan -> OilPaint.review(plan, 0.12, 0.20)),
          new Rule(
              caution("oil-paint-soft", MIX, Source.COMMON_PRACTICE),
              plan -> OilPaint.review(plan, 0.20, 0.30)),
          new Rule(
              notice("oil-paint-too-much", MIX, Source.COMMON_PRACTICE).asBlocking(),
              plan -> OilPaint.review(plan, 0.30, Double.POSITIVE_INFINITY)),
          new Rule(danger("water", MIX, Sources.WAX_FIRES).asBlocking().asFixed(), MixRules::water),
          new Rule(
              danger("wet-tools", MIX, Sources.WAX_FIRES).asBlocking().asFixed(),
              whether(has(Circumstance.WET_TOOLS))),
          new Rule(
              caution("water-mixable-oil", MIX, Source.COMMON_PRACTICE),
              holding(Wording.WATER_MIXABLE::isIn)),
          new Rule(
              danger("water-mixable-oil-with-water", MIX, Source.COMMON_PRACTICE)
                  .asBlocking()
                  .asFixed(),
              MixRules::waterMixableWithWater),
          new Rule(
              danger("acrylic", MIX, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              holding(family(MaterialFamily.DISPERSION))),
          new Rule(
              danger("solvent", MIX, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              holding(family(MaterialFamily.SOLVENT))),
          new Rule(
              danger("solvent-thinned-wax", MIX, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              holding(Wording.SOLVENT_THINNED::isIn)),
          new Rule(
              warning("varnish", MIX, Source.COMMON_PRACTICE).asBlocking(),
              whether(mixHolds(Wording.VARNISH::isIn).or(has(Circumstance.VARNISH_ADDED)))),
          new Rule(
              warning("alkyd", MIX, Source.COMMON_PRACTICE).asBlocking(),
              whether(mixHolds(Wording.ALKYD::isIn).or(has(Circumstance.ALKYD_ADDED)))),
          new Rule(
              caution("unknown-crayons", MIX, Source.COMMON_PRACTICE).asBlocking(),
              whether(has(Circumstance.UNKNOWN_CRAYONS_ADDED))),
          new Rule(
              caution("bleached-wax", MIX, Source.COMMON_PRACTICE),
              holding(Wording.BLEACHED::isIn)),
          new Rule(
              notice("glyceride-wax", MIX, Source.COMMON_PRACTICE),
              holding(material -> GLYCERIDES.contains(material.id()))));

  private MixRules() {}

  /** Finds water; dispersions and water-mixable paints have rules of their own. */
  private static RuleOutcome water(HeatingPlan plan) {
    return Check.found(
        plan.contents().materials().stream()
            .filter(material -> material.family() != MaterialFamily.DISPERSION)
            .filter(material -> !Wording.WATER_MIXABLE.isIn(material))
            .filter(MixRules::isOrHoldsWater)
            .toList());
  }

  private static RuleOutcome waterMixableWithWater(HeatingPlan plan) {
    List<Material> found = plan.contents().holding(Wording.WATER_MIXABLE::isIn);
    boolean wet =
        plan.has(Circumstance.WATER_ADDED) || found.stream().anyMatch(MixRules::isOrHoldsWater);
    return wet ? Check.found(found) : RuleOutcome.NOTHING;
  }

  private static boolean isOrHoldsWater(Material material) {
    return Contents.parts(material)
        .anyMatch(part -> part.family() == MaterialFamily.WATER || statesWater(part));
  }

  /** Tells whether a material's data state that it holds water, at the low end too. */
  private static boolean statesWater(Material material) {
    return material
        .find(PropertyKey.WATER_CONTENT)
        .filter(water -> water.value().low().value() > 0)
        .isPresent();
  }
}
