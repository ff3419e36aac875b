// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.meltwright.core.laws.SampleMaterials.BLUE;
import static org.meltwright.core.laws.SampleMaterials.OIL;
import static org.meltwright.core.laws.SampleMaterials.RESIN;
import static org.meltwright.core.laws.SampleMaterials.WAX;
import static org.meltwright.core.laws.SampleMaterials.WHITE;
import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

class StockTest {

  private static final Material LOT_7 = WAX.withLot("7");
  private static final Material LOT_8 = WAX.withLot("8");
  private static final Recipe MEDIUM = Recipe.builder("medium").part(RESIN, 1).part(WAX, 8).build();
  private static final Recipe PAINT =
      Recipe.builder("paint").part(MEDIUM, 9).part(WHITE, 1).build();

  private static StockItem item(Material material, double grams) {
    return StockItem.of(material.toString(), Ingredient.of(material), grams(grams));
  }

  private static StockItem item(Recipe recipe, double grams) {
    return StockItem.of(recipe.name(), Ingredient.of(recipe), grams(grams));
  }

  private static double left(Withdrawal taken, Material material) {
    return taken.left().massKilograms(Ingredient.of(material)) * 1000;
  }

  @Test
  void take_twoLots_emptiesTheFirstBeforeTheSecond() {
    Stock stock = Stock.of(List.of(item(LOT_7, 300), item(LOT_8, 1000), item(RESIN, 100)));
    Withdrawal taken = stock.take(Batch.of(MEDIUM, grams(540)));
    assertThat(taken.lines())
        .extracting(StockItem::label)
        .containsExactly("resin", "wax (lot 7)", "wax (lot 8)");
    assertThat(left(taken, LOT_7)).isZero();
    assertThat(left(taken, LOT_8)).isCloseTo(820, within(1e-9));
    assertThat(taken.isComplete()).isTrue();
    assertThat(taken.left().items()).hasSize(3);
    assertThat(taken.left().withoutEmpty().items()).hasSize(2);
  }

  @Test
  void startingWith_names_whatGoesFirst() {
    Stock stock = Stock.of(List.of(item(LOT_7, 300), item(LOT_8, 1000), item(RESIN, 100)));
    Withdrawal taken = stock.startingWith("wax (lot 8)").take(Batch.of(MEDIUM, grams(540)));
    assertThat(left(taken, LOT_7)).isCloseTo(300, within(1e-9));
    assertThatThrownBy(() -> stock.startingWith("wax (lot 9)"))
        .isInstanceOfSatisfying(
            ProblemException.class,
            e ->
                assertThat(e.problems().get(0).allowed(Locale.ENGLISH))
                    .isEqualTo("one of: wax (lot 7), wax (lot 8), resin"));
  }

  @Test
  void take_aLotThatTheRecipeNames_isServedBeforeAnyOther() {
    Recipe both = Recipe.builder("both").part(WAX, 1).part(LOT_7, 1).build();
    Stock stock = Stock.of(List.of(item(LOT_7, 300), item(LOT_8, 300)));
    Withdrawal taken = stock.take(Batch.of(both, grams(600)));
    assertThat(taken.isComplete()).isTrue();
    assertThat(taken.left().withoutEmpty()).isEqualTo(Stock.EMPTY);
  }

  @Test
  void take_lastMonthsMedium_makesWhatIsShortOfIt() {
    Stock stock = Stock.of(List.of(item(MEDIUM, 90), item(WAX, 500), item(WHITE, 50)));
    Withdrawal taken = stock.take(Batch.of(PAINT, grams(200)));
    // arithmetic: 180 g of medium, 90 g there, so 10 g of resin and 80 g of wax for the rest
    assertThat(taken.lines())
        .extracting(StockItem::label)
        .containsExactly("medium", "white", "wax");
    assertThat(left(taken, WAX)).isCloseTo(420, within(1e-9));
    assertThat(taken.missing()).hasSize(1);
    assertThat(taken.missing().get(0).ingredient()).isEqualTo(Ingredient.of(RESIN));
    assertThat(taken.missing().get(0).massKilograms()).isCloseTo(0.010, within(1e-12));
  }

