// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.program;

import static org.meltwright.units.MetricUnits.grams;
import static org.meltwright.units.MetricUnits.kilograms;
import static org.meltwright.units.MetricUnits.millilitres;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.LargestBatch;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.Stock;
import org.meltwright.core.batch.StockItem;
import org.meltwright.core.batch.Withdrawal;
import org.meltwright.core.cost.BatchPrices;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialCatalogue;
import org.meltwright.core.mixture.DensityBasis;

/** A tube in millilitres and last month's cakes: what do I take, and what is missing? */
public final class TakeItFromStock {

  private TakeItFromStock() {}

  /**
   * Prints what a batch takes from which item, what it lacks, what is left and what that is worth.
   *
   * @param args none
   */
  public static void main(String[] args) {
    MaterialCatalogue catalogue = MaterialCatalogue.standard();
    Material wax = catalogue.require("beeswax-yellow");
    Material resin = catalogue.require("damar");
    Material blue = catalogue.require("oil-paint-ultramarine");
    Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
    Recipe colour = Recipe.builder("blue cakes").part(medium, 9).part(blue, 1).build();

    Stock stock =
        Stock.of(
            List.of(
                StockItem.ofPieces("last month's cakes", Ingredient.of(medium), 11, grams(24)),
                StockItem.of("opened bag", Ingredient.of(wax.withLot("A 12")), grams(310)),
                StockItem.of("new bag", Ingredient.of(wax.withLot("B 03")), kilograms(1)),
                StockItem.of("tears", Ingredient.of(resin), grams(65)),
                StockItem.of(
                    "blue tube", Ingredient.of(blue), millilitres(37), DensityBasis.SOLID)));

    Withdrawal taken = stock.take(Batch.of(colour, grams(700)));
    taken.lines().forEach(TakeItFromStock::print);
    taken.missing().forEach(m -> print("missing", m.ingredient().name(), m.massKilograms()));

    LargestBatch most = LargestBatch.of(colour, stock);
    print("at most", colour.name(), most.massKilograms());
    System.out.println("runs out first: " + most.runsOut().get(0).name());

    BatchPrices prices =
        BatchPrices.of(
            Map.of(
                wax.withLot("A 12"),
                UnitPrice.parse("18.40 EUR/kg"),
                wax,
                UnitPrice.parse("19.80 EUR/kg"),
                resin,
                UnitPrice.parse("39 EUR/kg"),
                blue,
                UnitPrice.parse("189 EUR/kg")));
    CostRollUp worth = CostRollUp.of(prices.worth(stock).orElseThrow());
    System.out.println("worth of the stock: " + worth.total());
  }

  private static void print(StockItem line) {
    print("take", line.label(), line.massKilograms());
  }

  private static void print(String what, String of, double kilograms) {
    System.out.println(String.format(Locale.ROOT, "%s: %.1f g of %s", what, kilograms * 1000, of));
  }
}
