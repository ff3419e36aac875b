// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.Stock;
import org.meltwright.core.batch.StockItem;
import org.meltwright.core.batch.Withdrawal;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

class BatchPricesTest {

  private static final Material WAX = Material.builder("wax").build();
  private static final Material RESIN = Material.builder("resin").build();
  private static final Material RED = Material.builder("red").build();
  private static final Recipe MEDIUM = Recipe.builder("medium").part(WAX, 8).part(RESIN, 1).build();
  private static final Recipe PAINT = Recipe.builder("paint").part(MEDIUM, 3).part(RED, 1).build();
  private static final BatchPrices PRICES =
      BatchPrices.of(
          Map.of(
              WAX, UnitPrice.parse("10 EUR/kg"),
              RESIN, UnitPrice.parse("20 EUR/kg"),
              RED, UnitPrice.parse("80 EUR/kg")));

  private static Losses loss(double share) {
    return Losses.NONE.withFilm(MassFraction.of(share));
  }

  private static CostItem work(String money) {
    return CostItem.of(CostKind.LABOUR, "work", ExactMoney.of(Money.parse(money)));
  }

  @Test
  void lossesRaiseTheCostOfWhatIsLeft() {
    Batch batch = Batch.ofTotal(MEDIUM, kilograms(0.9), loss(1.0 / 9));
    CostRollUp cost = CostRollUp.of(PRICES.cost(batch));
    assertThat(cost.total()).isEqualTo(Money.parse("EUR 10.00"));
    assertThat(cost.per(batch.net().mass()).perKilogramRounded()).hasToString("EUR 12.50");
  }

  @Test
  void aSubRecipe_isCountedByItsMaterials() {
    Batch paint = Batch.ofTotal(PAINT, kilograms(1.2), Losses.NONE);
    CostItem item = PRICES.cost(paint);
    assertThat(item.parts()).extracting(CostItem::label).containsExactly("medium", "red");
    assertThat(item.parts().get(0).parts()).extracting(CostItem::label).contains("wax", "resin");
    assertThat(CostRollUp.of(item).total()).isEqualTo(Money.parse("EUR 34.00"));
  }

  /** 1 kg of what is left needs 1 ÷ 0.96 kg of resin at 20 EUR: 20.83 EUR. */
  @Test
  void whatIsLeftBehind_isPaidForByWhatIsLeft() {
    Recipe left = Recipe.builder("clean resin").part(RESIN, 1).build();
    Losses insolubles = Losses.NONE.withInsolubles(RESIN, MassFraction.of(0.04));
    Recipe varnish = Recipe.builder("varnish").part(Ingredient.of(left, insolubles), 1).build();
    Batch batch = Batch.ofTotal(varnish, kilograms(1), Losses.NONE);
    assertThat(CostRollUp.of(PRICES.cost(batch)).total()).isEqualTo(Money.parse("EUR 20.83"));
  }

  /**
   * 0.3 kg of medium is what 0.3 ÷ (1 − 0.1 ÷ 9) = 0.303371 kg leaves: 0.269663 kg of wax and
   * 0.033708 kg of resin, 3.3708 EUR; with 0.1 kg of red 11.37 EUR, not the 11.30 EUR of what is in
   * the paint.
   */
  @Test
  void aSubRecipeAsWritten_paysForItsInsolubles() {
    Losses insolubles = Losses.NONE.withInsolubles(RESIN, MassFraction.of(0.1));
    Ingredient strained = Ingredient.of(MEDIUM, insolubles);
    Recipe paint = Recipe.builder("paint").part(strained, 3).part(RED, 1).build();
    Batch batch = Batch.ofTotal(paint, kilograms(0.4), Losses.NONE);
    assertThat(CostRollUp.of(PRICES.cost(batch)).total()).isEqualTo(Money.parse("EUR 11.37"));
    Recipe ofMaterials = Recipe.builder("paint").parts(paint.composition()).build();
    Batch alike = Batch.ofTotal(ofMaterials, kilograms(0.4), Losses.NONE);
    assertThat(CostRollUp.of(PRICES.cost(alike)).total()).isEqualTo(Money.parse("EUR 11.30"));
  }

  /** Losses of 20 % at each of two levels: 1 kg calls for 1 ÷ 0.8 ÷ 0.8 = 1.5625 kg of wax. */
  @Test
  void lossesTwoLevelsDeep_multiply() {
    Recipe clean = Recipe.builder("clean").part(WAX, 1).build();
    Recipe clear = Recipe.builder("clear").part(Ingredient.of(clean, loss(0.2)), 1).build();
    Recipe top = Recipe.builder("top").part(Ingredient.of(clear, loss(0.2)), 1).build();
    CostItem item = PRICES.cost(Batch.ofTotal(top, kilograms(1), Losses.NONE));
    assertThat(item.massKilograms()).isCloseTo(1.5625, within(1e-12));
    assertThat(CostRollUp.of(item).total()).isEqualTo(Money.parse("EUR 15.63"));
  }

