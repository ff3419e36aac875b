// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.Problems;

/**
 * What drafts call each other: the order in which things that name each other can be built, the
 * circles among them, and references that two things share.
 */
final class DraftOrder {

  private final List<String> order = new ArrayList<>();
  private final List<List<String>> circles = new ArrayList<>();

  /** Orders names so that each comes after all that it needs; names unknown here are left out. */
  static DraftOrder of(Map<String, Set<String>> needs) {
    return new DraftOrder(needs);
  }

  private DraftOrder(Map<String, Set<String>> needs) {
    Map<String, Integer> open = new LinkedHashMap<>();
    Map<String, List<String>> neededBy = new HashMap<>();
    needs.forEach(
        (name, all) -> {
          List<String> known = all.stream().filter(needs::containsKey).toList();
          open.put(name, known.size());
          known.forEach(n -> neededBy.computeIfAbsent(n, k -> new ArrayList<>()).add(name));
        });
    Deque<String> ready = new ArrayDeque<>();
    open.forEach(
        (name, count) -> {
          if (count == 0) {
            ready.add(name);
          }
        });
    while (!ready.isEmpty()) {
      String name = ready.remove();
      order.add(name);
      open.remove(name);
      for (String next : neededBy.getOrDefault(name, List.of())) {
        if (open.merge(next, -1, Integer::sum) == 0) {
          ready.add(next);
        }
      }
    }
    collectCircles(needs, open.keySet());
  }

  /** Every name left over leads into a circle: following one need after the other finds it. */
  private void collectCircles(Map<String, Set<String>> needs, Set<String> left) {
    Set<String> seen = new LinkedHashSet<>();
    for (String start : left) {
      List<String> path = new ArrayList<>();
      Map<String, Integer> places = new HashMap<>();
      String at = start;
      while (!seen.contains(at)) {
        seen.add(at);
        places.put(at, path.size());
        path.add(at);
        at =
            needs.getOrDefault(at, Set.of()).stream().filter(left::contains).findFirst().orElse(at);
      }
      Integer from = places.get(at);
      if (from != null) {
        circles.add(List.copyOf(path.subList(from, path.size())));
      }
    }
  }

  List<String> order() {
    return order;
  }

  List<List<String>> circles() {
    return circles;
  }

  /** In a draft a reference names one thing: two that share it cannot be written down together. */
  static void requireOneReference(
      Stream<Ingredient> ingredients, UnaryOperator<String> referenceOf) {
    Map<String, Ingredient> seen = new HashMap<>();
    Problems problems = new Problems();
    ingredients.forEach(
        ingredient -> {
          String name = ingredient.name();
          String reference = ingredient.recipe().isPresent() ? referenceOf.apply(name) : name;
          Ingredient before = seen.putIfAbsent(reference, ingredient);
          if (before != null && !isSame(before, ingredient)) {
            problems.add(
                Problem.of(MaterialProblem.REFERENCE_SHARED, reference).under("/" + reference));
          }
        });
    problems.throwIfAny();
  }

  private static boolean isSame(Ingredient one, Ingredient other) {
    return one.material().equals(other.material()) && one.recipe().equals(other.recipe());
  }
}
