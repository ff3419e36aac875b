// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** The law's statement texts in English and German, and the forms that close their gaps. */
final class Statements {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  private static final Map<String, List<String>> PUBLISHED = read("statements.txt");
  private static final Map<String, List<String>> FORMS = read("statement-forms.txt");

  private Statements() {}

  static boolean has(String code) {
    return PUBLISHED.containsKey(code);
  }

  /** A code of the supplements, or the reason why it is none. */
  static String requireSupplement(String code) {
    if (code.startsWith("EUH") && has(code)) {
      return code;
    }
    throw new ProblemException(Problem.of(HazardProblem.SUPPLEMENT, code));
  }

  static Set<String> codes() {
    return PUBLISHED.keySet();
  }

  /** Whether a code is a statement itself or one of its forms for an effect, as H360Df of H360. */
  static boolean isForm(String code, String statement) {
    if (code.equals(statement) || !code.startsWith(statement)) {
      return code.equals(statement);
    }
    return has(code) && code.chars().skip(statement.length()).allMatch(Character::isLetter);
  }

  /** The text as published, with the law's own gaps. */
  static String published(String code, Locale locale) {
    return in(PUBLISHED.getOrDefault(code, List.of("", "")), locale);
  }

  static boolean hasForm(String code) {
    return FORMS.containsKey(code);
  }

  /** The text with its gaps closed; a place without a value is left out. */
  static String finished(String code, Locale locale, Map<String, String> values) {
    String form =
        in(FORMS.getOrDefault(code, PUBLISHED.getOrDefault(code, List.of("", ""))), locale);
    String text =
        PLACE
            .matcher(form)
            .replaceAll(m -> Matcher.quoteReplacement(values.getOrDefault(m.group(1), "")));
    return text.endsWith(".") || text.isEmpty() ? text : text + ".";
  }

  private static String in(List<String> pair, Locale locale) {
    return pair.get(HazardTexts.isGerman(locale) ? 1 : 0);
  }

  private static Map<String, List<String>> read(String file) {
    Map<String, List<String>> texts = new HashMap<>();
    TextTable.rows(file).forEach(row -> texts.put(row.get(0), row.subList(1, 3)));
    return Map.copyOf(texts);
  }
}