  @Test
  void aSubRecipeMadeBefore_bringsItsLossesAndLabour() {
    Batch medium = Batch.ofTotal(MEDIUM, kilograms(0.9), loss(1.0 / 9));
    Batch paint = Batch.ofTotal(PAINT, kilograms(0.4), Losses.NONE);
    CostRollUp cost = CostRollUp.of(PRICES.withMade(medium, List.of(work("EUR 6.00"))).cost(paint));
    assertThat(cost.total()).isEqualTo(Money.parse("EUR 14.00"));
    assertThat(cost.total(CostKind.LABOUR)).isEqualTo(Money.parse("EUR 2.25"));
    assertThat(Money.total(cost.leaves().stream().map(CostLine::amount).toList()))
        .isEqualTo(cost.total());
  }

  /** The medium's hour goes through the paint into the set: a third of a half of it. */
  @Test
  void workTwoLevelsDeep_isBorneInProportion() {
    Batch medium = Batch.ofTotal(MEDIUM, kilograms(0.6), Losses.NONE);
    Batch paint = Batch.ofTotal(PAINT, kilograms(0.4), Losses.NONE);
    Recipe set = Recipe.builder("set").part(PAINT, 1).part(WAX, 1).build();
    BatchPrices prices =
        PRICES
            .withMade(paint, List.of(work("EUR 3.00")))
            .withMade(medium, List.of(work("EUR 6.00")));
    CostRollUp cost = CostRollUp.of(prices.cost(Batch.ofTotal(set, kilograms(0.4), Losses.NONE)));
    assertThat(cost.total(CostKind.LABOUR)).isEqualTo(Money.parse("EUR 3.00"));
  }

  @Test
  void costsBeside_standAfterTheIngredients() {
    Batch medium = Batch.ofTotal(MEDIUM, kilograms(0.9), Losses.NONE);
    CostItem item = PRICES.cost(medium, List.of(work("EUR 6.00")));
    assertThat(item.parts()).extracting(CostItem::label).endsWith("work");
    assertThat(CostRollUp.of(item).total()).isEqualTo(Money.parse("EUR 16.00"));
  }

  @Test
  void labels_areAsAskedFor() {
    BatchPrices named = PRICES.withLabels(m -> "bees' " + m.id());
    CostItem item = named.cost(Batch.ofTotal(MEDIUM, kilograms(0.9), Losses.NONE));
    assertThat(item.parts()).extracting(CostItem::label).contains("bees' wax");
  }

