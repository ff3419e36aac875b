// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Locale;
import java.util.Map;
import org.meltwright.units.Messages;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * One rule of the heating review: one id, one severity.
 *
 * <p>An app adds its own by implementing this and calling {@link HeatingRules#with}. Its texts
 * stand in {@code messages_en.properties} and {@code messages_de.properties} beside its class,
 * under {@code rule.<id>.summary}, {@code rule.<id>.reason} and {@code rule.<id>.remedy}; for each
 * property that it may report as not assessed, and that the rules of this library do not know,
 * under {@code missing.<property>.what} and {@code missing.<property>.remedy}; for each thing that
 * it may report as not asked, under {@code asked.<thing>}. Every text may speak of the limits that
 * the plan was held against: {@code {target}}, {@code {ceiling}}, {@code {floorLimit}}, {@code
 * {floorCaution}}, {@code {margin}}, {@code {leastWidth}}. A named module opens that package to
 * {@code org.meltwright.units}. An app with another place for texts overrides {@link #text}.
 *
 * <p>A text that is found nowhere hides nothing: a German reader gets the English one, and where
 * that is missing too a sentence that names rule and severity, or the missing property.
 *
 * <p>A rule keeps no state, so that it is thread-safe, and does not depend on other rules or on the
 * order of the materials.
 *
 * <p>For example, a studio's own rule; what is not stated is not taken for short:
 *
 * <pre>{@code
 * class LongDay implements HeatingRule {
 *   final RuleInfo info =
 *       RuleInfo.of("long-day", Severity.NOTICE, RuleInfo.Topic.PLACE, Source.COMMON_PRACTICE);
 *   public RuleInfo info() { return info; }
 *   public RuleOutcome review(HeatingPlan plan) {
 *     return plan.hoursHeld().isEmpty()
 *         ? RuleOutcome.notAsked("hours-held")
 *         : RuleOutcome.foundIf(Limit.exceeds(plan.hoursHeld().getAsDouble(), 8));
 *   }
 * }
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan = HeatingPlan.builder(Composition.of(wax)).hoursHeld(9).build();
 * HeatingReview review = HeatingRules.standard().with(new LongDay()).review(plan);
 * Finding found = review.finding("long-day").get();
 * found.summary(Locale.ENGLISH); // The rule "long-day" (NOTICE) has a finding. …
 * }</pre>
 */
public interface HeatingRule {

  /**
   * Returns what the rule says of itself.
   *
   * @return id, severity, topic, blocking, fixed and source; the same object each time
   */
  RuleInfo info();

  /**
   * Holds the rule against a plan.
   *
   * @param plan what is to be heated, with what and where
   * @return what it found, and what it could not assess
   */
  RuleOutcome review(HeatingPlan plan);

  /**
   * Returns a text of this rule.
   *
   * @param key the key, for example {@code rule.hard-ceiling.reason}
   * @param locale the reader's language: German for {@code de}, English for all others
   * @param values what stands in the places of the text, by name
   * @return the text
   * @throws ProblemException if the rule has no such text; a reader then gets another, as said
   *     above
   */
  default String text(String key, Locale locale, Map<String, String> values) {
    return Messages.beside(getClass())
        .find(key, locale, values)
        .orElseThrow(
            () ->
                new ProblemException(
                    Problem.of(HeatingProblem.TEXT_MISSING, key).with("rule", info().id())));
  }
}
