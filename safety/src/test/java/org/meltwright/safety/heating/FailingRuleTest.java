// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One rule that fails does not silence the others, nor is it silent itself. */
class FailingRuleTest {

  private static final HeatingPlan HOT = Plans.parse("mix beeswax-yellow; liquid 97");

  static Stream<Named<Function<HeatingPlan, RuleOutcome>>> failures() {
    return Stream.of(
        Named.of("throws", plan -> fail(new IllegalStateException("boom"))),
        Named.of("asserts", plan -> fail(new AssertionError("boom"))),
        Named.of("throws what it has not declared", plan -> sneak(new IOException("boom"))),
        Named.of("cannot tell its failure", plan -> fail(new Untold())),
        Named.of("has a null value", plan -> RuleOutcome.found().with("what", absent())),
        Named.of("is null", plan -> null),
        Named.of("overflows", FailingRuleTest::overflow));
  }

  /** A failure that fails once more when it is told. */
  private static final class Untold extends RuntimeException {

    private static final long serialVersionUID = 1L;

    @Override
    public String getMessage() {
      throw new IllegalStateException("again");
    }
  }

  @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // as Kotlin throws
  private static <E extends Exception> RuleOutcome sneak(Exception failure) throws E {
    throw (E) failure;
  }

  @SuppressWarnings("NullAway") // what a careless rule hands over
  private static Object absent() {
    return null;
  }

  private static RuleOutcome fail(RuntimeException failure) {
    throw failure;
  }

  private static RuleOutcome fail(Error failure) {
    throw failure;
  }

  @SuppressWarnings("InfiniteRecursion") // that is the point
  private static RuleOutcome overflow(HeatingPlan plan) {
    return overflow(plan);
  }

  @ParameterizedTest
  @MethodSource("failures")
  void ruleThatFails_isNamedAndNotAssessed(Function<HeatingPlan, RuleOutcome> failure) {
    HeatingReview review = HeatingRules.standard().with(OwnRule.of("own", failure)).review(HOT);
    assertThat(review.isNotAssessed("own")).isTrue();
    NotAssessed failed = review.notAssessed().get(0);
    assertThat(failed.ruleIds()).containsExactly("own");
    assertThat(failed.severity()).isEqualTo(Severity.WARNING);
    assertThat(failed.isBlocking()).isFalse();
    assertThat(failed.what(Locale.ENGLISH)).startsWith("The rule \"own\" failed");
    assertThat(failed.what(Locale.GERMAN)).startsWith("Die Regel „own“ ist gescheitert");
    assertThat(review.findings()).isEqualTo(HeatingRules.standard().review(HOT).findings());
  }

  @ParameterizedTest
  @MethodSource("failures")
  void ruleThatFailsAndBlocks_blocks(Function<HeatingPlan, RuleOutcome> failure) {
    HeatingPlan calm = Plans.parse("mix beeswax-yellow; plate 80 +5; liquid 82");
    HeatingReview review =
        HeatingRules.standard().with(OwnRule.of("own", failure).blocking()).review(calm);
    assertThat(HeatingRules.standard().review(calm).isBlocked()).isFalse();
    assertThat(review.isBlocked()).isTrue();
    assertThat(HeatingReviewData.of(review, Locale.ENGLISH).notAssessed().get(0).blocking())
        .isTrue();
  }

  @ParameterizedTest
  @MethodSource("failures")
  void ruleThatFailsAndIsSwitchedOff_blocksNothing(Function<HeatingPlan, RuleOutcome> failure) {
    HeatingRules rules =
        HeatingRules.standard()
            .with(OwnRule.of("own", failure).blocking())
            .without("own", "broken");
    HeatingReview review = rules.review(Plans.parse("mix beeswax-yellow; plate 80 +5; liquid 82"));
    assertThat(review.isBlocked()).isFalse();
    assertThat(review.switchedOff()).containsEntry("own", "broken");
  }

  @ParameterizedTest
  @MethodSource("failures")
  void worstSeverity_countsAFailedRuleAsAWarning(Function<HeatingPlan, RuleOutcome> failure) {
    HeatingPlan calm = Plans.parse("mix beeswax-yellow; plate 80 +5; liquid 82");
    assertThat(
            HeatingRules.standard().with(OwnRule.of("own", failure)).review(calm).worstSeverity())
        .contains(Severity.WARNING);
  }
}
