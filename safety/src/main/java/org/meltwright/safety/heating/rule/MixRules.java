// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import static org.meltwright.safety.heating.RuleInfo.Topic.MIX;
import static org.meltwright.safety.heating.rule.Check.either;
import static org.meltwright.safety.heating.rule.Check.family;
import static org.meltwright.safety.heating.rule.Check.holding;
import static org.meltwright.safety.heating.rule.Check.mixHolds;
import static org.meltwright.safety.heating.rule.Check.stated;
import static org.meltwright.safety.heating.rule.Check.whether;
import static org.meltwright.safety.heating.rule.Rule.caution;
import static org.meltwright.safety.heating.rule.Rule.danger;
import static org.meltwright.safety.heating.rule.Rule.notice;
import static org.meltwright.safety.heating.rule.Rule.warning;

import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.material.PerMaterial;
import org.meltwright.core.material.PropertyKey;
import org.meltwright.core.source.Source;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.Contents;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingRule;
import org.meltwright.safety.heating.RuleOutcome;
import org.meltwright.safety.heating.TemperatureTable.Band;
import org.meltwright.units.Limit;
import org.meltwright.units.MassFraction;

/** What is in the pot. */
final class MixRules {

  private static final Set<String> GLYCERIDES = Set.of("soy-wax", "japan-wax");

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
              stated(Circumstance.WET_TOOLS)),
          new Rule(
              danger("water-added", MIX, Sources.WAX_FIRES).asBlocking().asFixed(),
              stated(Circumstance.WATER_ADDED)),
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
              holding(m -> m.family() == MaterialFamily.DISPERSION || Wording.ACRYLIC.isIn(m))),
          new Rule(
              danger("solvent", MIX, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              holding(family(MaterialFamily.SOLVENT))),
          new Rule(warning("fragrance-warm", MIX, Source.COMMON_PRACTICE), Fragrance::warns),
          new Rule(
              danger("fragrance-too-hot", MIX, Source.COMMON_PRACTICE).asBlocking().asFixed(),
              Fragrance::blocks),
          new Rule(
              danger("solvent-thinned-wax", MIX, Sources.STATE_ENCAUSTICS).asBlocking().asFixed(),
              holding(Wording.SOLVENT_THINNED::isIn)),
          new Rule(
              warning("varnish", MIX, Source.COMMON_PRACTICE).asBlocking(),
              either(whether(mixHolds(Wording.VARNISH::isIn)), stated(Circumstance.VARNISH_ADDED))),
          new Rule(
              warning("alkyd", MIX, Source.COMMON_PRACTICE).asBlocking(),
              either(whether(mixHolds(Wording.ALKYD::isIn)), stated(Circumstance.ALKYD_ADDED))),
          new Rule(
              caution("unknown-crayons", MIX, Source.COMMON_PRACTICE).asBlocking(),
              stated(Circumstance.UNKNOWN_CRAYONS_ADDED)),
          new Rule(
              notice("bleached-wax", MIX, Source.COMMON_PRACTICE), holding(Wording.BLEACHED::isIn)),
          new Rule(notice("glyceride-wax", MIX, Source.COMMON_PRACTICE), MixRules::glyceride),
          new Rule(caution("drying-oil", MIX, Source.COMMON_PRACTICE), MixRules::dryingOil));

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

  /** From this share on drying oil that is no part of a paint is too much; common practice. */
  private static final double MUCH_OIL = 0.10;

  /** Finds drying oil that is weighed in as such: what a paint brings has rules of its own. */
  private static RuleOutcome dryingOil(HeatingPlan plan) {
    double share = 0;
    for (Material material : plan.contents().materials()) {
      if (material.family() == MaterialFamily.DRYING_OIL || Names.isDryingOil(material)) {
        share += plan.mix().massFractionValue(material);
      }
    }
    return RuleOutcome.foundIf(Limit.reaches(share, MUCH_OIL))
        .with("oil", MassFraction.of(Math.min(1, share)));
  }

  private static RuleOutcome waterMixableWithWater(HeatingPlan plan) {
    List<Material> found = plan.contents().holding(Wording.WATER_MIXABLE::isIn);
    return Check.found(found.stream().filter(MixRules::isOrHoldsWater).toList());
  }

  /**
   * Finds a fat where it is hot enough to fume before wax does: candles of it are poured cooler.
   */
  private static RuleOutcome glyceride(HeatingPlan plan) {
    RuleOutcome fat = Check.found(plan.contents().holding(m -> GLYCERIDES.contains(m.id())));
    if (!fat.isFound() || plan.uses(Kind.TORCH) || plan.uses(Kind.HEAT_GUN)) {
      return fat;
    }
    return WaxTemperature.review(
        plan,
        wax ->
            WaxTemperature.ruledOut(
                plan,
                plan.table().hasBegun(Band.DARKENING, wax.value()) ? fat : RuleOutcome.NOTHING,
                wax));
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

  /**
   * What a material calls itself, in whole English or German words of its id or one of its names. A
   * word after a "not" does not count: "unbleached" and "nicht gebleicht" are not bleached.
   */
  private enum Wording {
    /** Alkyd paint or medium; German compounds begin with the word. */
    ALKYD("alkyd(?!frei)\\S*"),
    /** Acrylic paint, medium or polymer. */
    ACRYLIC("acryl\\S*"),
    /** Varnish; German compounds end with the word. */
    VARNISH("varnish(?:es)?|\\S*firnis(?:se|sen)?"),
    /** Wax thinned with solvent, for work without heat. */
    SOLVENT_THINNED(
        "cold wax|coldwax|kaltwachs\\S*|solvent thinned|lös(?:e|ungs)mittelverdünnt\\S*"),
    /** Bleached wax, by anything but the sun, which leaves nothing in it. */
    BLEACHED("(?<! (?:sun|sonnen) )(?:bleached|gebleicht(?:e[mnrs]?)?)"),
    /** Oil paint that mixes with water. */
    WATER_MIXABLE(
        "water ?mixable|water soluble oils?|wasser ?mischbar\\S*|wasservermalbar\\S*"
            + "|wasserlösliche[nrs]? ölfarben?");

    private static final String NOT = "(?<! (?:un|non|not|nicht|without|ohne))";
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final PerMaterial<Set<Wording>> FOUND = PerMaterial.of(Wording::find);

    private final Pattern pattern;

    Wording(String words) {
      pattern = Pattern.compile(NOT + " (?:" + words + ") ");
    }

    boolean isIn(Material material) {
      return FOUND.get(material).contains(this);
    }

    private static Set<Wording> find(Material material) {
      List<String> texts =
          Stream.concat(
                  Stream.of(
                      material.id(), material.name(Locale.ENGLISH), material.name(Locale.GERMAN)),
                  material.otherNames().stream())
              .map(Wording::spaced)
              .toList();
      EnumSet<Wording> found = EnumSet.allOf(Wording.class);
      found.removeIf(words -> texts.stream().noneMatch(text -> words.pattern.matcher(text).find()));
      return found;
    }

    private static String spaced(String text) {
      String composed = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
      return " " + BETWEEN_WORDS.matcher(composed).replaceAll(" ").strip() + " ";
    }
  }
}
