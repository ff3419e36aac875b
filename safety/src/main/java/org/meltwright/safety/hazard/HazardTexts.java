// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Messages;

/** The one look-up of this package's own texts. */
final class HazardTexts {

  private static final Messages MESSAGES = Messages.beside(HazardTexts.class);

  private HazardTexts() {}

  static String label(String key, Locale locale) {
    return MESSAGES.text("label." + key, locale);
  }

  static String label(String key, Locale locale, Map<String, String> values) {
    return MESSAGES.text("label." + key, locale, values);
  }

  /** The names of ingredients, each once: members of a group bear the name of the group. */
  static String names(List<HazardIngredient> ingredients, Locale locale) {
    return ingredients.stream().map(i -> i.name(locale)).distinct().collect(joining(", "));
  }

  static Optional<String> stated(String text) {
    return text.isBlank() ? Optional.empty() : Optional.of(text);
  }

  /** A number for the reader, three figures or all of those before the point. */
  static String shown(double value, Locale locale) {
    BigDecimal exact = new BigDecimal(value);
    int digits = Math.max(3, exact.precision() - exact.scale());
    String plain = exact.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
    return isGerman(locale) ? plain.replace('.', ',') : plain;
  }

  static String shownPercent(double value, Locale locale) {
    return shown(value, locale) + " %";
  }

  static Bilingual percent(double low, double high) {
    Bilingual one = Bilingual.of(low);
    return (low == high ? one : Bilingual.range(one, Bilingual.of(high))).plus(" %");
  }

  /** That the rules may have changed, if their day lies after those that were looked for. */
  static Optional<String> age(RuleSet rules, Locale locale) {
    return rules.mayHaveChanged()
        ? Optional.of(
            label("may-have-changed", locale, Map.of("until", rules.lookedUpTo().toString())))
        : Optional.empty();
  }

  static String text(String key, Locale locale) {
    return MESSAGES.text(key, locale);
  }

  static boolean isGerman(Locale locale) {
    return locale.getLanguage().equals(Locale.GERMAN.getLanguage());
  }
}
