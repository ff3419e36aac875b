// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.source.Source;
import org.meltwright.units.ProblemException;
import org.meltwright.units.TemperatureDifference;

/** What an app may change about the rules, and what it may not. */
class RuleSetTest {

  private static final HeatingPlan HOT = Plans.parse("mix beeswax-yellow; plate 80 +5; liquid 97");

  /** A rule of an app, with texts from where the app keeps them. */
  private static final class HouseWaxOnly implements HeatingRule {

    @Override
    public RuleInfo info() {
      return RuleInfo.of(
              "house-wax-only", Severity.NOTICE, RuleInfo.Topic.MIX, Source.COMMON_PRACTICE)
          .asBlocking();
    }

    @Override
    public RuleOutcome review(HeatingPlan plan) {
      return RuleOutcome.foundIf(plan.mix().size() == 1)
          .with("material", plan.mix().materials().get(0))
          .andNotAssessed("batch-number");
    }

    @Override
    public String text(String key, Locale locale, Map<String, String> values) {
      return key + " " + values.getOrDefault("material", "");
    }
  }

  @Test
  void app_adds_a_rule_with_texts_of_its_own() {
    HeatingReview review = HeatingRules.standard().with(new HouseWaxOnly()).review(HOT);
    Finding finding = review.finding("house-wax-only").orElseThrow();
    assertThat(finding.isBlocking()).isTrue();
    assertThat(finding.summary(Locale.GERMAN))
        .isEqualTo("rule.house-wax-only.summary Bienenwachs, gelb");
    assertThat(review.isNotAssessed("house-wax-only")).isTrue();
  }

  @Test
  void id_stands_for_one_rule() {
    HeatingRules rules = HeatingRules.standard().with(new HouseWaxOnly());
    assertThatThrownBy(() -> rules.with(new HouseWaxOnly())).hasMessageContaining("rule-twice");
  }

  @Test
  void rule_is_switched_off_with_a_reason_that_stays_in_sight() {
    HeatingRules rules =
        HeatingRules.standard().without("darkening", "we want the old ivory colour ");
    HeatingReview review = rules.review(HOT);
    assertThat(review.finding("darkening")).isEmpty();
    assertThat(review.finding("hard-ceiling")).isPresent();
    assertThat(review.switchedOff())
        .containsExactly(Map.entry("darkening", "we want the old ivory colour"));
  }

  @Test
  void what_a_switched_off_rule_could_not_assess_stays_in_sight() {
    HeatingReview review =
        HeatingRules.standard()
            .without("air-changes", "measured last week")
            .review(Plans.parse("mix beeswax-yellow; room 40"));
    assertThat(review.isNotAssessed("air-changes")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hard-ceiling",
        "flash-margin",
        "water",
        "solvent",
        "acrylic",
        "plastic-vessel",
        "plastic-lined-can",
        "flame-near-plastic",
        "flame-near-solvent",
        "flame-under-pot",
        "open-coil-or-gas",
        "lead",
        "arsenic",
        "mercury",
        "minors-with-flame",
        "minors-alone",
        "minors-dry-powder",
        "minors-high-heat",
        "children-nothing-hot",
        "minors-toxic-pigment",
        "missing-temperature"
      })
  void fixed_rule_stays_on(String id) {
    assertThatThrownBy(() -> HeatingRules.standard().without(id, "I know what I do"))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("heating.rule-fixed");
  }

  @Test
  void reason_and_a_known_id_are_needed() {
    HeatingRules rules = HeatingRules.standard();
    assertThatThrownBy(() -> rules.without("darkening", " "))
        .hasMessageContaining("reason-missing");
    assertThatThrownBy(() -> rules.without("nonsense", "x")).hasMessageContaining("rule-unknown");
  }

  @Test
  void set_that_keeps_little_keeps_the_fixed_rules() {
    HeatingRules few =
        HeatingRules.standard()
            .without("darkening", "not wanted")
            .keeping(info -> info.topic() == RuleInfo.Topic.VESSEL, "the pot only");
    assertThat(few.switchedOff()).containsEntry("darkening", "not wanted; the pot only");
    assertThat(few.switchedOff()).containsEntry("class-size", "the pot only");
    assertThat(few.switchedOff()).doesNotContainKeys("hard-ceiling", "round-bottom");
    assertThat(few.review(HOT).finding("hard-ceiling")).isPresent();
    assertThat(few.review(HOT).finding("darkening")).isEmpty();
    assertThat(few.review(HOT).switchedOff()).isEqualTo(few.switchedOff());
  }

  @Test
  void set_that_keeps_little_says_why() {
    HeatingRules rules = HeatingRules.standard();
    assertThatThrownBy(() -> rules.keeping(info -> false, " "))
        .hasMessageContaining("reason-missing");
  }

  @Test
  void set_that_keeps_nothing_but_the_fixed_rules_still_blocks_within_the_flash_margin() {
    HeatingPlan hot = Plans.parse("mix beeswax-yellow; liquid 160; full 150");
    HeatingReview review =
        HeatingRules.standard().keeping(info -> false, "we know what we do").review(hot);
    assertThat(review.finding("flash-margin")).isPresent();
    assertThat(review.isBlocked()).isTrue();
    assertThat(review.switchedOff()).containsEntry("vessel-overflows", "we know what we do");
  }

  @Test
  void liquid_reading_of_a_thermometer_elsewhere_is_a_problem() {
    HeatingPlanBuilder builder = HOT.toBuilder();
    builder.thermometer(
        new Thermometer(
            "infrared",
            Thermometer.Place.SURFACE,
            TemperatureDifference.ofKelvin(1),
            TemperatureDifference.ofKelvin(2)));
    assertThatThrownBy(builder::build)
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("heating.reading-place");
  }

  @Test
  void explanation_tells_temperature_margins_findings_and_sources() {
    String text = HeatingRules.standard().review(HOT).explanation().text(Locale.ENGLISH);
    assertThat(text)
        .contains(
            "The wax counts as 97 °C: measured in the liquid.",
            "margin to the target = target − temperature of the wax",
            "    = -7 K",
            "DANGER",
            "source: ");
  }
}
