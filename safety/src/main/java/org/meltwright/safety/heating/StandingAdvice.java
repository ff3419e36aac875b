// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.units.Messages;

/**
 * The cautions that hold whatever a review finds, in the order to show them in; three of them where
 * a flame or a lamp is used, or a resin is in the mix.
 *
 * <p>For example:
 *
 * <pre>{@code
 * HeatingPlan plan =
 *     HeatingPlan.of(Composition.of(MaterialCatalogue.standard().require("beeswax-yellow")));
 * List<StandingAdvice> advice = HeatingRules.standard().review(plan).standingAdvice();
 * advice.get(0); // FIRST
 * advice.get(1).text(Locale.ENGLISH); // Wax on fire: heat off if you reach it …
 * }</pre>
 */
public enum StandingAdvice {
  /** Local codes, data sheets and licensed practice come first. */
  FIRST("first"),
  /** What to do when wax burns. */
  WAX_FIRE(
      "wax-fire",
      "waldeck-frankenberg",
      "Landkreis Waldeck-Frankenberg, civil protection: wax fires"),
  /** What to do for a burn of the skin. */
  BURN("burn", "north-bristol-burns", "NHS North Bristol, First aid for burns"),
  /** What to do for wax in the eye or on the face. */
  EYE("eye", "healthlink-eye", "HealthLink BC, Eye Injury: First Aid for Heat Burns"),
  /** What to do when clothes burn. */
  BURNING_CLOTHES(
      "burning-clothes", "west-midlands-burns", "West Midlands Fire Service, First aid"),
  /** What to do for wax in the hair. */
  HAIR("hair"),
  /** What to do when somebody has breathed fume. */
  FUME("fume"),
  /** Air drawn away from faces and out of the room. */
  AIR("air", "aic-ventilation", "AIC Conservation Wiki, Ventilation"),
  /** Everything that touches the melt is dry. */
  DRY("dry"),
  /** Hot wax is never left alone. */
  ATTENDANCE("attendance"),
  /** What is within reach before the heat goes on. */
  WITHIN_REACH("within-reach"),
  /** Clothing, hair and shoes. */
  CLOTHING("clothing"),
  /** Oil-bearing rags heat themselves. */
  OILY_RAGS("oily-rags", "school-oily-rags", "A school workshop sheet on oily-rag cans"),
  /** No vessel goes back to the kitchen. */
  KITCHEN("kitchen"),
  /** Pregnancy, asthma and allergy: asked of the group, kept of nobody. */
  GROUP("group"),
  /** Where a resin is in the mix of which nobody publishes a flash point. */
  RESIN("resin"),
  /** Where a flame works on something. */
  FLAME("flame"),
  /** Where a lamp works on something. */
  LAMP("lamp", "osu-heat-lamps", "Ohio State University Extension, Using heat lamps?");

  private final String id;
  private final String sourceId;
  private final String sourceTitle;

  StandingAdvice(String id) {
    this(id, Source.COMMON_PRACTICE.id(), Source.COMMON_PRACTICE.title());
  }

  StandingAdvice(String id, String sourceId, String sourceTitle) {
    this.id = id;
    this.sourceId = sourceId;
    this.sourceTitle = sourceTitle;
  }

  /**
   * Returns the stable id.
   *
   * @return lower case and hyphens, for example {@code wax-fire}
   */
  public String id() {
    return id;
  }

  /**
   * Returns the advice.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or several sentences
   */
  public String text(Locale locale) {
    return Messages.beside(StandingAdvice.class).text("advice." + name(), locale);
  }

  /**
   * Tells whether the advice holds for a plan: all but three hold for every plan.
   *
   * @param plan the plan
   * @return whether it is to be shown with its review
   */
  public boolean holdsFor(HeatingPlan plan) {
    return switch (this) {
      case FLAME -> plan.uses(HeatSource.Kind.TORCH) || plan.uses(HeatSource.Kind.OPEN_COIL_OR_GAS);
      case LAMP -> plan.uses(HeatSource.Kind.LAMP);
      case RESIN -> plan.contents().hasResinThatNobodyKnows();
      default -> true;
    };
  }

  /**
   * Returns what the advice rests on.
   *
   * @return the source; {@link Source#COMMON_PRACTICE} for a rule of the trade
   */
  public Source source() {
    return sourceId.equals(Source.COMMON_PRACTICE.id())
        ? Source.COMMON_PRACTICE
        : Source.of(sourceId, sourceTitle, SourceKind.WEB_PAGE);
  }
}
