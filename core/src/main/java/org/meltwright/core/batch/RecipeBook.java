// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.material.Material;
import org.meltwright.core.material.MaterialProblem;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

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
 * RecipePartDraft ofMedium = new RecipePartDraft(null, "medium", 9.0);
 * RecipePartDraft ofWhite = new RecipePartDraft("titanium-white-rutile", null, 1.0);
 * RecipePartDraft ofWax = new RecipePartDraft("beeswax-yellow", null, 8.0);
 * RecipePartDraft ofResin = new RecipePartDraft("damar", null, 1.0);
 * RecipeDraft cakes = new RecipeDraft("white cakes", List.of(ofMedium, ofWhite));
 * RecipeDraft medium = new RecipeDraft("medium", List.of(ofResin, ofWax));
 * RecipeBook book =
 *     RecipeBook.of(List.of(cakes, medium), MaterialCatalogue.standard()::find);
 * book.recipes().keySet(); // [medium, white cakes]
 * book.find("medium"); // medium = 1.0 damar + 8.0 beeswax-yellow
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
   * @param materials finds a material by its id
   * @return the book
   * @throws ProblemException if anything is wrong; it carries all problems found
   */
  public static RecipeBook of(
      List<RecipeDraft> drafts, Function<String, Optional<Material>> materials) {
    return new Reader(drafts, materials).read();
  }

  private RecipeBook(Map<String, Recipe> recipes) {
    this.recipes = java.util.Collections.unmodifiableMap(recipes);
  }

  /**
   * Returns all recipes.
   *
   * @return the recipes by name, each after those that it needs
   */
  public Map<String, Recipe> recipes() {
    return recipes;
  }

  /**
   * Returns the recipe of a name.
   *
   * @param name the name
   * @return the recipe; empty if the book holds none of this name
   */
  public Optional<Recipe> find(String name) {
    return Optional.ofNullable(recipes.get(name));
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
    private final Function<String, Optional<Material>> materials;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    Reader(List<RecipeDraft> drafts, Function<String, Optional<Material>> materials) {
      this.drafts = drafts;
      this.materials = materials;
    }

    RecipeBook read() {
      for (int i = 0; i < drafts.size(); i++) {
        checkName(i);
      }
      DraftOrder order = DraftOrder.of(needs());
      order.circles().forEach(this::report);
      Map<String, Recipe> built = new LinkedHashMap<>();
      for (String name : order.order()) {
        build(name, built);
      }
      if (!problems.isEmpty()) {
        throw new ProblemException(problems);
      }
      return new RecipeBook(built);
    }

    private void checkName(int index) {
      String name = drafts.get(index).name();
      if (name == null || name.isBlank()) {
        problems.add(
            Problem.of(BatchProblem.NAME_MISSING, name == null ? "" : name)
                .under("/" + index + "/name"));
      } else if (places.putIfAbsent(name, index) != null) {
        problems.add(Problem.of(BatchProblem.NAME_TWICE, name).under("/" + index + "/name"));
      }
    }

    private Map<String, Set<String>> needs() {
      Map<String, Set<String>> needs = new LinkedHashMap<>();
      places.forEach(
          (name, index) -> {
            Set<String> own = new LinkedHashSet<>();
            for (RecipePartDraft part : parts(index)) {
              if (part.recipe() != null) {
                own.add(part.recipe());
              }
            }
            needs.put(name, own);
          });
      return needs;
    }

    private List<RecipePartDraft> parts(int index) {
      List<RecipePartDraft> parts = drafts.get(index).parts();
      return parts == null ? List.of() : parts;
    }

    private void report(List<String> circle) {
      String first = circle.get(0);
      problems.add(
          Problem.of(BatchProblem.CIRCLE, String.join(" → ", circle) + " → " + first)
              .under("/" + places.getOrDefault(first, 0) + "/parts"));
    }

    private void build(String name, Map<String, Recipe> built) {
      int index = places.getOrDefault(name, 0);
      int before = problems.size();
      List<RecipePart> parts = new ArrayList<>();
      List<RecipePartDraft> given = parts(index);
      for (int i = 0; i < given.size(); i++) {
        part(given.get(i), "/" + index + "/parts/" + i, built).ifPresent(parts::add);
      }
      if (problems.size() > before || parts.size() < given.size()) {
        return;
      }
      try {
        built.put(name, Recipe.of(name, parts));
      } catch (ProblemException e) {
        problems.addAll(e.under("/" + index).problems());
      }
    }

    private Optional<RecipePart> part(
        RecipePartDraft draft, String path, Map<String, Recipe> built) {
      Optional<Ingredient> ingredient = ingredient(draft, path, built);
      Double parts = draft.parts();
      if (parts == null) {
        problems.add(Problem.of(BatchProblem.PARTS_MISSING, "").under(path + "/parts"));
        return Optional.empty();
      }
      try {
        return ingredient.map(i -> new RecipePart(i, parts));
      } catch (ProblemException e) {
        problems.addAll(e.under(path + "/parts").problems());
        return Optional.empty();
      }
    }

    private Optional<Ingredient> ingredient(
        RecipePartDraft draft, String path, Map<String, Recipe> built) {
      String material = draft.material();
      String recipe = draft.recipe();
      if ((material == null) == (recipe == null)) {
        problems.add(
            Problem.of(BatchProblem.ONE_OF_TWO, material == null ? "" : material + ", " + recipe)
                .under(path));
        return Optional.empty();
      }
      return material != null ? shelf(material, path) : made(recipe, path, built);
    }

    private Optional<Ingredient> shelf(String id, String path) {
      Optional<Material> found = materials.apply(id);
      if (found.isEmpty()) {
        problems.add(Problem.of(MaterialProblem.UNKNOWN, id).under(path + "/material"));
      }
      return found.map(Ingredient::of);
    }

    /** A recipe that has problems of its own is missing here without another problem. */
    private Optional<Ingredient> made(
        @org.jspecify.annotations.Nullable String name, String path, Map<String, Recipe> built) {
      if (name == null || !places.containsKey(name)) {
        problems.add(
            Problem.of(BatchProblem.UNKNOWN_RECIPE, "" + name)
                .with("known", String.join(", ", places.keySet().stream().limit(12).toList()))
                .under(path + "/recipe"));
        return Optional.empty();
      }
      return Optional.ofNullable(built.get(name)).map(Ingredient::of);
    }
  }
}
