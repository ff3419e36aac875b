// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.meltwright.units.MetricUnits.kilograms;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CostTreeDataTest {

  private static CostRollUp batch() {
    CostItem wax = CostItem.material("wax", kilograms(0.73), UnitPrice.parse("12.50 EUR/kg"));
    CostItem resin =
        CostItem.material("resin", kilograms(0.09125), UnitPrice.parse("31.90 EUR/kg"));
    CostItem scrap = CostItem.of(CostKind.OTHER, "scrap", ExactMoney.of(Money.parse("EUR -0.50")));
    return CostRollUp.of("red", List.of(CostItem.group("medium", List.of(wax, resin)), scrap));
  }

  @Test
  void of_tree_hasTheLinesOfTheRollUp() {
    CostTreeData tree = CostTreeData.of(batch());
    CostTreeData medium = tree.parts().get(0);

    assertThat(tree.kind()).isEqualTo("group");
    assertThat(tree.amount()).isEqualTo(new MoneyData("11.54", "EUR"));
    assertThat(medium.label()).isEqualTo("medium");
    assertThat(medium.massKilograms()).isEqualTo(0.82125);
    assertThat(medium.parts()).extracting(CostTreeData::kind).containsOnly("material");
    assertThat(medium.parts()).extracting(CostTreeData::massKilograms).contains(0.73, 0.09125);
    assertThat(tree.parts().get(1))
        .isEqualTo(
            new CostTreeData("other", "scrap", null, new MoneyData("-0.50", "EUR"), List.of()));
  }

  @Test
  void of_tree_leavesAddUpToTheTotalOfTheRollUp() {
    BigDecimal sum =
        leaves(CostTreeData.of(batch()))
            .map(leaf -> new BigDecimal(leaf.amount().amount()))
            .reduce(BigDecimal.ZERO, BigDecimal::add);

    assertThat(sum).isEqualTo(batch().total().getAmount());
  }

  private static Stream<CostTreeData> leaves(CostTreeData line) {
    return line.parts().isEmpty()
        ? Stream.of(line)
        : line.parts().stream().flatMap(CostTreeDataTest::leaves);
  }

  @ParameterizedTest
  @CsvSource({"EUR, 1E+3, 1000", "EUR, 0.10, 0.10", "JPY, 1204, 1204", "EUR, -1E-7, -0.0000001"})
  void money_anyScale_isPlainDigits(String currency, String amount, String digits) {
    BigMoney money = BigMoney.of(CurrencyUnit.of(currency), new BigDecimal(amount));

    assertThat(MoneyData.of(money)).isEqualTo(new MoneyData(digits, currency));
  }

  @ParameterizedTest
  @EnumSource(CostKind.class)
  void kind_eachOne_hasItsNameAsId(CostKind kind) {
    assertThat(kind.id()).isEqualToIgnoringCase(kind.name()).isLowerCase();
  }
}
