// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class MakeOrBuyDataTest {

  private static MakeOrBuy choice(String... offers) {
    CostItem wax = CostItem.material("wax", kilograms(1), UnitPrice.parse("20.00 EUR/kg"));
    List<ReadyMade> readyMade =
        List.of(offers).stream().map(o -> new ReadyMade(o, UnitPrice.parse(o))).toList();
    return MakeOrBuy.of(CostRollUp.of("batch", List.of(wax)), kilograms(0.8), readyMade)
        .withFixedCostPerYear(Money.parse("EUR 70.00"));
  }

  @Test
  void of_cheaperToMake_hasPricesSavingAndBreakEven() {
    MakeOrBuyData data = MakeOrBuyData.of(choice("65.00 EUR/kg", "20.00 EUR/300 g", "60 EUR/kg"));

    assertThat(data.ownPerKilogram()).isEqualTo(new MoneyData("25.00", "EUR"));
    assertThat(data.offers())
        .extracting(o -> o.landedPerKilogram().amount())
        .containsExactly("60.00", "65.00", "66.67");
    assertThat(data.offers().get(0).label()).isEqualTo("60 EUR/kg");
    assertThat(data.savingPerKilogram()).isEqualTo(new MoneyData("35.00", "EUR"));
    assertThat(data.makingCheaper()).isTrue();
    assertThat(data.breakEvenKilogramsPerYear()).isEqualTo(2.0);
  }

  @Test
  void of_cheaperToBuy_hasNoBreakEven() {
    MakeOrBuyData data = MakeOrBuyData.of(choice("24 EUR/kg"));

    assertThat(data.makingCheaper()).isFalse();
    assertThat(data.savingPerKilogram()).isEqualTo(new MoneyData("-1.00", "EUR"));
    assertThat(data.breakEvenKilogramsPerYear()).isNull();
  }
}
