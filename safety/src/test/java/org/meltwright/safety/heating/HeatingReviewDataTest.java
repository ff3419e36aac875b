// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.meltwright.core.source.Source;

class HeatingReviewDataTest {

  private static final String WARM = "mix beeswax-yellow 8, damar 1; plate 90 +5; liquid 88";

  private static HeatingReviewData english(String plan) {
    return HeatingReviewData.of(Plans.review(plan), Locale.ENGLISH);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mix beeswax-yellow 8, damar 1; plate 90 +5; liquid 88",
        "mix beeswax-yellow 8, damar 1; plate 110; torch; water-near",
        "mix beeswax-yellow 6, own:cold-wax 1; palette 95 +4",
        "mix beeswax-yellow",
        "mix pigment:PY37 1, beeswax-yellow 3; liquid 95; hours 3"
      })
  void of_anyPlan_saysWhatTheReviewSays(String plan) {
    HeatingReview review = Plans.review(plan);
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      HeatingReviewData data = HeatingReviewData.of(review, locale);

      assertThat(data.blocking()).isEqualTo(review.isBlocked());
      assertThat(data.worstSeverity())
          .isEqualTo(review.worstSeverity().map(Severity::id).orElse(null));
      assertThat(data.findings()).hasSameSizeAs(review.findings());
      for (int i = 0; i < data.findings().size(); i++) {
        Finding finding = review.findings().get(i);
        assertThat(data.findings().get(i))
            .isEqualTo(
                new HeatingReviewData.FindingData(
                    finding.ruleId(),
                    finding.severity().name().toLowerCase(Locale.ROOT),
                    finding.severity().word(locale),
                    finding.isBlocking(),
                    finding.summary(locale),
                    finding.reason(locale),
                    finding.remedy(locale),
                    finding.source().citation()));
      }
      assertThat(data.notAssessed())
          .extracting(HeatingReviewData.NotAssessedData::what)
          .isEqualTo(review.notAssessed().stream().map(n -> n.what(locale)).toList());
      assertThat(data.notAssessed()).allMatch(n -> !n.ruleIds().isEmpty());
      assertThat(data.standingAdvice())
          .extracting(HeatingReviewData.AdviceData::text)
          .isEqualTo(review.standingAdvice().stream().map(a -> a.text(locale)).toList());
    }
  }

  @Test
  void of_measuredWax_hasItsMargins() {
    HeatingReviewData data = english(WARM);
    HeatingReviewData.Wax wax = Objects.requireNonNull(data.wax());

    assertThat(wax.celsius()).isEqualTo(88);
    assertThat(wax.measured()).isTrue();
    assertThat(wax.basis()).isEqualTo("liquid-measured");
    assertThat(wax.marginToTargetKelvin()).isCloseTo(2, within(1e-9));
    assertThat(wax.marginToHardCeilingKelvin()).isCloseTo(5.3, within(1e-9));
    assertThat(data.limits())
        .isEqualTo(new HeatingReviewData.LimitsData(90, 93.3, 110, 50, 5, List.of()));
    assertThat(data.readings())
        .containsExactly(new HeatingReviewData.ReadingData("liquid", 88, null, true));
    assertThat(data.potFloor()).isEqualTo(new HeatingReviewData.Floor(95, true));
  }

  @Test
  void of_nothingTellsTheTemperature_itIsAbsentAndNotAssessed() {
    HeatingReviewData data = english("mix beeswax-yellow");

    assertThat(data.wax()).isNull();
    assertThat(data.potFloor()).isNull();
    assertThat(data.worstSeverity()).isNotNull();
    assertThat(data.notAssessed()).isNotEmpty();
  }

  @Test
  void of_overshootNotStated_theFloorIsALowerBound() {
    assertThat(english("mix beeswax-yellow; plate 80").potFloor())
        .isEqualTo(new HeatingReviewData.Floor(80, false));
  }

  @Test
  void of_missingFlashPoint_namesTheMaterial() {
    assertThat(english("mix own:cold-wax; liquid 80").notAssessed())
        .anyMatch(n -> n.property().equals("flash-point") && "cold-wax".equals(n.material()));
  }

  @Test
  void of_ruleSwitchedOff_saysSoWithTheReason() {
    HeatingRules rules = HeatingRules.standard().without("darkening", "a test melt");
    HeatingReview review = rules.review(Plans.parse(WARM));

    assertThat(HeatingReviewData.of(review, Locale.ENGLISH).switchedOff())
        .containsExactly(new HeatingReviewData.SwitchedOff("darkening", "a test melt"));
  }

  @ParameterizedTest
  @EnumSource(StandingAdvice.class)
  void advice_eachOne_hasItsNameAsIdAndASource(StandingAdvice advice) {
    assertThat(advice.id()).isEqualTo(idOf(advice));
    assertThat(advice.source()).isNotNull();
    assertThat(advice.source().equals(Source.COMMON_PRACTICE))
        .isEqualTo(advice.source().citation().startsWith("Common practice"));
  }

  @ParameterizedTest
  @EnumSource(Severity.class)
  void severity_eachOne_hasItsNameAsId(Severity severity) {
    assertThat(severity.id()).isEqualTo(idOf(severity));
  }

  @ParameterizedTest
  @EnumSource(BindingTemperature.Basis.class)
  void basis_eachOne_hasItsNameAsId(BindingTemperature.Basis basis) {
    assertThat(basis.id()).isEqualTo(idOf(basis));
  }

  private static String idOf(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
