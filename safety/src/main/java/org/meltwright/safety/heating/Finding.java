// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.source.Source;

/**
 * What one rule found in one plan: the rule, the numbers, and on demand the texts for a reader.
 *
 * <p>Findings sort by blocking first, then severity, then id. The order looks at the rule alone and
 * is inconsistent with equals: what one rule finds in two plans compares as 0, and a sorted set or
 * map keeps only one of them. Collect findings of several reviews by equality, then sort.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * HeatingPlan plan =
 *     HeatingPlan.builder(Composition.of(wax)).liquidReading(ofCelsius(91)).build();
 * Finding finding = HeatingRules.standard().review(plan).finding("above-target").get();
 * finding.severity(); // CAUTION
 * finding.summary(Locale.ENGLISH); // The wax is at 91.0 °C (195.8 °F), above the target …
 * finding.details(); // {wax=91.0 °C}
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Finding implements Comparable<Finding> {

  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::isBlocking)
          .reversed()
          .thenComparing(Finding::severity)
          .thenComparing(Finding::ruleId);

  private final HeatingRule rule;
  private final Map<String, Object> details;
  private final HeatingLimits limits;
  private final List<HeatingLimits.Figure> tightened;

  Finding(HeatingRule rule, RuleOutcome outcome, HeatingLimits limits) {
    this.rule = rule;
    this.details = outcome.details();
    this.limits = limits;
    this.tightened = outcome.limits().stream().filter(limits::isTightened).toList();
  }

  /**
   * Returns the id of the rule.
   *
   * @return for example {@code hard-ceiling}
   */
  public String ruleId() {
    return rule.info().id();
  }

  /**
   * Returns what the rule says of itself.
   *
   * @return id, severity, topic, blocking, fixed and source
   */
  public RuleInfo info() {
    return rule.info();
  }

  /**
   * Returns how badly it may end.
   *
   * @return the severity
   */
  public Severity severity() {
    return rule.info().severity();
  }

  /**
   * Tells whether the work must not go on until this is put right.
   *
   * @return whether it blocks
   */
  public boolean isBlocking() {
    return rule.info().blocking();
  }

  /**
   * Returns what the rule rests on.
   *
   * @return the source; {@link Source#COMMON_PRACTICE} for a rule of the trade
   */
  public Source source() {
    return rule.info().source();
  }

  /**
   * Returns the values that the texts speak of.
   *
   * @return an unmodifiable map by name, in the order in which the rule gave them: temperatures,
   *     differences, mass fractions, materials
   */
  public Map<String, Object> details() {
    return details;
  }

  /**
   * Returns the tightened figures of the limits that the finding rests on.
   *
   * @return the figures; empty if it rests on none, or on standard ones
   */
  public List<HeatingLimits.Figure> tightenedLimits() {
    return tightened;
  }

  /**
   * Says what was found.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence
   */
  public String summary(Locale locale) {
    return text("summary", locale);
  }

  /**
   * Says why it matters.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or two sentences; where a tightened limit decided, one more that says so and why it
   *     is tightened
   */
  public String reason(Locale locale) {
    return Stream.concat(
            Stream.of(text("reason", locale)),
            tightened.stream().map(figure -> RuleTexts.tightened(limits, figure, locale)))
        .collect(Collectors.joining(" "));
  }

  /**
   * Says what to do.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one or two sentences
   */
  public String remedy(Locale locale) {
    return text("remedy", locale);
  }

  private String text(String part, Locale locale) {
    return RuleTexts.finding(rule, part, locale, details, limits);
  }

  @Override
  public int compareTo(Finding other) {
    return ORDER.compare(this, other);
  }

  /**
   * Compares rule, values and limits.
   *
   * @param other the other object
   * @return whether both say the same of the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Finding that
        && info().equals(that.info())
        && details.equals(that.details)
        && limits.equals(that.limits)
        && tightened.equals(that.tightened);
  }

  @Override
  public int hashCode() {
    return ruleId().hashCode() * 31 + details.hashCode();
  }

  /**
   * Returns severity, id and English summary on one line.
   *
   * @return for example "CAUTION above-target: The wax is at 91.0 °C …"
   */
  @Override
  public String toString() {
    return severity() + " " + ruleId() + ": " + summary(Locale.ENGLISH);
  }
}
