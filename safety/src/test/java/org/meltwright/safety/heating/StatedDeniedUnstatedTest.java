// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Stated is found, denied is nothing, and what nobody mentioned is not asked. */
class StatedDeniedUnstatedTest {

  private static final String HOT =
      "mix beeswax-yellow 9, oil-paint-water-mixable 1; bath; torch; lamp; people 1 5 1; ";

  private static List<String> notAsked(String plan) {
    return Plans.review(plan).notAsked().stream().map(NotAsked::id).toList();
  }

  @ParameterizedTest
  @EnumSource(Circumstance.class)
  void circumstance_isFoundDeniedOrNotAsked(Circumstance circumstance) {
    HeatingPlan open = Plans.parse(HOT);
    HeatingReview stated = review(open.toBuilder().circumstance(circumstance));
    HeatingReview denied = review(open.toBuilder().without(circumstance));
    HeatingReview unstated = review(open.toBuilder());

    assertThat(stated.findings()).hasSizeGreaterThan(denied.findings().size());
    assertThat(denied.findings()).isEqualTo(unstated.findings());
    assertThat(denied.notAsked()).extracting(NotAsked::id).doesNotContain(circumstance.id());
    assertThat(unstated.notAsked()).extracting(NotAsked::id).contains(circumstance.id());
  }

  private static HeatingReview review(HeatingPlanBuilder plan) {
    return HeatingRules.standard().review(plan.build());
  }

  @Test
  void whatNobodyMentioned_isNotAsked() {
    assertThat(notAsked("mix beeswax-yellow"))
        .contains("people", "room", "vessel", "fill-level", "heat-source");
    assertThat(notAsked("mix beeswax-yellow; liquid 88")).contains("hours-held", "thermometer");
  }

  @Test
  void whatWasMentionedAndCannotBeJudged_isNotAssessed() {
    assertThat(Plans.review("mix beeswax-yellow; room 40").isNotAssessed("air-changes")).isTrue();
    assertThat(Plans.review("mix beeswax-yellow; plate 85").isNotAssessed("pot-floor")).isTrue();
    assertThat(
            Plans.review("mix beeswax-yellow; people 1 0 3").isNotAssessed("children-nothing-hot"))
        .isTrue();
  }

  @Test
  void withoutOthers_deniesAllThatWasNotStated() {
    HeatingPlan plan = Plans.parse("mix beeswax-yellow; water-near; no-others");
    assertThat(plan.has(Circumstance.WATER_NEAR)).isTrue();
    assertThat(plan.denies(Circumstance.WATER_NEAR)).isFalse();
    assertThat(plan.denies(Circumstance.UNATTENDED)).isTrue();
    assertThat(plan.toBuilder().build()).isEqualTo(plan);
  }

  @Test
  void line_saysEachThingOnce_forAllPots() {
    List<NotAsked> all =
        List.of(
                Plans.review("mix beeswax-yellow; no-others").notAsked().stream().toList(),
                Plans.review("mix beeswax-yellow; no-others; room 40").notAsked())
            .stream()
            .flatMap(List::stream)
            .toList();
    assertThat(NotAsked.line(all, Locale.ENGLISH))
        .isEqualTo(
            "Not asked: how full the vessel is, hot; what heats the pot; how long the wax is kept"
                + " hot; who works; the room and its air; the vessel.");
    assertThat(NotAsked.line(all, Locale.GERMAN)).startsWith("Nicht gefragt: ");
    assertThat(NotAsked.line(List.of(), Locale.ENGLISH)).isEmpty();
  }

  @Test
  void notAsked_hasNoSeverity() {
    HeatingReview review =
        Plans.review("mix beeswax-yellow; plate 80 +5; liquid 82; thermometer 0.5");
    assertThat(review.notAsked()).isNotEmpty();
    assertThat(review.worstSeverity()).isEmpty();
  }
}
