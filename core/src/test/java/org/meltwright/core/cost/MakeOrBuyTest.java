// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import org.assertj.core.data.Offset;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.explain.Drivers;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

class MakeOrBuyTest {

  private static final CostRollUp BATCH =
      CostRollUp.of(
          "medium",
          List.of(
              CostItem.material("wax", kilograms(0.8), UnitPrice.parse("12.50 EUR/kg")),
              CostItem.material("resin", kilograms(0.1), UnitPrice.parse("30 EUR/kg")),
              CostItem.labour("work", QuantityKind.TIME.ofSi(1260), Money.parse("EUR 20.00"))));

  private static final MakeOrBuy CHOICE =
      MakeOrBuy.of(
          BATCH,
          kilograms(0.8),
          List.of(
              ReadyMade.of("bar of 1 kg", Money.parse("EUR 75.00"), kilograms(1)),
              ReadyMade.of("tin of 250 g", Money.parse("EUR 15.00"), grams(250))));

  @Test
  void own_standsOnNetProduct() {
    assertThat(BATCH.total()).isEqualTo(Money.parse("EUR 20.00"));
    assertThat(CHOICE.own()).isEqualTo(UnitPrice.parse("25 EUR/kg"));
    assertThat(CHOICE.best().label()).isEqualTo("tin of 250 g");
    assertThat(CHOICE.savingPerKilogram()).hasToString("35 EUR");
    assertThat(CHOICE.isMakingCheaper()).isTrue();
    assertThat(CHOICE.ownShareOfReadyMade()).isEqualTo(25.0 / 60);
  }

  @Test
  void breakEven_isFixedCostOverSaving() {
    MakeOrBuy withPlate = CHOICE.withFixedCostPerYear(Money.parse("EUR 70.00"));
    assertThat(withPlate.breakEvenKilogramsPerYear()).hasValue(2);
    assertThat(withPlate.savingPerYear(kilograms(3))).hasToString("35 EUR");
    assertThat(CHOICE.breakEvenKilogramsPerYear()).hasValue(0);
    assertThat(withPlate.explanation().shortText(Locale.ENGLISH))
        .contains("mass a year from which making pays: 2 kg");
  }

  @Test
  void breakEven_isNeverReachedWhereMakingSavesNothing() {
    MakeOrBuy dear =
        MakeOrBuy.of(
            BATCH,
            kilograms(0.8),
            List.of(ReadyMade.of("gift", Money.parse("EUR 25.00"), kilograms(1))));
    assertThat(dear.isMakingCheaper()).isFalse();
    assertThat(dear.breakEvenKilogramsPerYear()).isEmpty();
    assertThat(dear.explanation().cautions()).isNotEmpty();
  }

  @Test
  void savingDrivers_nameTheInputThatDecidesMost_first() {
    Drivers saving = CHOICE.savingDrivers(Rate.ofPercent("10"));

    assertThat(saving.ranked())
        .extracting(d -> d.input().symbol().toString())
        .startsWith("tin of 250 g", "wax", "work");
    assertThat(saving.central()).isCloseTo(35, Offset.offset(1e-12));
    assertThat(saving.worst().width()).isCloseTo(2 * (6 + 2.5), Offset.offset(1e-12));
    assertThat(saving.ranked().get(0).ifKnown().width()).isCloseTo(5, Offset.offset(1e-12));
    assertThat(saving.ranked().get(1).ifKnown().width()).isCloseTo(14.5, Offset.offset(1e-12));
    assertThat(saving.result().unit()).isEqualTo("EUR/kg");
  }

  @Test
  void turnsAtFactor_isWhereMakingAndBuyingCostTheSame() {
    assertThat(CHOICE.turnsAtFactor("tin of 250 g").orElseThrow())
        .isCloseTo(25.0 / 60, Offset.offset(1e-15));
    assertThat(CHOICE.turnsAtFactor("wax").orElseThrow())
        .isCloseTo((12.5 + 35) / 12.5, Offset.offset(1e-15));
    assertThatExceptionOfType(NoSuchElementException.class)
        .isThrownBy(() -> CHOICE.turnsAtFactor("honey"));
  }

  @Test
  void worthOfAnHour_countsNoWages() {
    assertThat(CHOICE.worthOfAnHour(QuantityKind.TIME.ofSi(1260))).hasToString("100 EUR");
  }

  @Test
  void anotherCurrency_isRefused() {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(
            () ->
                MakeOrBuy.of(
                    BATCH,
                    kilograms(0.8),
                    List.of(new ReadyMade("abroad", UnitPrice.parse("60 USD/kg")))));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> MakeOrBuy.of(BATCH, kilograms(0.8), List.of()));
  }
}
