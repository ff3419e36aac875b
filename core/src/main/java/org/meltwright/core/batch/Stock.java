// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;

/**
 * What is there, in the order in which it came: materials by lot, and what recipes made.
 *
 * <p>A batch takes from it what came first; what it lacks is told. Stock has no prices: what it is
 * worth is a question of cost. For example, medium from an opened and a new bag:
 *
 * <pre>{@code
 * MaterialCatalogue shelf = MaterialCatalogue.standard();
 * Material resin = shelf.require("damar");
 * Material wax = shelf.require("beeswax-yellow");
 * Stock stock =
 *     Stock.of(
 *         List.of(
 *             StockItem.of("opened bag", Ingredient.of(wax.withLot("7")), grams(300)),
 *             StockItem.of("new bag", Ingredient.of(wax.withLot("8")), kilograms(1)),
 *             StockItem.of("resin", Ingredient.of(resin), grams(50))));
 * Recipe medium = Recipe.builder("medium").part(resin, 1).part(wax, 8).build();
 * Withdrawal taken = stock.take(Batch.of(medium, grams(540)));
 * taken.lines().get(2); // new bag: 0.18 kg of beeswax-yellow (lot 8)
 * taken.left().massKilograms(Ingredient.of(wax)); // 0.82 kg
 * taken.missing().get(0).massKilograms(); // 0.01 kg
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Stock {

  /** Nothing. */
  public static final Stock EMPTY = new Stock(List.of());

  private final List<StockItem> items;

  /**
   * Returns a stock.
   *
   * @param items what is there, what came first before what came later
   * @return the stock
   */
  public static Stock of(List<StockItem> items) {
    return new Stock(items);
  }

  private Stock(List<StockItem> items) {
    this.items = List.copyOf(items);
  }

  /**
   * Returns what is there.
   *
   * @return the items, what is taken first before what is taken later
   */
  public List<StockItem> items() {
    return items;
  }

  /**
   * Returns how much there is of an ingredient.
   *
   * @param asked a material, of one lot if it names one, or what a recipe makes
   * @return the mass of all items that are meant, in kg
   */
  public double massKilograms(Ingredient asked) {
    return items.stream()
        .filter(i -> i.ingredient().isMeantBy(asked))
        .mapToDouble(StockItem::massKilograms)
        .sum();
  }

  /**
   * Returns a copy with one more item, which came last.
   *
   * @param item what came
   * @return the new stock
   */
  public Stock with(StockItem item) {
    return new Stock(Stream.concat(items.stream(), Stream.of(item)).toList());
  }

  /**
   * Returns a copy from which some item is taken before all others: last month's cakes, the bag
   * that is open.
   *
   * @param label the label of the item; all of that name
   * @return the new stock
   * @throws ProblemException if there is none of that name
   */
  public Stock startingWith(String label) {
    List<StockItem> ordered = new ArrayList<>(items);
    ordered.sort(Comparator.comparing(i -> !i.label().equals(label)));
    if (items.stream().noneMatch(i -> i.label().equals(label))) {
      throw new ProblemException(
          Problem.of(BatchProblem.UNKNOWN_ITEM, label).with("known", labels()));
    }
    return new Stock(ordered);
  }

  private String labels() {
    StringJoiner labels = new StringJoiner(", ");
    items.stream().map(StockItem::label).distinct().forEach(labels::add);
    return labels.toString();
  }

  /**
   * Returns a copy without the items of which nothing is left.
   *
   * @return the new stock
   */
  public Stock withoutEmpty() {
    return new Stock(items.stream().filter(i -> i.massKilograms() > 0).toList());
  }

  /**
   * Takes what a batch needs.
   *
   * <p>Where it calls for what another recipe makes, that is taken as far as it is there; what is
   * short is made, from what its own recipe calls for, its losses included. Lines that name a lot
   * are served before those that do not.
   *
   * @param batch the batch, with all that goes into the pot
   * @return what is taken, what is left, and what is missing
   */
  public Withdrawal take(Batch batch) {
    return new Withdrawing(this).take(batch);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Stock that && items.equals(that.items);
  }

  @Override
  public int hashCode() {
    return items.hashCode();
  }

  @Override
  public String toString() {
    return items.toString();
  }

  /** Taking from a stock, line by line. */
  private static final class Withdrawing {

    /** What lacks less than this of what is needed lacks nothing but rounding. */
    private static final double SLACK = 1e-12;

    private final List<StockItem> left;
    private final List<StockItem> taken = new ArrayList<>();
    private final List<BatchLine> missing = new ArrayList<>();
    private final List<BatchLine> ofShelf = new ArrayList<>();

    /** What is called for of other recipes, all of one kind together. */
    private final Map<Ingredient, Double> made = new LinkedHashMap<>();

    private final IdentityHashMap<Recipe, Integer> storeys = new IdentityHashMap<>();

    Withdrawing(Stock stock) {
      this.left = new ArrayList<>(stock.items());
    }

    Withdrawal take(Batch batch) {
      batch.lines().forEach(this::need);
      while (!made.isEmpty()) {
        Ingredient next = Collections.max(made.keySet(), Comparator.comparing(this::storeys));
        make(next, take(new BatchLine(next, requireNonNull(made.remove(next)))));
      }
      ofShelf.sort(Comparator.comparing(Withdrawing::namesNoLot));
      ofShelf.forEach(line -> lack(line.ingredient(), take(line)));
      return new Withdrawal(taken, Stock.of(left), missing);
    }

    private static boolean namesNoLot(BatchLine line) {
      return line.ingredient().material().flatMap(m -> m.lot()).isEmpty();
    }

    private void need(BatchLine line) {
      if (line.ingredient().material().isPresent()) {
        ofShelf.add(line);
      } else {
        made.merge(line.ingredient(), line.massKilograms(), Double::sum);
      }
    }

    /** Makes what is short, unless it is less than anyone can make a batch of. */
    private void make(Ingredient next, double kilograms) {
      if (kilograms >= Batch.LIGHTEST) {
        Recipe recipe = next.recipe().orElseThrow();
        Batch batch = Batch.ofNet(recipe, QuantityKind.MASS.ofSi(kilograms), next.losses());
        batch.lines().forEach(this::need);
      }
    }

    /** How many recipes stand upon each other: who needs it is higher, and is made in one go. */
    private int storeys(Ingredient ingredient) {
      return ingredient.recipe().map(this::storeys).orElse(0);
    }

    private int storeys(Recipe recipe) {
      Integer known = storeys.get(recipe);
      if (known == null) {
        known = 1 + recipe.parts().stream().mapToInt(p -> storeys(p.ingredient())).max().orElse(0);
        storeys.put(recipe, known);
      }
      return known;
    }

    /** Takes what is there of one line, and returns what is short, in kg. */
    private double take(BatchLine line) {
      double needed = line.massKilograms();
      for (int i = 0; i < left.size() && needed > 0; i++) {
        StockItem item = left.get(i);
        double amount = Math.min(item.massKilograms(), needed);
        if (amount > 0 && item.ingredient().isMeantBy(line.ingredient())) {
          taken.add(new StockItem(item.label(), item.ingredient(), amount));
          left.set(i, item.without(amount));
          needed -= amount;
        }
      }
      return needed > SLACK * line.massKilograms() ? needed : 0;
    }

    private void lack(Ingredient ingredient, double kilograms) {
      if (kilograms > 0) {
        double before = 0;
        for (int i = missing.size() - 1; i >= 0; i--) {
          if (missing.get(i).ingredient().equals(ingredient)) {
            before = missing.remove(i).massKilograms();
          }
        }
        missing.add(new BatchLine(ingredient, before + kilograms));
      }
    }
  }
}
