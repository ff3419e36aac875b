// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;
import org.meltwright.units.Messages;

/**
 * The cautions that hold whatever a review finds: shown each time, in this order.
 *
 * <p>For example:
 *
 * <pre>{@code
 * HeatingPlan plan =
 *     HeatingPlan.of(Composition.of(MaterialCatalogue.standard().require("beeswax-yellow")));
 * List<StandingAdvice> advice = HeatingRules.standard().review(plan).standingAdvice();
 * advice.get(0); // FIRST
 * advice.get(1).text(Locale.ENGLISH); // Wax on fire: heat off, put the lid …
 * }</pre>
 */
public enum StandingAdvice {
  /** Local codes, data sheets and licensed practice come first. */
  FIRST,
  /** What to do when wax burns. */
  WAX_FIRE("waldeck-frankenberg", "Landkreis Waldeck-Frankenberg, civil protection: wax fires"),
  /** What to do for a burn. */
  BURN("north-bristol-burns", "NHS North Bristol, First aid for burns"),
  /** Air drawn away from faces and out of the room. */
  AIR("aic-ventilation", "AIC Conservation Wiki, Ventilation"),
  /** Everything that touches the melt is dry. */
  DRY,
  /** Hot wax is never left alone. */
  ATTENDANCE,
  /** What is within reach before the heat goes on. */
  WITHIN_REACH,
  /** Clothing, hair and shoes. */
  CLOTHING,
  /** Oil-bearing rags heat themselves. */
  OILY_RAGS("school-oily-rags", "A school workshop sheet on oily-rag cans"),
  /** No vessel goes back to the kitchen. */
  KITCHEN;

  private final String sourceId;
  private final String sourceTitle;

  StandingAdvice() {
    this(Source.COMMON_PRACTICE.id(), "");
  }

  StandingAdvice(String sourceId, String sourceTitle) {
    this.sourceId = sourceId;
    this.sourceTitle = sourceTitle;
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
   * Returns what the advice rests on.
   *
   * @return the source; {@link Source#COMMON_PRACTICE} for a rule of the trade
   */
  public Source source() {
    return sourceTitle.isEmpty()
        ? Source.COMMON_PRACTICE
        : new Source(
            sourceId, sourceTitle, Source.NOT_STATED, Source.NOT_STATED, SourceKind.WEB_PAGE);
  }
}
