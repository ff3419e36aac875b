// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule against its good and bad cases, and what holds of all rules. */
class RulesTest {

  private static final List<Locale> READERS = List.of(Locale.ENGLISH, Locale.GERMAN);

  static List<RuleCase> cases() {
    return RuleCase.all();
  }

  static List<HeatingRule> rules() {
    return HeatingRules.standard().rules();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void rule_finds_its_bad_cases_and_not_its_good_ones(RuleCase example) {
    HeatingReview review = Plans.review(example.plan());
    assertThat(review.finding(example.rule()).isPresent())
        .as("%s%n%s", example.plan(), review.findings())
        .isEqualTo(example.isBad());
  }

  @Test
  void each_rule_has_a_good_and_a_bad_case() {
    for (boolean bad : new boolean[] {true, false}) {
      Set<String> covered = new TreeSet<>();
      cases().stream().filter(c -> c.isBad() == bad).forEach(c -> covered.add(c.rule()));
      assertThat(covered).as(bad ? "bad cases" : "good cases").isEqualTo(ids(rules()));
    }
  }

  @Test
  void fixed_are_exactly_these() {
    assertThat(ids(rules().stream().filter(r -> r.info().fixed()).toList()))
        .containsExactlyInAnyOrder(
            "acrylic",
            "aerosol-near",
            "arsenic",
            "children-at-heat",
            "children-hot-tools",
            "children-nothing-hot",
            "minors-toxic-pigment",
            "chromate",
            "flame-near-plastic",
            "flame-near-pot",
            "flame-near-solvent",
            "flame-under-pot",
            "flash-margin",
            "fragrance-too-hot",
            "fume",
            "hard-ceiling",
            "hot-air-at-pot",
            "iron-at-flash-point",
            "lead",
            "mercury",
            "minors-alone",
            "minors-dry-powder",
            "minors-high-heat",
            "minors-hot-air",
            "minors-with-flame",
            "missing-temperature",
            "named-never-heated",
            "open-coil-or-gas",
            "oxidiser-near",
            "plastic-lined-can",
            "plastic-vessel",
            "small-children-near",
            "solvent",
            "solvent-near-heat",
            "solvent-thinned-wax",
            "water",
            "water-added",
            "water-mixable-oil-with-water",
            "wet-tools");
  }

  private static Set<String> ids(List<HeatingRule> rules) {
    Set<String> ids = new TreeSet<>();
    rules.forEach(rule -> ids.add(rule.info().id()));
    return ids;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void texts_are_whole_in_both_languages_and_never_give_an_all_clear(RuleCase example) {
    HeatingReview review = Plans.review(example.plan());
    for (Locale reader : READERS) {
      for (Finding finding : review.findings()) {
        assertWhole(finding.summary(reader));
        assertWhole(finding.reason(reader));
        assertWhole(finding.remedy(reader));
      }
      for (NotAssessed missing : review.notAssessed()) {
        assertWhole(missing.what(reader));
        assertWhole(missing.remedy(reader));
      }
    }
  }

  @Test
  void standing_advice_is_whole_and_names_what_it_rests_on() {
    for (StandingAdvice advice : StandingAdvice.values()) {
      READERS.forEach(reader -> assertWhole(advice.text(reader)));
      assertThat(advice.source().title()).isNotBlank();
    }
    assertThat(StandingAdvice.WAX_FIRE.text(Locale.ENGLISH))
        .contains("Never water", "no foam", "do not move the pot", "close the door", "112");
    assertThat(StandingAdvice.BURN.text(Locale.ENGLISH))
        .contains("20 minutes", "Do not pull wax", "no ice");
  }

  private static void assertWhole(String text) {
    assertThat(text)
        .isNotBlank()
        .doesNotContain("{", "}", "  ", ": .", "null")
        .doesNotContainPattern("(?i)\\bsafe\\b|\\bsicher\\b|unbedenklich|harmless|harmlos")
        .matches("(?s).*[.]");
  }

  @Test
  void severities_are_the_words_of_the_safety_signs() {
    assertThat(READERS.stream().map(Severity.DANGER::word)).containsExactly("DANGER", "GEFAHR");
    assertThat(READERS.stream().map(Severity.WARNING::word)).containsExactly("WARNING", "WARNUNG");
    assertThat(READERS.stream().map(Severity.CAUTION::word)).containsExactly("CAUTION", "VORSICHT");
    assertThat(READERS.stream().map(Severity.NOTICE::word)).containsExactly("NOTICE", "HINWEIS");
  }
}
