// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.meltwright.units.Messages;

/**
 * Finds the text of a key: in the reader's language beside each rule in turn, then in English. A
 * rule without a text must not hide what it found, so there is always an answer.
 */
final class RuleTexts {

  private static final Messages OWN = Messages.beside(RuleTexts.class);

  private RuleTexts() {}

  /** What a rule says of its finding; only its own texts speak of its values. */
  static String finding(HeatingRule rule, String part, Locale locale, Map<String, Object> values) {
    String key = "rule." + rule.info().id() + "." + part;
    return ofRule(rule, key, locale, values)
        .orElseGet(() -> OWN.text("without-text.rule." + part, locale, self(rule.info(), locale)));
  }

  private static Map<String, String> self(RuleInfo info, Locale locale) {
    return Map.of(
        "rule", info.id(),
        "severity", info.severity().word(locale),
        "source", info.source().citation());
  }

  /** What is said of a datum that rules wanted: by the first of them that knows it, or by us. */
  static String missing(
      List<HeatingRule> rules, String property, String part, Locale locale, String material) {
    String key = "missing." + property + "." + part;
    Map<String, Object> values = Map.of("material", material);
    return Stream.concat(rules.stream(), anyOfOurs())
        .flatMap(rule -> ofRule(rule, key, locale, values).stream())
        .findFirst()
        .orElseGet(() -> nameless(property, part, locale, material));
  }

  /** All rules of this library have their texts in one place. */
  private static Stream<HeatingRule> anyOfOurs() {
    return HeatingRules.standard().rules().stream().limit(1);
  }

  private static String nameless(String property, String part, Locale locale, String material) {
    String of = material.isEmpty() ? "plan" : "material";
    return OWN.text(
        "without-text.missing." + of + "." + part,
        locale,
        Map.of("property", property, "material", material));
  }

  private static Optional<String> ofRule(
      HeatingRule rule, String key, Locale locale, Map<String, Object> values) {
    return inLanguage(rule, key, locale, values)
        .or(() -> inLanguage(rule, key, Locale.ENGLISH, values));
  }

  private static Optional<String> inLanguage(
      HeatingRule rule, String key, Locale locale, Map<String, Object> values) {
    return found(() -> rule.text(key, locale, Texts.write(values, locale)));
  }

  private static Optional<String> found(Supplier<String> text) {
    try {
      return Optional.of(text.get());
    } catch (MissingResourceException e) {
      return Optional.empty();
    }
  }
}
