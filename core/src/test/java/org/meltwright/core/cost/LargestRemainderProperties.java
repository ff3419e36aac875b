// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Offset;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class LargestRemainderProperties {

  @Property
  void sharesAddUpToTheTotalAndStayWithinACentOfTheirExactShare(
      @ForAll @LongRange(min = -1_000_000, max = 1_000_000) long cents,
      @ForAll @Size(min = 1, max = 12)
          List<@BigRange(min = "0.001", max = "100000") @Scale(3) BigDecimal> weights) {
    Money total = Money.ofMinor(CurrencyUnit.EUR, cents);
    List<Money> shares = LargestRemainder.allocate(total, weights);
    assertThat(Money.total(shares)).isEqualTo(total);
    double sum = weights.stream().mapToDouble(BigDecimal::doubleValue).sum();
    for (int i = 0; i < shares.size(); i++) {
      double exact = cents * weights.get(i).doubleValue() / sum;
      assertThat((double) shares.get(i).getAmountMinorLong())
          .as("%s of %s over %s", i, total, weights)
          .isCloseTo(exact, Offset.offset(1 + 1e-6));
    }
  }

  @Property
  void noShareFallsBelowTheLeastShare(
      @ForAll @LongRange(max = 1000) long more,
      @ForAll @IntRange(max = 5) int atLeast,
      @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 100_000) Integer> weights) {
    long total = more + (long) atLeast * weights.size();
    List<Long> shares =
        LargestRemainder.shares(total, weights.stream().map(BigDecimal::valueOf).toList(), atLeast);
    assertThat(shares.stream().mapToLong(Long::longValue).sum()).isEqualTo(total);
    assertThat(shares).allMatch(s -> s >= atLeast);
  }
}