  @Test
  void aRecipeMadeOfItself_isRefused() {
    Recipe again = Recipe.builder("medium").part(MEDIUM, 1).build();
    BatchPrices circle = PRICES.withMade(Batch.of(again, kilograms(1)), List.of());
    Batch paint = Batch.ofTotal(PAINT, kilograms(1), Losses.NONE);
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> circle.cost(paint))
        .satisfies(
            e -> {
              assertThat(e.problems()).hasSize(1);
              assertThat(e.problems().get(0).code()).isEqualTo(CostProblem.RECIPE_IN_ITSELF);
              assertThat(e.problems().get(0).found()).isEqualTo("medium > medium");
            });
  }

  /** Each level calls for the one below twice: 2 to the 40th lines. */
  @Test
  void moreLinesThanAnyoneReads_areRefused() {
    Recipe level = MEDIUM;
    for (int i = 0; i < 40; i++) {
      level = Recipe.builder("level " + i).part(level, 1).part(level, 1).build();
    }
    Batch batch = Batch.ofTotal(level, kilograms(1), Losses.NONE);
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> PRICES.cost(batch))
        .satisfies(
            e -> assertThat(e.problems().get(0).code()).isEqualTo(CostProblem.TOO_MANY_LINES));
  }

  @Test
  void missingPrices_belowARecipeAsWritten_areNamed() {
    BatchPrices few = BatchPrices.of(Map.of(RED, UnitPrice.parse("80 EUR/kg")));
    Ingredient medium = Ingredient.of(MEDIUM, loss(0.1));
    Recipe pale = Recipe.builder("pale").part(medium, 3).part(RED, 1).build();
    Batch paint = Batch.ofTotal(pale, kilograms(1), Losses.NONE);
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> few.cost(paint))
        .satisfies(
            e ->
                assertThat(e.problems())
                    .extracting(p -> p.found())
                    .containsExactlyInAnyOrder("wax", "resin"));
  }

  @Test
  void missingPrices_areAllNamed() {
    Batch paint = Batch.ofTotal(PAINT, kilograms(1), Losses.NONE);
    BatchPrices few = BatchPrices.of(Map.of(RESIN, UnitPrice.parse("20 EUR/kg")));
    assertThatExceptionOfType(ProblemException.class)
        .isThrownBy(() -> few.cost(paint))
        .satisfies(
            e ->
                assertThat(e.problems())
                    .extracting(p -> p.found())
                    .containsExactlyInAnyOrder("wax", "red"));
  }

  @Test
  void cost_priceOfAMaterial_holdsForItsVersionsAndLotsUnlessALotHasItsOwn() {
    Material ownWax = Material.builder("wax").names("Own wax", "").build();
    Recipe mixed =
        Recipe.builder("mixed")
            .part(WAX.withLot("7"), 1)
            .part(WAX.withLot("8"), 1)
            .part(ownWax, 1)
            .build();
    BatchPrices prices =
        BatchPrices.of(
            Map.of(
                WAX.withLot("8"), UnitPrice.parse("20 EUR/kg"), WAX, UnitPrice.parse("10 EUR/kg")));
    CostItem item = prices.cost(Batch.ofTotal(mixed, kilograms(3), Losses.NONE));
    assertThat(item.cost()).isEqualTo(ExactMoney.of(Money.parse("EUR 40")));
  }

  @Test
  void of_twoPricesForOneMaterial_isRefused() {
    Material ownWax = Material.builder("wax").names("Own wax", "").build();
    Map<Material, UnitPrice> two =
        Map.of(WAX, UnitPrice.parse("10 EUR/kg"), ownWax, UnitPrice.parse("20 EUR/kg"));
    assertThatThrownBy(() -> BatchPrices.of(two))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("wax");
  }

  private static StockItem units(String lot, double units) {
    return new StockItem(lot, Ingredient.of(WAX.withLot(lot)), units);
  }

  private static Money worth(BatchPrices prices, List<StockItem> items) {
    return CostRollUp.of(prices.worth(Stock.of(items)).orElseThrow()).total();
  }

  /**
   * 150 units at 21, 225 at 27 and 210 at 33; 300 are used.
   *
   * <p>Principles of Financial Accounting (OpenStax, "vol. 1"), section 10.2: last in, first out,
   * closing stock 6795 and used 9360; weighted average 27.62. First in, first out is of the same
   * numbers, worked out here: 150 × 21 + 150 × 27 = 7200 used.
   */
  @Test
  void worth_lotsAtSeveralPrices_isThatOfWhatIsLeft() {
    BatchPrices prices =
        BatchPrices.of(
            Map.of(
                WAX.withLot("1"), UnitPrice.parse("21 USD/kg"),
                WAX.withLot("2"), UnitPrice.parse("27 USD/kg"),
                WAX.withLot("3"), UnitPrice.parse("33 USD/kg")));
    List<StockItem> bought = List.of(units("1", 150), units("2", 225), units("3", 210));
    Batch used = Batch.of(Recipe.builder("plain").part(WAX, 1).build(), kilograms(300));
    Withdrawal firstIn = Stock.of(bought).take(used);
    assertThat(worth(prices, firstIn.lines())).isEqualTo(Money.parse("USD 7200.00"));
    List<StockItem> lastIn = List.of(bought.get(2), bought.get(1), bought.get(0));
    Withdrawal last = Stock.of(lastIn).take(used);
    assertThat(worth(prices, last.lines())).isEqualTo(Money.parse("USD 9360.00"));
    assertThat(worth(prices, last.left().items())).isEqualTo(Money.parse("USD 6795.00"));
    CostItem all = prices.worth(Stock.of(bought)).orElseThrow();
    assertThat(CostRollUp.of(all).per(kilograms(585)).perKilogramRounded())
        .hasToString("USD 27.62");
  }

  @Test
  void worth_ofWhatWasMade_isWhatMakingItCost() {
    Stock stock = Stock.of(List.of(new StockItem("May's medium", Ingredient.of(MEDIUM), 0.9)));
    CostItem worth = PRICES.worth(stock).orElseThrow();
    assertThat(worth.parts()).extracting(CostItem::label).containsExactly("May's medium");
    assertThat(CostRollUp.of(worth).total()).isEqualTo(Money.parse("EUR 10.00"));
    assertThat(PRICES.worth(Stock.of(List.of(new StockItem("bag", Ingredient.of(WAX), 0)))))
        .isEmpty();
  }

  @Test
  void worth_withoutAPrice_namesTheMaterial() {
    Material blue = Material.builder("blue").build();
    Stock stock = Stock.of(List.of(new StockItem("tube", Ingredient.of(blue), 0.04)));
    assertThatThrownBy(() -> PRICES.worth(stock))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("blue");
  }
}
