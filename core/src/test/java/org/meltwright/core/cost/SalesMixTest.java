// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.units.ProblemException;

class SalesMixTest {

  private static final SalesMix CAKES =
      SalesMix.of(List.of(product("small", 3, 600, 400), product("big", 1, 2000, 1200)));

  @Test
  void breakEven_countsSets() {
    BreakEven sets = CAKES.breakEven(cents(42_000));
    assertThat(sets.contribution()).isEqualTo(ExactMoney.of(cents(1400)));
    assertThat(sets.wholeUnits()).isEqualTo(30);
    assertThat(CAKES.counts(30)).containsExactly(90L, 30L);
  }

  @Test
  void breakEven_bearsAProductThatCostsMoreThanItBringsIn() {
    SalesMix mix = SalesMix.of(List.of(product("bait", 1, 100, 200), product("cake", 1, 900, 500)));
    assertThat(mix.breakEven(cents(3000)).wholeUnits()).isEqualTo(10);
  }

  @Test
  void breakEven_ofASetThatBringsInNothingIsRefused() {
    SalesMix mix = SalesMix.of(List.of(product("bait", 4, 100, 200), product("cake", 1, 900, 500)));
    assertThatThrownBy(() -> mix.breakEven(cents(3000))).isInstanceOf(ProblemException.class);
  }

  @Test
  void of_nothingOrNothingOfItIsRefused() {
    assertThatThrownBy(() -> SalesMix.of(List.of())).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> product("cake", 0, 2, 1)).isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> CAKES.counts(-1)).isInstanceOf(ProblemException.class);
    SalesMix.Product pound =
        SalesMix.Product.of("pie", 1, Money.parse("GBP 2"), Money.parse("GBP 1"));
    assertThatThrownBy(() -> SalesMix.of(List.of(pound, product("cake", 1, 2, 1))))
        .isInstanceOf(ProblemException.class);
  }

  /** The sum over the single products, a second way. */
  @Property
  void what_theBreakEvenSellsCoversTheFixedCosts_andOneSetLessDoesNot(
      @ForAll @IntRange(min = 1, max = 1_000_000) int fixed,
      @ForAll @IntRange(min = 1, max = 9) int small,
      @ForAll @IntRange(min = 1, max = 9) int big,
      @ForAll @IntRange(min = 1, max = 5000) int contribution) {
    SalesMix mix =
        SalesMix.of(
            List.of(
                product("small", small, 700 + contribution, 700), product("big", big, 1900, 1700)));
    long sets = mix.breakEven(cents(fixed)).wholeUnits();
    List<Long> sold = mix.counts(sets);
    assertThat(sold.get(0) * contribution + sold.get(1) * 200).isGreaterThanOrEqualTo(fixed);
    List<Long> less = mix.counts(sets - 1);
    assertThat(less.get(0) * contribution + less.get(1) * 200).isLessThan(fixed);
  }

  private static SalesMix.Product product(String label, int count, long price, long cost) {
    return SalesMix.Product.of(label, count, cents(price), cents(cost));
  }

  private static Money cents(long cents) {
    return Money.ofMinor(CurrencyUnit.EUR, cents);
  }
}
