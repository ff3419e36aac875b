// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.StatedAmount;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.examples.studio.day.Chosen;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.file.StudioDraft.PartDraft;
import org.meltwright.examples.studio.file.StudioDraft.RecipeDraft;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;

/**
 * The recipes of a studio file, each built after those that it calls for.
 *
 * <p>What one recipe makes goes into another without its insolubles: it has been strained.
 */
final class StudioRecipes {

  /** Deeper nesting is a slip, and would be a burden to read. */
  private static final int MOST_LEVELS = 50;

  /** The kg/m³ that an unknown density counts as in a review; no weight is worked out from it. */
  private static final double AS_WATER = 1000;

  private final Map<String, RecipeDraft> drafts = new HashMap<>();
  private final Map<String, String> paths = new HashMap<>();
  private final Map<String, Optional<Recipe>> built = new HashMap<>();
  private final Map<String, Chosen> chosen = new HashMap<>();
  private final Map<String, List<Material>> unweighed = new HashMap<>();
  private final Set<String> names = new HashSet<>();
  private final Deque<String> building = new ArrayDeque<>();
  private final Entries<ShelfItem> shelf;
  private final Losses insolubles;
  private final WishBinder wishes;
  private final Leaves leaves;
  private final Problems problems;

  StudioRecipes(
      @Nullable List<RecipeDraft> recipes,
      Entries<ShelfItem> shelf,
      WishBinder wishes,
      Leaves leaves,
      Problems problems) {
    this.shelf = shelf;
    this.insolubles = ShelfItem.leftBehind(shelf.values());
    this.wishes = wishes;
    this.leaves = leaves;
    this.problems = problems;
    List<RecipeDraft> all = recipes == null ? List.of() : recipes;
    for (int i = 0; i < all.size(); i++) {
      RecipeDraft draft = all.get(i);
      String id = draft == null ? null : draft.id();
      if (draft != null && id != null) {
        keep("/recipes/" + i, id, draft);
      }
    }
    List.copyOf(drafts.keySet()).forEach(this::recipe);
  }

  private void keep(String path, String id, RecipeDraft draft) {
    if (drafts.putIfAbsent(id, draft) != null || shelf.contains(id)) {
      problems.add(Problem.of(StudioProblem.DOUBLE_ID, id).under(path + "/id"));
    }
    if (draft.name() != null && !names.add(draft.name())) {
      problems.add(Problem.of(StudioProblem.DOUBLE_ID, draft.name()).under(path + "/name"));
    }
    paths.putIfAbsent(id, path);
  }

  boolean contains(String id) {
    return drafts.containsKey(id);
  }

  List<String> ids() {
    return drafts.keySet().stream().sorted().toList();
  }

  /** The recipe that a text names; empty if there is none or it could not be built. */
  Optional<Recipe> named(String path, @Nullable String id) {
    if (id == null || id.isBlank()) {
      return Optional.empty();
    }
    if (!contains(id)) {
      problems.add(
          Problem.of(StudioProblem.UNKNOWN_NAME, id)
              .with("names", String.join(", ", ids()))
              .under(path));
      return Optional.empty();
    }
    return recipe(id);
  }

  /**
   * Why the shares by mass of each recipe are not known; none stands for those of which they are.
   */
  Map<Recipe, NotKnown> unknownShares() {
    Map<Recipe, NotKnown> all = new HashMap<>();
    built.values().stream()
        .flatMap(Optional::stream)
        .forEach(recipe -> unknownShares(recipe).ifPresent(why -> all.put(recipe, why)));
    return all;
  }

  /**
   * Why the shares by mass of a recipe that was built are not known; empty if they are.
   *
   * <p>It counts materials by volume, itself or in a recipe within it, of which no density is
   * known: they count as heavy as water, for a review alone.
   */
  Optional<NotKnown> unknownShares(Recipe recipe) {
    List<Material> unknown = unweighed(recipe.name());
    return unknown.isEmpty()
        ? Optional.empty()
        : Optional.of(
            NotKnown.density(
                Phrase.of("not-known.shares", "recipe", recipe.name()),
                DensityBasis.SOLID,
                unknown,
                Phrase.of("not-known.shares.remedy")));
  }

  private List<Material> unweighed(String recipe) {
    return unweighed.getOrDefault(recipe, List.of());
  }

  /** The recipe with an id; empty if it could not be built. */
  Optional<Recipe> recipe(String id) {
    Optional<Recipe> known = built.get(id);
    if (known == null) {
      building.addLast(id);
      known = build(paths.getOrDefault(id, ""), id, Objects.requireNonNull(drafts.get(id), id));
      building.removeLast();
      known.ifPresent(this::keepUnweighed);
      built.put(id, known);
    }
    return known;
  }

  /** What is not known of a recipe is not known of those that call for it. */
  private void keepUnweighed(Recipe recipe) {
    List<Material> all =
        Stream.concat(
                unweighed(recipe.name()).stream(),
                recipe.parts().stream()
                    .flatMap(part -> part.ingredient().recipe().stream())
                    .flatMap(used -> unweighed(used.name()).stream()))
            .distinct()
            .toList();
    unweighed.put(recipe.name(), all);
  }

  private Optional<Recipe> build(String path, String id, RecipeDraft draft) {
    long stated =
        Stream.of(draft.ratio(), draft.parts(), draft.wishes()).filter(Objects::nonNull).count();
    if (stated != 1) {
      problems.add(
          Problem.of(
                  StudioProblem.ONE_OF, StudioProblem.CHECK.name(stated == 0 ? "none" : "several"))
              .with("fields", "ratio, parts, wishes")
              .under(path));
      return Optional.empty();
    }
    String name = draft.name() == null ? "" : draft.name();
    if (draft.wishes() != null) {
      return ofWishes(path + "/wishes", id, name, draft.wishes());
    }
    return draft.ratio() == null
        ? ofParts(path, name, draft.parts())
        : ofRatio(path, name, draft.ratio());
  }

