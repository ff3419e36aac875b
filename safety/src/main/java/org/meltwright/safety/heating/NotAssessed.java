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
 * What could not be assessed because a datum is missing: which datum, of what, and which rules
 * wanted it. It ranks as a caution: unknown is an answer, and not a good one.
 *
 * <p>The order looks at what is missing and of what, not at the rules, and is inconsistent with
 * equals: collect those of several reviews by equality, then sort.
 *
 * <p>For example, beeswax and damar resin at 80 °C: nobody publishes a flash point of the resin.
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Composition medium = Composition.ofParts(List.of(resin, wax), 1, 8);
 * HeatingPlan plan = HeatingPlan.builder(medium).liquidReading(ofCelsius(80)).build();
 * NotAssessed unknown =
 *     HeatingRules.standard().review(plan).notAssessed().stream()
 *         .filter(n -> n.property().equals("flash-point"))
 *         .findFirst().get();
 * unknown.material(); // damar
 * unknown.ruleIds(); // [flash-margin]
 * unknown.severity(); // CAUTION
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class NotAssessed implements Comparable<NotAssessed> {

  private static final Comparator<NotAssessed> ORDER =
      Comparator.comparing(NotAssessed::property)
          .thenComparing(n -> n.material().map(Material::id).orElse(""));

  private final @Nullable Material material;
  private final String property;
  private final List<HeatingRule> rules;

  NotAssessed(@Nullable Material material, String property, List<HeatingRule> rules) {
    this.material = material;
    this.property = property;
    this.rules = rules;
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
   * @return for example {@code flash-point} or {@code overshoot}
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
   * @return {@link Severity#CAUTION}
   */
  public Severity severity() {
    return Severity.CAUTION;
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
    String name = material().map(m -> m.name(locale)).orElse("");
    return RuleTexts.missing(rules, property, part, locale, name);
  }

  @Override
  public int compareTo(NotAssessed other) {
    return ORDER.compare(this, other);
  }

  /**
   * Compares what is missing, of what, and for which rules.
   *
   * @param other the other object
   * @return whether both say the same
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof NotAssessed that
        && Objects.equals(material, that.material)
        && property.equals(that.property)
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
