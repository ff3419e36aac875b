// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.Composition;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.UnitsProblem;

/**
 * What the ingredients of batches cost: materials per mass, and sub-recipes that are made in
 * batches of their own.
 *
 * <p>In code, for one part of resin to eight of wax:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * Map<Material, UnitPrice> bought =
 *     Map.of(resin, UnitPrice.parse("32 EUR/kg"), wax, UnitPrice.parse("12.50 EUR/kg"));
 * Recipe medium = Recipe.named("medium").part(resin, 1).part(wax, 8).build();
 * Batch batch = Batch.ofTotal(medium, grams(900), Losses.NONE);
 * // 3.20 EUR of resin and 10.00 EUR of wax
 * BatchPrices.of(bought).cost(batch).cost(); // 13.2 EUR
 * }</pre>
 *
 * <p>Materials are paid for as weighed in, so losses are in the cost; the {@linkplain
 * CostRollUp#per quotient} with the net mass spreads them over what is left. For example, 0.9 kg
 * weighed in for 10 EUR that leave 0.8 kg net cost 12.50 EUR/kg.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchPrices {

  private final Map<Material, UnitPrice> materials;
  private final Map<Recipe, Made> made;

  private record Made(CostItem whole, double netKilograms) {}

  /**
   * Returns prices of materials.
   *
   * @param materials what each costs per mass
   * @return the prices
   */
  public static BatchPrices of(Map<Material, UnitPrice> materials) {
    return new BatchPrices(Map.copyOf(materials), Map.of());
  }

  private BatchPrices(Map<Material, UnitPrice> materials, Map<Recipe, Made> made) {
    this.materials = materials;
    this.made = made;
  }

  /**
   * Returns a copy that also knows a sub-recipe made in a batch of its own.
   *
   * @param batch the batch
   * @param whole all that it costs: materials, energy, labour
   * @return the new prices; a batch that uses the recipe bears the part of {@code whole} that its
   *     mass has of the net mass
   * @throws ProblemException if nothing is left of the batch
   */
  public BatchPrices withMade(Batch batch, CostItem whole) {
    double net = batch.net().massKilograms();
    UnitsProblem.requireBetween(net, 1e-12, 1e9, "net mass of " + batch.recipe().name());
    Map<Recipe, Made> more = new LinkedHashMap<>(made);
    more.put(batch.recipe(), new Made(whole, net));
    return new BatchPrices(materials, Map.copyOf(more));
  }

  /**
   * Returns what the ingredients of a batch cost.
   *
   * @param batch the batch
   * @return a group named as the recipe: a line for each material, a group for each sub-recipe, the
   *     materials of one that is not known as made taken together
   * @throws ProblemException if materials have no price, all of them named, or currencies differ
   */
  public CostItem cost(Batch batch) {
    List<Problem> problems = new ArrayList<>();
    List<CostItem> items = new ArrayList<>();
    for (BatchLine line : batch.lines()) {
      line.ingredient()
          .recipe()
          .map(r -> made(r, line.massKilograms(), problems))
          .orElseGet(() -> bought(line, problems))
          .ifPresent(items::add);
    }
    if (!problems.isEmpty()) {
      throw new ProblemException(problems.stream().distinct().toList());
    }
    return CostItem.group(batch.recipe().name(), items);
  }

  private Optional<CostItem> bought(BatchLine line, List<Problem> problems) {
    return line.ingredient().material().flatMap(m -> material(m, line.massKilograms(), problems));
  }

  private Optional<CostItem> material(Material material, double mass, List<Problem> problems) {
    UnitPrice price = materials.get(material);
    if (price == null) {
      problems.add(Problem.of(CostProblem.PRICE_MISSING, material.id()));
      return Optional.empty();
    }
    return Optional.of(CostItem.material(material.id(), mass, price));
  }

  private Optional<CostItem> made(Recipe recipe, double mass, List<Problem> problems) {
    Made known = made.get(recipe);
    if (known != null) {
      return Optional.of(known.whole().times(mass / known.netKilograms()));
    }
    Composition composition = recipe.composition();
    List<CostItem> items = new ArrayList<>();
    for (int i = 0; i < composition.size(); i++) {
      double part = mass * composition.massFractionValue(i);
      material(composition.materials().get(i), part, problems).ifPresent(items::add);
    }
    return items.isEmpty() ? Optional.empty() : Optional.of(CostItem.group(recipe.name(), items));
  }
}