  private Optional<Recipe> ofWishes(String path, String id, String name, WishesDraft draft) {
    Optional<Chosen> found = wishes.chosen(path, name, draft, this);
    found.ifPresent(f -> chosen.put(id, f));
    return found.map(Chosen::recipe);
  }

  /** Whether a recipe is one of wishes, also where they could not be met. */
  boolean isOfWishes(@Nullable String id) {
    RecipeDraft draft = drafts.get(String.valueOf(id));
    return draft != null && draft.wishes() != null;
  }

  /** The recipes that were found for wishes, by id. */
  Map<String, Chosen> chosen() {
    return chosen;
  }

  private Optional<Recipe> ofRatio(String path, String name, @Nullable String text) {
    Optional<MixingRatio> ratio = leaves.read(path + "/ratio", text, p -> p::parseMixingRatio);
    if (ratio.isEmpty()) {
      return Optional.empty();
    }
    Optional<Ingredient> first = ingredient(path + "/ratio", ratio.get().firstSide());
    Optional<Ingredient> second = ingredient(path + "/ratio", ratio.get().secondSide());
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    List<RecipePart> parts =
        List.of(
            new RecipePart(first.get(), ratio.get().firstParts()),
            new RecipePart(second.get(), ratio.get().secondParts()));
    return problems.attempt(path, () -> Recipe.of(name, parts));
  }

  /** The ingredient that a name stands for: a shelf item, or what another recipe makes. */
  Optional<Ingredient> ingredient(String path, @Nullable String id) {
    if (id == null) {
      return Optional.empty();
    }
    if (shelf.contains(id)) {
      return shelf.get(id).map(item -> Ingredient.of(item.material()));
    }
    if (!drafts.containsKey(id)) {
      List<String> names = new ArrayList<>(shelf.ids());
      names.addAll(ids());
      problems.add(
          Problem.of(StudioProblem.UNKNOWN_NAME, id)
              .with("names", String.join(", ", names))
              .under(path));
      return Optional.empty();
    }
    if (building.contains(id) || building.size() > MOST_LEVELS) {
      problems.add(
          Problem.of(StudioProblem.RECIPE_IN_ITSELF, String.join(" > ", building) + " > " + id)
              .under(path));
      return Optional.empty();
    }
    return recipe(id).map(r -> Ingredient.of(r, insolubles));
  }

  /** What each item of the shelf leaves behind when it is dissolved. */
  Losses insolubles() {
    return insolubles;
  }

  private Optional<Recipe> ofParts(String path, String name, @Nullable List<PartDraft> drafted) {
    Lines lines = new Lines();
    List<PartDraft> parts = drafted == null ? List.of() : drafted;
    for (int i = 0; i < parts.size(); i++) {
      lines.add(path + "/parts/" + i, parts.get(i));
    }
    return lines.recipe(path, name);
  }

  /** The lines of a recipe, each as it is stated. */
  private final class Lines {

    private final List<Ingredient> ingredients = new ArrayList<>();
    private final List<Function<DensityBasis, StatedAmount>> amounts = new ArrayList<>();
    private boolean areAllRead = true;
    private boolean isByVolume;

    void add(String path, @Nullable PartDraft part) {
      Optional<Ingredient> ingredient =
          part == null ? Optional.empty() : ingredient(path + "/of", part.of());
      Optional<Function<DensityBasis, StatedAmount>> amount =
          part != null && Portions.isStatedOnce(path, part.share(), part.rest(), problems)
              ? amount(path + "/share", part.share())
              : Optional.empty();
      areAllRead &= ingredient.isPresent() && amount.isPresent();
      ingredient.ifPresent(ingredients::add);
      amount.ifPresent(amounts::add);
    }

    private Optional<Function<DensityBasis, StatedAmount>> amount(
        String path, @Nullable String text) {
      if (text == null) {
        return Optional.of(basis -> StatedAmount.rest());
      }
      if (text.contains("volume")) {
        isByVolume = true;
        return leaves
            .volumeFraction(path, text)
            .map(share -> basis -> StatedAmount.of(share, basis));
      }
      return leaves.massFraction(path, text).map(share -> basis -> StatedAmount.of(share));
    }

    Optional<Recipe> recipe(String path, String name) {
      if (!areAllRead) {
        return Optional.empty();
      }
      DensityBasis basis = isByVolume ? densities(name) : DensityBasis.SOLID;
      List<RecipePart> parts = new ArrayList<>();
      for (int i = 0; i < ingredients.size(); i++) {
        parts.add(new RecipePart(ingredients.get(i), amounts.get(i).apply(basis)));
      }
      return problems.attempt(path, () -> Recipe.of(name, parts));
    }

    /** The densities of the cold materials; what has none counts as water, and is kept in mind. */
    private DensityBasis densities(String name) {
      List<Material> unknown =
          ingredients.stream()
              .flatMap(i -> i.composition().materials().stream())
              .distinct()
              .filter(m -> DensityBasis.SOLID.find(m).isEmpty())
              .toList();
      unweighed.put(name, unknown);
      DensityBasis basis = DensityBasis.SOLID;
      for (Material material : unknown) {
        basis = basis.with(material, QuantityKind.DENSITY.ofSi(AS_WATER));
      }
      return basis;
    }
  }
}
