// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.meltwright.units.MetricUnits.kilograms;

import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.units.MassFraction;
import org.meltwright.units.ProblemException;

class BatchPricesTest {

  private static final Material WAX = Material.builder("wax").build();
  private static final Material RESIN = Material.builder("resin").build();
  private static final Material RED = Material.builder("red").build();
  private static final Recipe MEDIUM = Recipe.named("medium").part(WAX, 8).part(RESIN, 1).build();
  private static final Recipe PAINT = Recipe.named("paint").part(MEDIUM, 3).part(RED, 1).build();
  private static final BatchPrices PRICES =
      BatchPrices.of(
          Map.of(
              WAX, UnitPrice.parse("10 EUR/kg"),
              RESIN, UnitPrice.parse("20 EUR/kg"),
              RED, UnitPrice.parse("80 EUR/kg")));

  private static Losses loss(double share) {
    return Losses.NONE.withFilm(MassFraction.of(share));
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
    assertThat(CostRollUp.of(item).total()).isEqualTo(Money.parse("EUR 34.00"));
  }

  @Test
  void aSubRecipeMadeBefore_bringsItsLossesAndLabour() {
    Batch medium = Batch.ofTotal(MEDIUM, kilograms(0.9), loss(1.0 / 9));
    CostItem whole =
        CostItem.group(
            "medium",
            List.of(
                PRICES.cost(medium),
                CostItem.of(CostKind.LABOUR, "work", ExactMoney.of(Money.parse("EUR 6.00")))));
    Batch paint = Batch.ofTotal(PAINT, kilograms(0.4), Losses.NONE);
    CostRollUp cost = CostRollUp.of(PRICES.withMade(medium, whole).cost(paint));
    assertThat(cost.total()).isEqualTo(Money.parse("EUR 14.00"));
    assertThat(cost.total(CostKind.LABOUR)).isEqualTo(Money.parse("EUR 2.25"));
    assertThat(Money.total(cost.leaves().stream().map(CostLine::amount).toList()))
        .isEqualTo(cost.total());
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
}
