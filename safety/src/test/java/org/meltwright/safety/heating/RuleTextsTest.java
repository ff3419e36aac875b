// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.source.Source;
import org.meltwright.units.ProblemException;

/** What a reader is told of a rule, whatever texts it brings. */
class RuleTextsTest {

  private static final HeatingPlan LONG = Plans.parse("mix beeswax-yellow; hours 9");
  private static final HeatingPlan SHORT_OF_DATA = Plans.parse("mix beeswax-yellow");

  @TempDir private Path folder;

  /** A rule that wants one datum and brings the texts of one key in some languages. */
  private record Wants(String id, String property, String key, String languages)
      implements HeatingRule {

    @Override
    public RuleInfo info() {
      return RuleInfo.of(id, Severity.WARNING, RuleInfo.Topic.MIX, Source.COMMON_PRACTICE);
    }

    @Override
    public RuleOutcome review(HeatingPlan plan) {
      return RuleOutcome.found().andNotAssessed(plan.mix().materials().get(0), property);
    }

    @Override
    public String text(String asked, Locale locale, Map<String, String> values) {
      if (!asked.equals(key) || !languages.contains(locale.getLanguage())) {
        throw new MissingResourceException("no text", "studio", asked);
      }
      return locale.getLanguage() + " own " + values.getOrDefault("material", "");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "hard-ceiling, liquid 97, Heat off, Heizung aus",
    "fume, liquid 115, Heat off, Heizung aus",
    "flash-margin, liquid 170, Heat off, Heizung aus",
    "pot-floor-hot, plate 120 +5; liquid 80, Heat off, Heizung aus",
    "bath-too-hot, bath 150, Heat off, Heizung aus",
    "iron-at-flash-point, iron 240, Iron off, Eisen aus",
    "iron-within-flash-margin, iron 170, Iron off, Eisen aus"
  })
  void summary_ofWhatIsTooHot_beginsWithWhatToDo(
      String rule, String clauses, String english, String german) {
    Finding found = Plans.review("mix beeswax-yellow; " + clauses).finding(rule).orElseThrow();
    assertThat(found.summary(Locale.ENGLISH)).startsWith(english);
    assertThat(found.summary(Locale.GERMAN)).startsWith(german);
  }

  @Test
  void german_knowsOneWordForSolvent() {
    for (String bundle : new String[] {"messages", "rule.messages"}) {
      ResourceBundle texts =
          ResourceBundle.getBundle("org.meltwright.safety.heating." + bundle, Locale.GERMAN);
      assertThat(texts.keySet()).noneMatch(key -> texts.getString(key).contains("Lösungsmittel"));
    }
  }