  @Test
  void take_mediumThatIsStrained_countsWhatStaysBehind() {
    Losses dirt = Losses.NONE.withInsolubles(RESIN, MassFraction.ofPercent(10));
    Recipe paint =
        Recipe.builder("paint").part(Ingredient.of(MEDIUM, dirt), 1).part(WHITE, 1).build();
    Stock stock = Stock.of(List.of(item(RESIN, 100), item(WAX, 500), item(WHITE, 100)));
    Withdrawal taken = stock.take(Batch.of(paint, grams(178)));
    // arithmetic: 89 g net of 90 g in the pot
    assertThat(left(taken, RESIN)).isCloseTo(90, within(1e-9));
    assertThat(left(taken, WAX)).isCloseTo(420, within(1e-9));
  }

  @Test
  void item_byVolumeAndByPiece_isWeighed() {
    assertThat(
            StockItem.of("oil", Ingredient.of(OIL), millilitres(250), DensityBasis.MELT)
                .massKilograms())
        .isCloseTo(0.2325, within(1e-12));
    assertThat(StockItem.ofPieces("cakes", Ingredient.of(MEDIUM), 14, grams(22)).massKilograms())
        .isCloseTo(0.308, within(1e-12));
    assertThatThrownBy(() -> StockItem.of(" ", Ingredient.of(WAX), grams(1)))
        .isInstanceOf(ProblemException.class);
    assertThatThrownBy(() -> StockItem.of("bag", Ingredient.of(WAX), grams(-1)))
        .isInstanceOf(ProblemException.class)
        .hasMessageContaining("-1 g");
  }

