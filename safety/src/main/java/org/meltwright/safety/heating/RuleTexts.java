// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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
  static String finding(
      HeatingRule rule,
      String part,
      Locale locale,
      Map<String, Object> values,
      HeatingLimits limits) {
    String key = "rule." + rule.info().id() + "." + part;
    return ofRule(rule, key, locale, Texts.write(values, locale, limits))
        .orElseGet(() -> OWN.text("without-text.rule." + part, locale, self(rule.info(), locale)));
  }

  /** Says that a limit is tightened, to what, and why. */
  static String tightened(HeatingLimits limits, HeatingLimits.Figure figure, Locale locale) {
    String why =
        limits.reasons(figure).stream().map(r -> r.in(locale)).collect(Collectors.joining("; "));
    return OWN.text(
        why.isEmpty() ? "tightened.without-reason" : "tightened",
        locale,
        Map.of(
            "figure", figure.name(locale),
            "value", Texts.of(limits, figure, locale),
            "why", why));
  }

  /** Says that a rule could not be applied. */
  static String failed(HeatingRule rule, String part, Locale locale, String failure) {
    return OWN.text("failed." + part, locale, Map.of("rule", rule.info().id(), "failure", failure));
  }

  /** What was not asked, by the first of the rules that names it, by us, or by its id. */
  static String notAsked(List<HeatingRule> rules, String id, Locale locale) {
    String key = "asked." + id;
    return Stream.concat(rules.stream(), anyOfOurs())
        .flatMap(rule -> ofRule(rule, key, locale, Map.of()).stream())
        .findFirst()
        .orElse(id);
  }

  private static Map<String, String> self(RuleInfo info, Locale locale) {
    return Map.of(
        "rule", info.id(),
        "severity", info.severity().word(locale),
        "source", info.source().citation());
  }

  /** What is said of a datum that rules wanted: by the first of them that knows it, or by us. */
  static String missing(
      List<HeatingRule> rules,
      String property,
      String part,
      Locale locale,
      String material,
      HeatingLimits limits) {
    String key = "missing." + property + "." + part;
    Map<String, String> values = Texts.write(Map.of("material", material), locale, limits);
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
      HeatingRule rule, String key, Locale locale, Map<String, String> values) {
    return inLanguage(rule, key, locale, values)
        .or(() -> inLanguage(rule, key, Locale.ENGLISH, values));
  }

  private static Optional<String> inLanguage(
      HeatingRule rule, String key, Locale locale, Map<String, String> values) {
    return found(() -> rule.text(key, locale, values));
  }

  private static Optional<String> found(Supplier<String> text) {
    try {
      return Optional.of(text.get());
    } catch (RuntimeException e) {
      return Optional.empty(); // a text that fails hides nothing: the next one is said
    }
  }
}
