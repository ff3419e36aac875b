// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;

/**
 * What could not be assessed because a datum is missing of something that was mentioned: which
 * datum, of what, and which rules wanted it. It ranks as a caution at least: unknown is an answer,
 * and not a good one. A rule that failed stands here too, by its name.
 *
 * <p>Entries that block come first, then the graver ones, then by what is missing and of what. The
 * order does not look at the rules and is inconsistent with equals: collect those of several
 * reviews by equality, then sort.
 *
 * <p>For example, beeswax at 80 °C with an oil of which nobody states a flash point.
 *
 * <pre>{@code
 * Material oil =
 *     Material.builder("own-oil")
 *         .names("Own oil", "Eigenes Öl")
 *         .family(MaterialFamily.DRYING_OIL, MaterialRole.OIL)
 *         .build();
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition mix = Composition.ofParts(List.of(wax, oil), 9, 1);
 * HeatingPlan plan = HeatingPlan.builder(mix).liquidReading(ofCelsius(80)).build();
 * NotAssessed unknown =
 *     HeatingRules.standard().review(plan).notAssessed().stream()
 *         .filter(n -> n.property().equals("flash-point"))
 *         .findFirst().get();
 * unknown.material(); // own-oil
 * unknown.ruleIds(); // [flash-margin]
 * unknown.severity(); // CAUTION
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class NotAssessed implements Comparable<NotAssessed> {

  /** The property of an entry that names a rule which failed. */
  private static final String FAILED = "rule";

  private static final Comparator<NotAssessed> ORDER =
      Comparator.comparing(NotAssessed::isBlocking)
          .reversed()
          .thenComparing(NotAssessed::severity)
          .thenComparing(NotAssessed::property)
          .thenComparing(n -> n.material().map(Material::id).orElse(""));

  private final @Nullable Material material;
  private final String property;
  private final Severity severity;
  private final List<HeatingRule> rules;
  private final HeatingLimits limits;
  private final @Nullable String failure;

  /** A datum that is missing, and the rules that wanted it. */
  NotAssessed(RuleOutcome.Missing datum, List<HeatingRule> rules, HeatingLimits limits) {
    this(datum.material(), datum.property(), datum.severity(), rules, limits, null);
  }

  /** A rule that could not be applied, for a reason that is no datum. */
  static NotAssessed ofFailed(HeatingRule rule, String failure, HeatingLimits limits) {
    return new NotAssessed(null, FAILED, Severity.WARNING, List.of(rule), limits, failure);
  }

  private NotAssessed(
      @Nullable Material material,
      String property,
      Severity severity,
      List<HeatingRule> rules,
      HeatingLimits limits,
      @Nullable String failure) {
    this.material = material;
    this.property = property;
    this.severity = severity;
    this.rules = rules;
    this.limits = limits;
    this.failure = failure;
  }

  /**
   * Returns the material whose datum is missing.
   *
   * @return the material; empty if the datum belongs to the plan
   */
  public Optional<Material> material() {
    return Optional.ofNullable(material);
  }

  /**
   * Returns the id of what is missing.
   *
   * @return for example {@code flash-point} or {@code overshoot}; {@code rule} for a rule that
   *     failed
   */
  public String property() {
    return property;
  }

  /**
   * Returns the rules that wanted it.
   *
   * @return their ids, in order
   */
  public List<String> ruleIds() {
    return rules.stream().map(rule -> rule.info().id()).toList();
  }

  /**
   * Returns how it ranks.
   *
   * @return {@link Severity#CAUTION} or worse
   */
  public Severity severity() {
    return severity;
  }

  /**
   * Tells whether the work must not go on until this is known.
   *
   * @return whether a rule failed that blocks
   */
  public boolean isBlocking() {
    return failure != null && rules.stream().anyMatch(rule -> rule.info().blocking());
  }

  /**
   * Says what is missing, and of what.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence
   */
  public String what(Locale locale) {
    return text("what", locale);
  }

  /**
   * Says how to come by it.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return one sentence
   */
  public String remedy(Locale locale) {
    return text("remedy", locale);
  }

  private String text(String part, Locale locale) {
    if (failure != null) {
      return RuleTexts.failed(rules.get(0), part, locale, failure);
    }
    String name = material().map(m -> m.name(locale)).orElse("");
    return RuleTexts.missing(rules, property, part, locale, name, limits);
  }

  @Override
  public int compareTo(NotAssessed other) {
    return ORDER.compare(this, other);
  }

  /**
   * Compares what is missing, of what, how it ranks, for which rules, and the limits.
   *
   * @param other the other object
   * @return whether both say the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof NotAssessed that
        && Objects.equals(material, that.material)
        && property.equals(that.property)
        && severity == that.severity
        && Objects.equals(failure, that.failure)
        && limits.equals(that.limits)
        && ruleIds().equals(that.ruleIds());
  }

  @Override
  public int hashCode() {
    return Objects.hash(material, property, ruleIds());
  }

  @Override
  public String toString() {
    return "not assessed " + ruleIds() + ": " + what(Locale.ENGLISH);
  }
}
