// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.QuantityKind;

/**
 * The largest batch that a stock allows, and what runs out first.
 *
 * <p>For example, medium at 1 : 8 from 200 g of resin and 2 kg of wax:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Stock stock =
 *     Stock.of(
 *         List.of(
 *             StockItem.of("resin", Ingredient.of(resin), grams(200)),
 *             StockItem.of("wax", Ingredient.of(wax), kilograms(2))));
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * LargestBatch most = LargestBatch.of(medium, stock);
 * most.massKilograms(); // 1.8 kg
 * most.runsOut().get(0).name(); // damar
 * most.withdrawal().left().massKilograms(Ingredient.of(wax)); // 0.4 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class LargestBatch {

  /** A batch is weighed to five digits at most; this halves the doubt to twelve. */
  private static final int HALVINGS = 60;

  private static final double A_LITTLE = 1e-6;
  private static final double LIGHTEST = 1e-9;

  private final Recipe recipe;
  private final Stock stock;
  private final double massKilograms;

  /**
   * Returns the largest batch of a recipe; what it calls for of another recipe is taken from stock
   * or made, as {@link Stock#take} does.
   *
   * @param recipe what is to be made
   * @param stock what is there
   * @return the largest batch; nothing if an ingredient is missing
   */
  public static LargestBatch of(Recipe recipe, Stock stock) {
    return new LargestBatch(recipe, stock, most(recipe, stock));
  }

  private LargestBatch(Recipe recipe, Stock stock, double massKilograms) {
    this.recipe = recipe;
    this.stock = stock;
    this.massKilograms = massKilograms < LIGHTEST ? 0 : massKilograms;
  }

  private static double most(Recipe recipe, Stock stock) {
    boolean isOfMaterials =
        recipe.parts().stream().allMatch(p -> p.ingredient().material().isPresent());
    return isOfMaterials ? ofMaterials(recipe, stock) : searched(recipe, stock);
  }

  /** What serves a lot serves the material too, so the tightest of all sums decides. */
  private static double ofMaterials(Recipe recipe, Stock stock) {
    double most = Double.POSITIVE_INFINITY;
    for (RecipePart part : recipe.parts()) {
      double share = recipe.lineShare(part.ingredient());
      if (share > 0) {
        most = Math.min(most, stock.massKilograms(part.ingredient()) / share);
      }
    }
    return most;
  }

  /** More in the pot never needs less of anything, and no more comes in than is there. */
  private static double searched(Recipe recipe, Stock stock) {
    double low = 0;
    double high = stock.items().stream().mapToDouble(StockItem::massKilograms).sum();
    for (int i = 0; i < HALVINGS && high > LIGHTEST; i++) {
      double middle = low + (high - low) / 2;
      if (middle > LIGHTEST && !take(recipe, stock, middle).isComplete()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high > LIGHTEST && take(recipe, stock, high).isComplete() ? high : low;
  }

  private static Withdrawal take(Recipe recipe, Stock stock, double kilograms) {
    return stock.take(Batch.of(recipe, QuantityKind.MASS.ofSi(kilograms)));
  }

  /**
   * Returns how much can be made.
   *
   * @return the mass in the pot, in kg; zero if an ingredient is missing
   */
  public double massKilograms() {
    return massKilograms;
  }

  /**
   * Returns the batch.
   *
   * @return the batch; empty if an ingredient is missing
   */
  public Optional<Batch> batch() {
    return massKilograms > 0
        ? Optional.of(Batch.of(recipe, QuantityKind.MASS.ofSi(massKilograms)))
        : Optional.empty();
  }

  /**
   * Returns what the batch takes.
   *
   * @return what is taken, and what is left; nothing is missing
   */
  public Withdrawal withdrawal() {
    return batch().map(stock::take).orElseGet(() -> new Withdrawal(List.of(), stock, List.of()));
  }

  /**
   * Returns what runs out first: what a batch a millionth larger lacks.
   *
   * @return the ingredient, or several that run out together; never empty
   */
  public List<Ingredient> runsOut() {
    double more = Math.max(massKilograms * (1 + A_LITTLE), LIGHTEST);
    return take(recipe, stock, more).missing().stream().map(BatchLine::ingredient).toList();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof LargestBatch that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(recipe, stock, massKilograms);
  }

  @Override
  public String toString() {
    return "at most " + massKilograms + " kg of " + recipe.name();
  }
}