  @Test
  void text_thatTheRuleDoesNotBring_isAProblem() {
    OwnRule mute = OwnRule.of("mute", plan -> RuleOutcome.found());

    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> mute.text("rule.mute.reason", Locale.GERMAN, Map.of()))
        .satisfies(
            e ->
                assertThat(e.problems().get(0).what(Locale.GERMAN))
                    .isEqualTo("Die Regel „mute“ hat keinen Text „rule.mute.reason“."));
  }

  private static NotAssessed missing(HeatingReview review, String property) {
    return review.notAssessed().stream()
        .filter(n -> n.property().equals(property))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "rule.a-rule.summary, en de, en own, de own",
    "rule.a-rule.summary, en, en own, en own",
    "nothing, en, 'The rule \"a-rule\" (WARNING) has', 'Die Regel „a-rule“ (WARNUNG) hat'",
  })
  void finding_always_has_a_summary(String key, String languages, String english, String german) {
    HeatingRule rule = new Wants("a-rule", "batch-number", key, languages);
    Finding finding =
        HeatingRules.standard().with(rule).review(LONG).finding("a-rule").orElseThrow();
    assertThat(finding.summary(Locale.ENGLISH)).startsWith(english);
    assertThat(finding.summary(Locale.GERMAN)).startsWith(german);
    assertThat(finding.reason(Locale.ENGLISH)).contains("Common practice of the trade");
    assertThat(finding.remedy(Locale.GERMAN)).contains("„a-rule“").doesNotContain("{");
    assertThat(finding).hasToString("WARNING a-rule: " + finding.summary(Locale.ENGLISH));
  }

  /** The app's rule sorts first by its id or last; the library knows the datum or not. */
  @ParameterizedTest
  @CsvSource({
    "a-rule, flash-point, 'Beeswax, yellow burns, or may burn', 'Bienenwachs, gelb brennt'",
    "zz-rule, flash-point, 'Beeswax, yellow burns, or may burn', 'Bienenwachs, gelb brennt'",
    "a-rule, batch-number, 'Of Beeswax, yellow, \"batch-number\"', 'Von Bienenwachs, gelb ist'",
  })
  void missing_datum_is_named(String id, String property, String english, String german) {
    HeatingRule rule = new Wants(id, property, "nothing", "");
    NotAssessed unknown =
        missing(HeatingRules.standard().with(rule).review(SHORT_OF_DATA), property);
    assertThat(unknown.what(Locale.ENGLISH)).startsWith(english);
    assertThat(unknown.what(Locale.GERMAN)).startsWith(german);
    assertThat(unknown.remedy(Locale.GERMAN)).doesNotContain("{").endsWith(".");
  }

  @Test
  void rule_that_knows_the_datum_speaks_for_one_that_does_not() {
    HeatingReview review =
        HeatingRules.standard()
            .with(new Wants("a-rule", "batch-number", "nothing", ""))
            .with(new Wants("b-rule", "batch-number", "missing.batch-number.what", "en de"))
            .review(SHORT_OF_DATA);
    NotAssessed unknown = missing(review, "batch-number");
    assertThat(unknown.ruleIds()).containsExactly("a-rule", "b-rule");
    assertThat(unknown.what(Locale.GERMAN)).isEqualTo("de own Bienenwachs, gelb");
  }

  @Test
  void explanation_speaks_of_all_rules() {
    HeatingRule rule = new Wants("a-rule", "batch-number", "nothing", "");
    String text =
        HeatingRules.standard().with(rule).review(LONG).explanation().text(Locale.ENGLISH);
    assertThat(text).contains("WARNING: The rule \"a-rule\"", "Not assessed: Of Beeswax, yellow");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void rule_of_an_app_on_the_class_path_speaks(boolean withTexts) {
    HeatingRule rule = AppRule.onClassPath(folder, withTexts);
    assertThat(rule.getClass().getModule().isNamed()).isFalse();
    assertSpeaks(rule, withTexts);
  }

  @ParameterizedTest
  @CsvSource({"true, true", "true, false", "false, true", "false, false"})
  void rule_of_an_app_on_the_module_path_speaks(boolean withTexts, boolean isOpen) {
    assumeTrue(HeatingRule.class.getModule().isNamed(), "tests run on the class path");
    HeatingRule rule = AppRule.onModulePath(folder, withTexts, isOpen);
    assertThat(rule.getClass().getModule().getName()).isEqualTo("studio");
    assertSpeaks(rule, withTexts && isOpen);
  }

  private static void assertSpeaks(HeatingRule rule, boolean withTexts) {
    HeatingRules rules = HeatingRules.standard().with(rule);
    Finding finding = rules.review(LONG).finding("long-day").orElseThrow();
    assertThat(finding.summary(Locale.GERMAN))
        .startsWith(withTexts ? "Ein langer Tag." : "Die Regel „long-day“ (HINWEIS)");
    assertThat(finding.summary(Locale.ENGLISH))
        .startsWith(withTexts ? "A long day." : "The rule \"long-day\" (NOTICE)");
    HeatingReview open = rules.review(SHORT_OF_DATA);
    NotAsked hours =
        open.notAsked().stream().filter(n -> n.id().equals("hours-held")).findFirst().orElseThrow();
    assertThat(hours.ruleIds()).contains("long-day");
    assertThat(hours.text(Locale.GERMAN)).isEqualTo("wie lange das Wachs heiß bleibt");
    assertThat(open.explanation().text(Locale.ENGLISH)).contains("how long the wax is kept hot");
  }
}
