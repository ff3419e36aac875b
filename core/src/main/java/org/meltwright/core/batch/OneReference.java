// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.Problems;

/** In a draft a reference names one thing: two that share it cannot be written down together. */
final class OneReference {

  private OneReference() {}

  static void require(Stream<Ingredient> ingredients, UnaryOperator<String> referenceOf) {
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
