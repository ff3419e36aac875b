// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import static java.util.Objects.requireNonNull;
import static java.util.function.Function.identity;

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
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipeDraft.PartDraft;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.StatedAmount;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.examples.studio.day.Chosen;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.file.StudioDraft.RecipeDraft;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MixingRatio;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;

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
  private final Map<String, FieldReader> places = new HashMap<>();
  private final Map<String, Optional<Recipe>> built = new HashMap<>();
  private final Map<String, Chosen> chosen = new HashMap<>();
  private final Map<String, List<Material>> unweighed = new HashMap<>();
  private final Set<String> names = new HashSet<>();
  private final Deque<String> building = new ArrayDeque<>();
  private final Entries<ShelfItem> shelf;
  private final Losses insolubles;
  private final WishBinder wishes;

  StudioRecipes(
      FieldReader file,
      @Nullable List<@Nullable RecipeDraft> recipes,
      Entries<ShelfItem> shelf,
      WishBinder wishes) {
    this.shelf = shelf;
    this.insolubles = ShelfItem.leftBehind(shelf.values());
    this.wishes = wishes;
    Entries.eachAt(file, "recipes", recipes, this::keep);
    List.copyOf(drafts.keySet()).forEach(this::recipe);
  }

  private void keep(FieldReader at, RecipeDraft draft) {
    at.value("name", draft.name());
    at.value("id", draft.id())
        .ifPresent(
            id -> {
              if (drafts.putIfAbsent(id, draft) != null || shelf.contains(id)) {
                isTakenTwice(at, "id", id);
              }
              places.putIfAbsent(id, at);
            });
    if (draft.name() != null && !names.add(draft.name())) {
      isTakenTwice(at, "name", draft.name());
    }
  }

  private static void isTakenTwice(FieldReader at, String field, String text) {
    at.problems().add(Problem.of(StudioProblem.DOUBLE_ID, text).under(at.path() + "/" + field));
  }

  boolean contains(String id) {
    return drafts.containsKey(id);
  }

  List<String> ids() {
    return drafts.keySet().stream().sorted().toList();
  }

  /** The recipe that a field names; empty if there is none or it could not be built. */
  Optional<Recipe> named(FieldReader at, String name, @Nullable String id) {
    return at.read(
            name,
            id,
            text -> {
              if (!contains(text)) {
                throw Entries.unknown(text, ids());
              }
              return recipe(text);
            })
        .flatMap(identity());
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
      known = build(requireNonNull(places.get(id)), id, requireNonNull(drafts.get(id)));
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

  private Optional<Recipe> build(FieldReader at, String id, RecipeDraft draft) {
    long stated =
        Stream.of(draft.ratio(), draft.parts(), draft.wishes()).filter(Objects::nonNull).count();
    if (stated != 1) {
      at.problems()
          .add(
              Problem.of(
                      StudioProblem.ONE_OF,
                      StudioProblem.CHECK.name(stated == 0 ? "none" : "several"))
                  .with("fields", "ratio, parts, wishes")
                  .under(at.path()));
      return Optional.empty();
    }
    String name = draft.name() == null ? "" : draft.name();
    if (draft.wishes() != null) {
      return ofWishes(at.field("wishes"), id, name, draft.wishes());
    }
    return draft.ratio() == null
        ? ofParts(at, name, draft.parts())
        : ofRatio(at, name, draft.ratio());
  }

  private Optional<Recipe> ofWishes(FieldReader at, String id, String name, WishesDraft draft) {
    Optional<Chosen> found = wishes.chosen(at, name, draft, this);
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

  private Optional<Recipe> ofRatio(FieldReader at, String name, String text) {
    Optional<MixingRatio> ratio = at.parse("ratio", text, QuantityParser::parseMixingRatio);
    Optional<Ingredient> first = ratio.flatMap(r -> ingredient(at, "ratio", r.firstSide()));
    Optional<Ingredient> second = ratio.flatMap(r -> ingredient(at, "ratio", r.secondSide()));
    return first.isEmpty() || second.isEmpty()
        ? Optional.empty()
        : at.problems()
            .attempt(
                at.path(),
                () ->
                    Recipe.of(
                        name,
                        List.of(
                            new RecipePart(first.get(), ratio.get().firstParts()),
                            new RecipePart(second.get(), ratio.get().secondParts()))));
  }

  /** The ingredient that a field names: a shelf item, or what another recipe makes. */
  Optional<Ingredient> ingredient(FieldReader at, String name, @Nullable String id) {
    return at.read(name, id, this::ingredient).flatMap(identity());
  }

  /** The ingredient that a text names; a problem is thrown if nothing has the name. */
  Optional<Ingredient> ingredient(String id) {
    return ingredient(id, insolubles);
  }

  private Optional<Ingredient> ingredient(String id, Losses lost) {
    if (shelf.contains(id)) {
      return shelf.get(id).map(item -> Ingredient.of(item.material()));
    }
    if (!drafts.containsKey(id)) {
      List<String> names = new ArrayList<>(shelf.ids());
      names.addAll(ids());
      throw Entries.unknown(id, names);
    }
    if (building.contains(id) || building.size() > MOST_LEVELS) {
      throw new ProblemException(
          Problem.of(StudioProblem.RECIPE_IN_ITSELF, String.join(" > ", building) + " > " + id));
    }
    return recipe(id).map(r -> Ingredient.of(r, lost));
  }

  /** What each item of the shelf leaves behind when it is dissolved. */
  Losses insolubles() {
    return insolubles;
  }

  private Optional<Recipe> ofParts(
      FieldReader at, String name, @Nullable List<@Nullable PartDraft> drafted) {
    List<Ingredient> ingredients = new ArrayList<>();
    List<StatedAmount> amounts = new ArrayList<>();
    Entries.eachAt(
        at,
        "parts",
        drafted,
        (part, d) -> {
          line(part, d).ifPresent(ingredients::add);
          part.problems()
              .attempt(part.path(), () -> d.toAmount(part.parser()))
              .ifPresent(amounts::add);
        });
    boolean areAllRead =
        drafted != null && ingredients.size() == drafted.size() && amounts.size() == drafted.size();
    return areAllRead
        ? at.problems()
            .attempt(at.path(), () -> Recipe.of(name, counted(name, ingredients, amounts)))
        : Optional.empty();
  }

  /** What a line takes: of a lot, if one is named, and with the losses that it states. */
  private Optional<Ingredient> line(FieldReader part, PartDraft d) {
    FieldReader may = part.optional();
    Optional<Losses> losses =
        may.read("losses", d.losses(), l -> l.toLosses(part.parser(), this::onTheShelf));
    Optional<Ingredient> taken =
        part.read("of", d.of(), id -> ingredient(id, losses.orElse(insolubles)))
            .flatMap(identity());
    Optional<String> lot = may.value("lot", d.lot());
    return taken.map(
        in ->
            lot.isPresent() && in.material().isPresent()
                ? Ingredient.of(in.material().get().withLot(lot.get()))
                : in);
  }

  private Material onTheShelf(String id) {
    return shelf
        .get(id)
        .map(ShelfItem::material)
        .orElseThrow(() -> Entries.unknown(id, shelf.ids()));
  }

  private List<RecipePart> counted(
      String name, List<Ingredient> ingredients, List<StatedAmount> amounts) {
    List<RecipePart> parts = new ArrayList<>();
    for (int i = 0; i < ingredients.size(); i++) {
      StatedAmount amount = amounts.get(i).withDensities(b -> densities(b, name, ingredients));
      parts.add(new RecipePart(ingredients.get(i), amount));
    }
    return parts;
  }

  /** The densities of the materials; what has none counts as water, and is kept in mind. */
  private DensityBasis densities(DensityBasis stated, String name, List<Ingredient> ingredients) {
    List<Material> unknown =
        ingredients.stream()
            .flatMap(i -> i.composition().materials().stream())
            .distinct()
            .filter(m -> stated.find(m).isEmpty())
            .toList();
    unweighed.merge(name, unknown, StudioRecipes::joined);
    DensityBasis basis = stated;
    for (Material material : unknown) {
      basis = basis.with(material, QuantityKind.DENSITY.ofSi(AS_WATER));
    }
    return basis;
  }

  private static List<Material> joined(List<Material> some, List<Material> others) {
    return Stream.concat(some.stream(), others.stream()).distinct().toList();
  }
}
