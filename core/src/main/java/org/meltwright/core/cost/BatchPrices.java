// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import static org.meltwright.core.cost.CostProblem.CHECK;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.Stock;
import org.meltwright.core.batch.StockItem;
import org.meltwright.core.material.ByMaterial;
import org.meltwright.core.material.Material;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * What batches cost. Materials have a price per mass; what another recipe makes costs what goes
 * into making that much of it, and so on down to materials.
 *
 * <p>In code, for one part of resin to eight of wax:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Map<Material, UnitPrice> bought =
 *     Map.of(resin, UnitPrice.parse("32 EUR/kg"), wax, UnitPrice.parse("12.50 EUR/kg"));
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * Batch batch = Batch.ofTotal(medium, grams(900), Losses.NONE);
 * // 3.20 EUR of resin and 10.00 EUR of wax
 * BatchPrices prices = BatchPrices.of(bought);
 * prices.cost(batch).cost(); // 13.2 EUR
 * }</pre>
 *
 * <p>Materials are paid for as weighed in, so losses are in the cost; the {@linkplain
 * CostRollUp#per quotient} with the net mass spreads them over what is left. For example, 0.9 kg
 * weighed in for 10 EUR that leave 0.8 kg net cost 12.50 EUR/kg.
 *
 * <p>A line that calls for what another recipe makes bears its part of all that {@linkplain
 * #withMade a batch of its own} costs, if there is one; else it costs the materials of the batch
 * that leaves as much as the line calls for, after the {@linkplain Ingredient#losses losses} of the
 * ingredient. For example, a resin at 20 EUR/kg that leaves 4 % insolubles costs 20.83 EUR per
 * kilogram of what is left.
 *
 * <p>Immutable and thread-safe, as far as the labels are.
 */
public final class BatchPrices {

  /** Nobody reads more lines; recipes in recipes can make many more, and take for ever. */
  private static final int MOST_LINES = 10_000;

  /** A microgram, in kg: less than that is priced as a part of it. */
  private static final double LEAST_BATCH = 1e-9;

  private final ByMaterial<UnitPrice> materials;
  private final Function<Material, String> labels;
  private final Map<Recipe, OwnBatch> makings;

  /** A batch that amounts are taken from, and what it costs beside its ingredients. */
  private record OwnBatch(Batch whole, List<CostItem> beside) {}

  /**
   * Returns prices of materials.
   *
   * @param materials what each costs per mass, whatever its figures and its lot; that lot alone
   *     where one is named. The order makes no difference
   * @return the prices; a line of a material is labelled with its id
   * @throws ProblemException if two prices are stated for a material, or for one lot of it
   */
  public static BatchPrices of(Map<Material, UnitPrice> materials) {
    return new BatchPrices(ByMaterial.of(materials), Material::id, Map.of());
  }

  private BatchPrices(
      ByMaterial<UnitPrice> materials,
      Function<Material, String> labels,
      Map<Recipe, OwnBatch> makings) {
    this.materials = materials;
    this.labels = labels;
    this.makings = makings;
  }

  /**
   * Returns a copy that labels the lines of materials otherwise.
   *
   * @param newLabels what the line of a material is called, for example its name in a language
   * @return the new prices
   */
  public BatchPrices withLabels(Function<Material, String> newLabels) {
    return new BatchPrices(materials, newLabels, makings);
  }

  /**
   * Returns a copy that knows what a recipe makes as made in a batch of its own.
   *
   * @param batch the batch; ingredients made by its recipe are taken from it
   * @param beside what the batch costs beside its ingredients: energy, work
   * @return the new prices; a batch that uses the recipe bears the part of all costs of this batch
   *     that its mass has of the net mass
   * @throws ProblemException if nothing is left of the batch
   */
  public BatchPrices withMade(Batch batch, List<CostItem> beside) {
    CHECK.between(batch.net().massKilograms(), 1e-12, 1e9, "net mass", batch.recipe().name());
    Map<Recipe, OwnBatch> more = new HashMap<>(makings);
    more.put(batch.recipe(), new OwnBatch(batch, List.copyOf(beside)));
    return new BatchPrices(materials, labels, Map.copyOf(more));
  }

  /**
   * Returns what the ingredients of a batch cost.
   *
   * @param batch the batch
   * @return a group named as the recipe: a line for each material, a group for each sub-recipe
   * @throws ProblemException if materials have no price, all of them named; if a sub-recipe is made
   *     of itself; if currencies differ; or if there are more than 10 000 lines
   */
  public CostItem cost(Batch batch) {
    return cost(batch, List.of());
  }

  /**
   * Returns what a batch costs.
   *
   * @param batch the batch
   * @param beside what it costs beside its ingredients: energy, work
   * @return a group named as the recipe: a line for each material, a group for each sub-recipe,
   *     then the other costs
   * @throws ProblemException as {@link #cost(Batch)} does
   */
  public CostItem cost(Batch batch, List<CostItem> beside) {
    return new Pricing().price(batch, beside);
  }

  /**
   * Returns what a stock is worth at these prices, lot by lot.
   *
   * <p>What a recipe made is worth what making it cost. For example, wax of two lots that were
   * bought at two prices:
   *
   * <pre>{@code
   * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
   * Stock stock =
   *     Stock.of(
   *         List.of(
   *             StockItem.of("opened bag", Ingredient.of(wax.withLot("7")), grams(300)),
   *             StockItem.of("new bag", Ingredient.of(wax.withLot("8")), kilograms(1))));
   * BatchPrices prices =
   *     BatchPrices.of(
   *         Map.of(
   *             wax.withLot("7"), UnitPrice.parse("12.50 EUR/kg"),
   *             wax, UnitPrice.parse("14 EUR/kg")));
   * prices.worth(stock).orElseThrow().cost(); // 17.75 EUR
   * }</pre>
   *
   * @param stock what is there
   * @return a group with a line or a group for each item of which something is left, in its order;
   *     empty if nothing is
   * @throws ProblemException as {@link #cost(Batch)} does
   */
  public Optional<CostItem> worth(Stock stock) {
    return new Pricing().worth(stock.withoutEmpty());
  }

  /**
   * Returns the materials of a batch that have no price, recipe in recipe.
   *
   * @param batch the batch
   * @return the materials, in the order of the lines; empty if {@link #cost(Batch)} finds a price
   *     for each
   * @throws ProblemException if there are more than 10 000 lines
   */
  public List<Material> unpriced(Batch batch) {
    Pricing pricing = new Pricing();
    pricing.items(batch, List.of(), 1);
    return List.copyOf(pricing.unpriced);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BatchPrices that && stated().equals(that.stated());
  }

  @Override
  public int hashCode() {
    return stated().hashCode();
  }

  private List<Object> stated() {
    return List.of(materials, labels, makings);
  }

  @Override
  public String toString() {
    return "prices of " + materials + ", made: " + makings.keySet();
  }

  /** The pricing of one batch. */
  private final class Pricing {

    private final List<Problem> problems = new ArrayList<>();
    private final Set<Material> unpriced = new LinkedHashSet<>();
    private final Set<Recipe> within = new LinkedHashSet<>();
    private int lines;

    CostItem price(Batch batch, List<CostItem> beside) {
      return group(batch.recipe().name(), items(batch, beside, 1));
    }

    Optional<CostItem> worth(Stock stock) {
      List<CostItem> items = new ArrayList<>();
      for (StockItem item : stock.items()) {
        item(new BatchLine(item.ingredient(), item.massKilograms()), item.massKilograms())
            .ifPresent(each -> items.add(CostItem.group(item.label(), List.of(each))));
      }
      return stock.items().isEmpty() ? Optional.empty() : Optional.of(group("stock", items));
    }

    private CostItem group(String name, List<CostItem> items) {
      unpriced.forEach(m -> problems.add(Problem.of(CostProblem.PRICE_MISSING, m.id())));
      if (!problems.isEmpty()) {
        throw new ProblemException(problems.stream().distinct().toList());
      }
      return CostItem.group(name, items);
    }

    private List<CostItem> items(Batch batch, List<CostItem> beside, double factor) {
      List<CostItem> items = new ArrayList<>();
      for (BatchLine line : batch.lines()) {
        item(line, line.massKilograms() * factor).ifPresent(items::add);
      }
      beside.forEach(b -> items.add(factor == 1 ? b : b.times(factor)));
      return items;
    }

    private Optional<CostItem> item(BatchLine line, double kilograms) {
      if (++lines > MOST_LINES) {
        throw CostProblem.exception(CostProblem.TOO_MANY_LINES, line.ingredient().name());
      }
      return line.ingredient()
          .recipe()
          .map(recipe -> made(recipe, line.ingredient().losses(), kilograms))
          .orElseGet(() -> bought(line.ingredient().material().orElseThrow(), kilograms));
    }

    private Optional<CostItem> bought(Material material, double kilograms) {
      Optional<UnitPrice> price = materials.find(material);
      if (price.isEmpty()) {
        unpriced.add(material);
      }
      return price.map(p -> CostItem.ofKilograms(labels.apply(material), kilograms, p));
    }

    private Optional<CostItem> made(Recipe recipe, Losses losses, double kilograms) {
      if (kilograms == 0) {
        return Optional.empty();
      }
      if (!within.add(recipe)) {
        problems.add(Problem.of(CostProblem.RECIPE_IN_ITSELF, circle(recipe)));
        return Optional.empty();
      }
      OwnBatch from =
          Optional.ofNullable(makings.get(recipe))
              .orElseGet(() -> justEnough(recipe, losses, kilograms));
      double part = kilograms / from.whole.net().massKilograms();
      List<CostItem> items = items(from.whole, from.beside, part);
      within.remove(recipe);
      return items.isEmpty() ? Optional.empty() : Optional.of(CostItem.group(recipe.name(), items));
    }

    /** The batch that leaves just as much as is called for. */
    private OwnBatch justEnough(Recipe recipe, Losses losses, double kilograms) {
      double net = Math.max(kilograms, LEAST_BATCH);
      return new OwnBatch(Batch.ofNet(recipe, QuantityKind.MASS.ofSi(net), losses), List.of());
    }

    private String circle(Recipe again) {
      List<String> names = new ArrayList<>(within.stream().map(Recipe::name).toList());
      names.add(again.name());
      return String.join(" > ", names);
    }
  }
}
