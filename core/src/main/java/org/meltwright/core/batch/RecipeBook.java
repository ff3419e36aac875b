// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.MaterialLookup;
import org.meltwright.units.FieldReader;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityParser;

/**
 * Recipes made of drafts that name each other.
 *
 * <p>Only drafts can contain themselves, directly or through others; such a circle is a problem
 * that names its members. All problems are found at once, each with its place as a JSON pointer
 * below the list of drafts.
 *
 * <p>For example, cakes stand in the file before the medium that they are made of:
 *
 * <pre>{@code
 * RecipeDraft.PartDraft ofMedium = RecipeDraft.PartDraft.named("medium").withShare("90 %");
 * RecipeDraft.PartDraft ofWhite = RecipeDraft.PartDraft.named("titanium-white-rutile").withShare("10 %");
 * RecipeDraft cakes = new RecipeDraft(null, "white cakes", null, List.of(ofMedium, ofWhite));
 * RecipeDraft medium = new RecipeDraft("medium", "Medium", "1:8 damar:beeswax-yellow", null);
 * RecipeBook book =
 *     RecipeBook.of(
 *         List.of(cakes, medium),
 *         QuantityParser.localeFree(),
 *         MaterialCatalogue.standard()::require);
 * book.recipes().keySet(); // [medium, white cakes]
 * book.find("medium"); // Medium = 1.0 damar + 8.0 beeswax-yellow
 * book.toDrafts().get(1).parts().get(0).of(); // medium
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class RecipeBook {

  private final Map<String, Recipe> recipes;

  /**
   * Returns the recipes of drafts, in any order.
   *
   * @param drafts the drafts
   * @param parser reads the amounts
   * @param materials finds the materials
   * @return the book
   * @throws ProblemException if anything is wrong; it carries all problems found
   */
  public static RecipeBook of(
      List<RecipeDraft> drafts, QuantityParser parser, MaterialLookup materials) {
    return new Reader(drafts, parser, materials).read();
  }

  /**
   * Returns the book of recipes, and of all those that they need.
   *
   * @param recipes the recipes
   * @return the book
   * @throws ProblemException if two recipes have one name
   */
  public static RecipeBook of(Collection<Recipe> recipes) {
    Map<String, Recipe> all = new LinkedHashMap<>();
    Map<String, Set<String>> needs = new LinkedHashMap<>();
    Problems twice = new Problems();
    Deque<Recipe> waiting = new ArrayDeque<>(recipes);
    while (!waiting.isEmpty()) {
      Recipe recipe = waiting.remove();
      Recipe known = all.putIfAbsent(recipe.name(), recipe);
      if (known == null) {
        List<Recipe> parts =
            recipe.parts().stream().flatMap(p -> p.ingredient().recipe().stream()).toList();
        needs.put(
            recipe.name(),
            parts.stream().map(Recipe::name).collect(Collectors.toCollection(LinkedHashSet::new)));
        waiting.addAll(parts);
      } else if (!known.equals(recipe)) {
        twice.add(Problem.of(BatchProblem.NAME_TWICE, recipe.name()).under("/" + recipe.name()));
      }
    }
    twice.throwIfAny();
    Map<String, Recipe> inOrder = new LinkedHashMap<>();
    DraftOrder.of(needs).order().forEach(name -> inOrder.put(name, all.get(name)));
    return new RecipeBook(inOrder);
  }

  private RecipeBook(Map<String, Recipe> recipes) {
    this.recipes = java.util.Collections.unmodifiableMap(recipes);
  }

  /**
   * Returns all recipes.
   *
   * @return the recipes by what others call them, each after those that it needs
   */
  public Map<String, Recipe> recipes() {
    return recipes;
  }

  /**
   * Returns the recipe of an id or a name.
   *
   * @param name what other recipes call it
   * @return the recipe; empty if the book holds none of this name
   */
  public Optional<Recipe> find(String name) {
    return Optional.ofNullable(recipes.get(name));
  }

  /**
   * Returns all recipes as they are written down.
   *
   * @return the drafts, each after those that it needs; read again they are an equal book
   * @throws ProblemException if two materials have one id and lot, or a material and a recipe one
   *     name
   */
  public List<RecipeDraft> toDrafts() {
    Map<String, String> references = new HashMap<>();
    recipes.forEach((reference, recipe) -> references.put(recipe.name(), reference));
    UnaryOperator<String> referenceOf = name -> references.getOrDefault(name, name);
    DraftOrder.requireOneReference(
        recipes.values().stream()
            .flatMap(
                recipe ->
                    Stream.concat(
                        Stream.of(Ingredient.of(recipe)),
                        recipe.parts().stream().map(RecipePart::ingredient))),
        referenceOf);
    return recipes.values().stream().map(r -> RecipeDraft.of(r, referenceOf)).toList();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RecipeBook that && recipes.equals(that.recipes);
  }

  @Override
  public int hashCode() {
    return recipes.hashCode();
  }

  @Override
  public String toString() {
    return recipes.size() + " recipes: " + recipes.keySet();
  }

  /** Checks and builds; lives for one reading. */
  private static final class Reader {

    private final List<RecipeDraft> drafts;
    private final MaterialLookup materials;
    private final Problems problems = new Problems();
    private final FieldReader at;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final Map<String, RecipeReader.Unmade> unmade = new HashMap<>();
    private final Map<String, Set<String>> needs = new LinkedHashMap<>();

    Reader(List<RecipeDraft> drafts, QuantityParser parser, MaterialLookup materials) {
      this.drafts = drafts;
      this.materials = materials;
      this.at = FieldReader.of(parser, problems);
    }

    RecipeBook read() {
      at.entries(drafts, Function.identity());
      name();
      for (int i = 0; i < drafts.size(); i++) {
        if (drafts.get(i) != null) {
          read(i, drafts.get(i));
        }
      }
      DraftOrder order = DraftOrder.of(needs);
      order.circles().forEach(this::report);
      Map<String, Recipe> built = new LinkedHashMap<>();
      for (String name : order.order()) {
        Optional.ofNullable(unmade.get(name))
            .flatMap(u -> u.make(built))
            .ifPresent(recipe -> built.put(name, recipe));
      }
      problems.throwIfAny();
      return new RecipeBook(built);
    }

    private void name() {
      Set<String> names = new HashSet<>();
      for (int i = 0; i < drafts.size(); i++) {
        RecipeDraft draft = drafts.get(i);
        if (draft != null && draft.name() != null && !names.add(draft.name())) {
          twice(i, "name", draft.name());
        } else if (draft != null && draft.reference().isPresent()) {
          String reference = draft.reference().get();
          if (places.putIfAbsent(reference, i) != null) {
            twice(i, draft.id() == null ? "name" : "id", reference);
          }
        }
      }
    }

    private void twice(int place, String field, String found) {
      problems.add(Problem.of(BatchProblem.NAME_TWICE, found).under("/" + place + "/" + field));
    }

    private void read(int place, RecipeDraft draft) {
      RecipeReader reader = new RecipeReader(at.field("" + place), materials, places.keySet());
      Optional<RecipeReader.Unmade> read = reader.read(draft);
      draft
          .reference()
          .filter(reference -> places.getOrDefault(reference, -1) == place)
          .ifPresent(
              reference -> {
                needs.put(reference, reader.needs());
                read.ifPresent(u -> unmade.put(reference, u));
              });
    }

    private void report(List<String> circle) {
      String first = circle.get(0);
      problems.add(
          Problem.of(BatchProblem.CIRCLE, String.join(" → ", circle) + " → " + first)
              .under("/" + places.getOrDefault(first, 0) + "/parts"));
    }
  }
}
