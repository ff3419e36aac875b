// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.units.MetricUnits;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

class CostRollUpTest {

  private static final UnitPrice WAX = UnitPrice.parse("12.50 EUR/kg");
  private static final UnitPrice RESIN = UnitPrice.parse("31.90 EUR/kg");

  private static CostItem medium() {
    return CostItem.group(
        "medium 1:8",
        List.of(
            CostItem.material("wax", grams(730), WAX),
            CostItem.material("resin", grams(91.25), RESIN)));
  }

  @Test
  void of_batchThatIsPriced_isOneTreeOfNamedLines() {
    Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
    Map<Material, UnitPrice> prices = Map.of(wax, UnitPrice.parse("16.50 EUR/kg"));
    Recipe recipe = Recipe.builder("medium").part(wax, 1).build();
    Batch batch = Batch.ofTotal(recipe, kilograms(1), Losses.NONE);
    CostItem item = BatchPrices.of(prices).withLabels(m -> m.name(Locale.ENGLISH)).cost(batch);
    CostRollUp cost = CostRollUp.of(item);

    assertThat(cost.root().label()).isEqualTo("medium");
    assertThat(cost.root().parts())
        .extracting(CostLine::label)
        .containsExactly(wax.name(Locale.ENGLISH));
  }

  @Test
  void total_isRoundedOnceAndTheLinesAddUp() {
    CostRollUp cost = CostRollUp.of(medium());
    assertThat(cost.exactTotal()).hasToString("12.035875 EUR");
    assertThat(cost.total()).isEqualTo(Money.parse("EUR 12.04"));
    assertThat(cost.leaves())
        .extracting(CostLine::amount)
        .containsExactly(Money.parse("EUR 9.13"), Money.parse("EUR 2.91"));
    assertThat(cost.root().massKilograms()).isEqualTo(0.82125);
  }

  @Test
  void centsGoDownTheTree() {
    CostItem half = medium().times(0.5);
    CostRollUp cost =
        CostRollUp.of(
            "red",
            List.of(
                half,
                CostItem.material("pigment", grams(50), UnitPrice.parse("10 EUR/300 g")),
                CostItem.energy("heat", QuantityKind.ENERGY.ofSi(0.72e6), Money.parse("EUR 0.31")),
                CostItem.labour(
                    "weighing and stirring",
                    QuantityKind.TIME.ofSi(1200),
                    Money.parse("EUR 20.00")),
                CostItem.equipment("hot plate", Money.parse("EUR 89.00"), 1, 200)));
    assertThat(cost.exactTotal().toBigMoney(6, RoundingMode.HALF_UP)).hasToString("EUR 14.858271");
    assertThat(cost.total()).isEqualTo(Money.parse("EUR 14.86"));
    assertThat(Money.total(cost.leaves().stream().map(CostLine::amount).toList()))
        .isEqualTo(cost.total());
    assertThat(cost.total(CostKind.LABOUR)).isEqualTo(Money.parse("EUR 6.67"));
    assertThat(cost.total(CostKind.OTHER)).isEqualTo(Money.parse("EUR 0.00"));
    assertThat(cost.explanation().text(Locale.ENGLISH))
        .contains("total = rounded(exact total; smallest coin)", "= 14.86 EUR");
  }

  @Test
  void quotients_haveTheirBasisPassedIn() {
    CostRollUp cost = CostRollUp.of(medium());
    assertThat(cost.per(kilograms(0.8)).perKilogram()).hasToString("15.05 EUR");
    assertThat(cost.perPiece(8)).hasToString("1.505 EUR");
    assertThat(cost.perSquareDecimetre(QuantityKind.AREA.ofSi(0.04))).hasToString("3.01 EUR");
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> cost.perPiece(0));
    assertThatExceptionOfType(ProblemException.class).isThrownBy(() -> cost.per(grams(0)));
  }

  @Test
  void roundingMode_isTheCallers() {
    CostItem half = CostItem.of(CostKind.OTHER, "half a cent", exact("0.125"));
    assertThat(CostRollUp.of(half).total()).isEqualTo(Money.parse("EUR 0.13"));
    assertThat(CostRollUp.of(half, RoundingMode.HALF_EVEN).total())
        .isEqualTo(Money.parse("EUR 0.12"));
  }

  @Test
  void group_isNoAmountOfItsOwn() {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> CostItem.of(CostKind.GROUP, "paints", exact("1")))
        .satisfies(
            e -> assertThat(e.problems().get(0).code()).isEqualTo(CostProblem.GROUP_HAS_PARTS));
  }

  @Test
  void credits_areTakenOff() {
    CostRollUp cost =
        CostRollUp.of(
            "with scraps",
            List.of(
                CostItem.of(CostKind.OTHER, "medium", exact("10.005")),
                CostItem.of(CostKind.OTHER, "scraps", exact("-2.0025"))));
    assertThat(cost.total()).isEqualTo(Money.parse("EUR 8.00"));
    assertThat(Money.total(cost.leaves().stream().map(CostLine::amount).toList()))
        .isEqualTo(cost.total());
  }

  @Test
  void mixedCurrencies_areRefused() {
    CostItem dollars = CostItem.material("pigment", grams(50), UnitPrice.parse("40 USD/kg"));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> CostRollUp.of("mix", List.of(medium(), dollars)))
        .satisfies(
            e -> assertThat(e.problems().get(0).code()).isEqualTo(CostProblem.CURRENCY_MIXED));
  }

  @Test
  void nothing_hasNoCurrency() {
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> CostRollUp.of("empty", List.of()));
  }

  @Test
  void massesInGrams_leaveNoDustInTheCost() {
    for (int g = 1; g <= 2000; g++) {
      assertThat(CostItem.material("wax", MetricUnits.grams(g), WAX).cost())
          .isEqualTo(
              exact(new BigDecimal("0.0125").multiply(BigDecimal.valueOf(g)).toPlainString()));
    }
  }

  private static ExactMoney exact(String amount) {
    return ExactMoney.of(org.joda.money.BigMoney.of(CurrencyUnit.EUR, new BigDecimal(amount)));
  }
}
