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
import org.meltwright.units.QuantityKind;

/** Taking from a stock, line by line. */
final class Withdrawing {

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

  private void make(Ingredient next, double kilograms) {
    if (kilograms > 0) {
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
