// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** The text tree of a recipe, in bounded space whatever is nested in it. */
final class RecipeTree {

  private record Entry(int depth, RecipePart part) {}

  private RecipeTree() {}

  static List<String> lines(Recipe recipe, int mostLines) {
    List<String> lines = new ArrayList<>();
    Set<Recipe> spelledOut = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Entry> waiting = new ArrayDeque<>();
    lines.add(recipe.name());
    spelledOut.add(recipe);
    push(waiting, recipe, 1);
    while (!waiting.isEmpty()) {
      if (lines.size() >= mostLines) {
        lines.set(lines.size() - 1, "…");
        break;
      }
      lines.add(line(waiting.pop(), waiting, spelledOut));
    }
    return List.copyOf(lines);
  }

  private static String line(Entry entry, Deque<Entry> waiting, Set<Recipe> spelledOut) {
    String text = "  ".repeat(Math.min(entry.depth, 40)) + entry.part;
    if (entry.part.ingredient().recipe().isEmpty()) {
      return text;
    }
    Recipe made = entry.part.ingredient().recipe().get();
    if (!spelledOut.add(made)) {
      return text + " (see above)";
    }
    push(waiting, made, entry.depth + 1);
    return text;
  }

  private static void push(Deque<Entry> waiting, Recipe recipe, int depth) {
    List<RecipePart> parts = recipe.parts();
    for (int i = parts.size() - 1; i >= 0; i--) {
      waiting.push(new Entry(depth, parts.get(i)));
    }
  }
}
