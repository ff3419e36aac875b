// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityParser;

class ExactMoneyTest {

  private static final ExactMoney TEN = ExactMoney.of(Money.parse("EUR 10.00"));

  @ParameterizedTest
  @CsvSource({"50p,0.5 GBP", "3 x €4.99,14.97 EUR", "3 × 4.99 EUR,14.97 EUR", "1 x 5 EUR,5 EUR"})
  void parse_hundredthsAndSoManyTimes(String text, String money) {
    assertThat(ExactMoney.parse(text, QuantityParser.localeFree())).hasToString(money);
  }

  @Test
  void aThirdTimesThree_isTheWhole() {
    assertThat(TEN.dividedBy(3)).hasToString("10/3 EUR");
    assertThat(TEN.dividedBy(3).times(3)).isEqualTo(TEN).hasSameHashCodeAs(TEN);
    assertThat(TEN.dividedBy(new BigDecimal("0.3")).toBigMoney(4, RoundingMode.HALF_UP))
        .hasToString("EUR 33.3333");
  }

  @ParameterizedTest
  @CsvSource({
    "0.125, HALF_UP, 0.13",
    "0.125, HALF_EVEN, 0.12",
    "0.1249999, HALF_UP, 0.12",
    "-0.125, HALF_UP, -0.13",
    "0.121, CEILING, 0.13",
    "-0.121, FLOOR, -0.13",
  })
  void toMoney_roundsAsAsked(String amount, RoundingMode mode, String rounded) {
    ExactMoney money =
        ExactMoney.of(org.joda.money.BigMoney.of(CurrencyUnit.EUR, new BigDecimal(amount)));
    assertThat(money.toMoney(mode)).isEqualTo(Money.parse("EUR " + rounded));
  }

  @Test
  void signs_areKnown() {
    assertThat(TEN.isPositive()).isTrue();
    assertThat(TEN.negated().isNegative()).isTrue();
    assertThat(TEN.minus(TEN).isZero()).isTrue();
    assertThat(TEN.compareTo(TEN.times(2))).isNegative();
    assertThat(TEN).isNotEqualTo(ExactMoney.of(Money.parse("USD 10.00")));
  }

  @Test
  void twoCurrencies_doNotMix() {
    ExactMoney dollars = ExactMoney.of(Money.parse("USD 1.00"));
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> TEN.plus(dollars));
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> TEN.compareTo(dollars));
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> TEN.dividedBy(dollars));
  }

  @Test
  void rates_areEqualByValue() {
    assertThat(Rate.ofPercent("19")).isEqualTo(Rate.ofPercent("19.0"));
    assertThat(Rate.ofPercent("19")).hasSameHashCodeAs(Rate.ofPercent("19.0"));
    assertThat(Rate.ofPercent("6.5")).hasToString("6.5 %");
    assertThat(Duty.percent("3213", Rate.ofPercent("6.5"))).hasToString("3213: 6.5 %");
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> Rate.ofPercent("-1"));
  }

  @Test
  void validity_includesBothEnds() {
    LocalDate first = LocalDate.of(2026, 7, 1);
    LocalDate last = LocalDate.of(2026, 7, 31);
    Validity july = new Validity(first, last);
    assertThat(july.contains(first)).isTrue();
    assertThat(july.contains(last)).isTrue();
    assertThat(july.contains(first.minusDays(1))).isFalse();
    assertThat(july.contains(last.plusDays(1))).isFalse();
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> new Validity(last, first));
  }

  @Test
  void exactMoney_isMoneyAtEveryDoor() {
    ExactMoney ten = ExactMoney.of(Money.parse("EUR 10"));
    ExactMoney third = ten.dividedBy(3);

    assertThat(ExactMoney.of(third)).isSameAs(third);
    assertThat(ten.plus(Money.parse("EUR 2.50"))).hasToString("12.5 EUR");
    assertThat(ten.plus(Money.parse("EUR 2.50")).toBigMoney())
        .isEqualTo(BigMoney.parse("EUR 12.5"));
    assertThat(Rate.ofPercent("30").of(third)).isEqualTo(ExactMoney.of(Money.parse("EUR 1")));
    assertThat(BreakEven.of(Money.parse("EUR 100"), ten, third).wholeUnits()).isEqualTo(15);
    assertThat(CostItem.of(CostKind.LABOUR, "stirring", Money.parse("EUR 4")).cost())
        .hasToString("4 EUR");
  }

  @Test
  void toBigMoney_ofDecimalsWithoutEnd_saysWhereToRound() {
    ExactMoney third = ExactMoney.of(Money.parse("EUR 10")).dividedBy(3);

    assertThatThrownBy(third::toBigMoney)
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("10/3 EUR")
        .hasMessageContaining("Say where to round");
    assertThat(third.times(3).toBigMoney()).isEqualTo(BigMoney.parse("EUR 10"));
    assertThat(third.dividedBy(1000).times(3).dividedBy(128).toBigMoney())
        .isEqualTo(BigMoney.parse("EUR 0.000078125"));
  }
}
