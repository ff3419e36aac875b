// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.units.ProblemException;

class LargestRemainderTest {

  private static List<BigDecimal> weights(String... values) {
    return Stream.of(values).map(BigDecimal::new).toList();
  }

  private static List<Money> money(String... values) {
    return Stream.of(values).map(v -> Money.parse("EUR " + v)).toList();
  }

  @Test
  void allocate_givesTheFirstOfEqualsTheCent() {
    assertThat(LargestRemainder.allocate(Money.parse("EUR 10.00"), weights("1", "1", "1")))
        .isEqualTo(money("3.34", "3.33", "3.33"));
  }

  @Test
  void allocate_sharesARefund() {
    assertThat(LargestRemainder.allocate(Money.parse("EUR -10.00"), weights("1", "1", "1")))
        .isEqualTo(money("-3.33", "-3.33", "-3.34"));
  }

  @Test
  void allocate_leavesLinesOfNoWeightWithoutCents() {
    assertThat(LargestRemainder.allocate(Money.parse("EUR 0.05"), weights("0", "1", "1", "0")))
        .isEqualTo(money("0.00", "0.03", "0.02", "0.00"));
  }

  @Test
  void allocate_followsTheCurrencysSmallestCoin() {
    assertThat(LargestRemainder.allocate(Money.parse("JPY 100"), weights("1", "1", "1")))
        .containsExactly(Money.parse("JPY 34"), Money.parse("JPY 33"), Money.parse("JPY 33"));
  }

  @Test
  void allocate_refusesSharesThatAreNone() {
    Money ten = Money.parse("EUR 10.00");
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> LargestRemainder.allocate(ten, weights("0", "0")));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> LargestRemainder.allocate(ten, weights("1", "-1")));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> LargestRemainder.allocate(ten, List.of()));
  }

  /** Eight lines take 40 of the 100; 60 over 90 and 10 are 54 and 6. */
  @Test
  void shares_takesTheLeastSharesFromTheOthersByWeight() {
    assertThat(
            LargestRemainder.shares(
                100, weights("90", "10", "0", "0", "0", "0", "0", "0", "0", "0"), 5))
        .containsExactly(54L, 6L, 5L, 5L, 5L, 5L, 5L, 5L, 5L, 5L);
  }

  /** 12 of 50 is enough until the lines of no weight have theirs: 30 leaves it 7.2. */
  @Test
  void shares_liftsALineThatFallsShortLater() {
    assertThat(LargestRemainder.shares(40, weights("29", "11", "0", "0"), 10))
        .containsExactly(10L, 10L, 10L, 10L);
    assertThat(LargestRemainder.shares(50, weights("38", "12", "0", "0"), 10))
        .containsExactly(20L, 10L, 10L, 10L);
  }

  @Test
  void shares_keepsTheLeastShare() {
    assertThat(LargestRemainder.shares(10, weights("1000", "1", "1"), 2))
        .containsExactly(6L, 2L, 2L);
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> LargestRemainder.shares(5, weights("1", "1", "1"), 2));
  }
}