  /** Through any sequence of batches: what is left and what was taken are what was there. */
  @Property(tries = 300)
  void take_againAndAgain_losesNothing(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.1, max = 400) Double> batches,
      @ForAll @DoubleRange(min = 0, max = 500) double medium,
      @ForAll @DoubleRange(min = 0, max = 500) double wax) {
    Stock stock =
        Stock.of(
            List.of(
                item(LOT_7, wax),
                item(MEDIUM, medium),
                item(LOT_8, 300),
                item(RESIN, 80),
                item(WHITE, 90)));
    double before = total(stock.items());
    double taken = 0;
    for (double grams : batches) {
      Withdrawal withdrawal = stock.take(Batch.of(PAINT, grams(grams)));
      taken += total(withdrawal.lines());
      stock = withdrawal.left();
      assertThat(total(stock.items()) + taken).isCloseTo(before, within(1e-12));
      assertThat(stock.items()).allMatch(i -> i.massKilograms() >= 0);
    }
  }

  private static double total(List<StockItem> items) {
    return items.stream().mapToDouble(StockItem::massKilograms).sum();
  }

  /** What is taken and what is missing together are what the batch needs. */
  @Property(tries = 300)
  void take_whatIsThereAndWhatIsNot_makeUpTheBatch(
      @ForAll @DoubleRange(min = 1, max = 2000) double grams,
      @ForAll @DoubleRange(min = 0, max = 1000) double wax,
      @ForAll @DoubleRange(min = 0, max = 300) double resin) {
    Stock stock = Stock.of(List.of(item(LOT_7, wax), item(RESIN, resin)));
    Withdrawal taken = stock.take(Batch.of(MEDIUM, grams(grams)));
    double missing = taken.missing().stream().mapToDouble(BatchLine::massKilograms).sum();
    assertThat(total(taken.lines()) + missing).isCloseTo(grams / 1000, within(1e-9));
  }

  @Test
  void largest_shelf_saysWhatRunsOutFirst() {
    Stock stock = Stock.of(List.of(item(RESIN, 100), item(WAX, 730), item(BLUE, 1000)));
    LargestBatch most = LargestBatch.of(MEDIUM, stock);
    assertThat(most.massKilograms()).isCloseTo(0.82125, within(1e-12));
    assertThat(most.runsOut()).containsExactly(Ingredient.of(WAX));
    assertThat(left(most.withdrawal(), RESIN)).isCloseTo(8.75, within(1e-9));
    assertThat(left(most.withdrawal(), WAX)).isCloseTo(0, within(1e-9));
    assertThat(left(most.withdrawal(), BLUE)).isCloseTo(1000, within(1e-9));
  }

  @Test
  void largest_missingIngredient_isNothing() {
    LargestBatch most = LargestBatch.of(MEDIUM, Stock.of(List.of(item(WAX, 1000))));
    assertThat(most.massKilograms()).isZero();
    assertThat(most.batch()).isEmpty();
    assertThat(most.runsOut()).containsExactly(Ingredient.of(RESIN));
    assertThat(LargestBatch.of(PAINT, Stock.EMPTY).massKilograms()).isZero();
  }

  @Test
  void largest_lots_addUp_butALotServesAlone() {
    Recipe both = Recipe.builder("both").part(WAX, 1).part(LOT_7, 1).build();
    Stock stock = Stock.of(List.of(item(LOT_7, 400), item(LOT_8, 100)));
    assertThat(LargestBatch.of(both, stock).massKilograms()).isCloseTo(0.5, within(1e-12));
    Stock others = Stock.of(List.of(item(WAX, 5000), item(LOT_8, 5000)));
    assertThat(LargestBatch.of(both, others).massKilograms()).isZero();
    Stock even = Stock.of(List.of(item(LOT_7, 400), item(LOT_8, 400), item(RESIN, 100)));
    assertThat(LargestBatch.of(MEDIUM, even).runsOut())
        .containsExactlyInAnyOrder(Ingredient.of(WAX), Ingredient.of(RESIN));
  }

  /** Of 100 g, 5e-11 kg are short: no batch is as light as that, so nothing is. */
  @Test
  void take_lessIsShortThanABatchWeighs_isComplete() {
    Stock stock = Stock.of(List.of(item(MEDIUM, 90 - 5e-8), item(WHITE, 10)));
    Withdrawal taken = stock.take(Batch.of(PAINT, grams(100)));
    assertThat(taken.isComplete()).isTrue();
    assertThat(taken.lines()).hasSize(2);
  }

  /** Of the largest batch nothing is missing, and of a hair more something is. */
  @Property(tries = 200)
  void largest_withMediumInStock_isTheLargest(
      @ForAll @DoubleRange(min = 0, max = 500) double medium,
      @ForAll @DoubleRange(min = 1, max = 500) double wax,
      @ForAll @DoubleRange(min = 1, max = 100) double resin,
      @ForAll @DoubleRange(min = 1, max = 100) double white) {
    Stock stock =
        Stock.of(
            List.of(item(MEDIUM, medium), item(WAX, wax), item(RESIN, resin), item(WHITE, white)));
    LargestBatch most = LargestBatch.of(PAINT, stock);
    // arithmetic: medium there and medium that can be made, or the white
    double made = Math.min(wax / 8, resin) * 9;
    assertThat(most.massKilograms() * 1000)
        .isCloseTo(Math.min((medium + made) / 0.9, white / 0.1), within(1e-6));
    assertThat(most.withdrawal().isComplete()).isTrue();
    assertThat(most.runsOut()).isNotEmpty();
  }

  /** A recipe upon a recipe, each twice in the next: made in one go, not in 2^n. */
  @Test
  @Timeout(5)
  void take_fiftyStoreys_isQuick() {
    Recipe recipe = MEDIUM;
    for (int i = 0; i < 50; i++) {
      recipe =
          Recipe.builder("storey " + i)
              .part(recipe, 1)
              .part(Ingredient.of(recipe, Losses.NONE), 1)
              .build();
    }
    Stock stock = Stock.of(List.of(item(WAX, 800), item(RESIN, 100)));
    assertThat(stock.take(Batch.of(recipe, grams(900))).isComplete()).isTrue();
  }

  @Property(tries = 50)
  void with_later_comesLast(@ForAll @IntRange(min = 0, max = 5) int before) {
    Stock stock = Stock.EMPTY;
    for (int i = 0; i < before; i++) {
      stock = stock.with(item(WAX, i));
    }
    Stock more = stock.with(item(WHITE, 7));
    assertThat(more.items()).hasSize(before + 1);
    assertThat(more.items().get(before)).isEqualTo(item(WHITE, 7));
  }
}
