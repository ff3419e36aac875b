// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/** The law's statement texts in English and German, and the forms that close their gaps. */
final class Statements {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  private static final Map<String, List<Text>> PUBLISHED = read("statements.txt");
  private static final Map<String, List<Text>> FORMS = read("statement-forms.txt");

  /** A text in both languages, with the days that it holds for. */
  private record Text(String english, String german, Days days) {

    static final Text NONE = new Text("", "", new Days(Optional.empty(), Optional.empty()));

    String in(Locale locale) {
      return HazardTexts.isGerman(locale) ? german : english;
    }
  }

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

  /** The text as last published, with the law's own gaps. */
  static String published(String code, Locale locale) {
    return on(PUBLISHED, code, LocalDate.MAX).orElse(Text.NONE).in(locale);
  }

  /** The text of a day; after the end of the last one, that one: a label never lacks its words. */
  private static Optional<Text> on(Map<String, List<Text>> texts, String code, LocalDate day) {
    List<Text> all = texts.getOrDefault(code, List.of());
    Optional<Text> last = all.stream().reduce((a, b) -> b);
    return all.stream().filter(t -> t.days().holdOn(day)).findFirst().or(() -> last);
  }

  /** Whether the law still has a statement: before its first day here it had it too. */
  static boolean holdsOn(String code, LocalDate day) {
    return PUBLISHED.getOrDefault(code, List.of()).stream()
        .anyMatch(t -> t.days().until().filter(day::isAfter).isEmpty());
  }

  static boolean hasForm(String code) {
    return FORMS.containsKey(code);
  }

  /** The text with its gaps closed; a place without a value is left out. */
  static String finished(String code, Locale locale, LocalDate day, Map<String, String> values) {
    String form =
        on(FORMS, code, day).or(() -> on(PUBLISHED, code, day)).orElse(Text.NONE).in(locale);
    String text =
        PLACE
            .matcher(form)
            .replaceAll(m -> Matcher.quoteReplacement(values.getOrDefault(m.group(1), "")));
    return text.endsWith(".") || text.isEmpty() ? text : text + ".";
  }

  private static Map<String, List<Text>> read(String file) {
    return TextTable.rows(file).stream()
        .collect(
            Collectors.groupingBy(
                row -> row.get(0),
                Collectors.mapping(
                    row -> new Text(row.get(1), row.get(2), Days.of(row)), Collectors.toList())));
  }

  /** Each code with its days: texts, then forms, for a check of the tables. */
  static List<Map<String, List<Days>>> days() {
    return Stream.of(PUBLISHED, FORMS).map(Statements::days).toList();
  }

  private static Map<String, List<Days>> days(Map<String, List<Text>> texts) {
    Map<String, List<Days>> days = new HashMap<>();
    texts.forEach((code, all) -> days.put(code, all.stream().map(Text::days).toList()));
    return days;
  }
}
