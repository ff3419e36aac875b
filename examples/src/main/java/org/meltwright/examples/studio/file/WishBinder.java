// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.cost.BatchPrices;
import org.meltwright.core.cost.ExactMoney;
import org.meltwright.core.cost.Price;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.equipment.Balance;
import org.meltwright.core.material.MassFractionRange;
import org.meltwright.core.material.Material;
import org.meltwright.core.mixture.ShareOf;
import org.meltwright.core.planning.blend.BlendAnswer;
import org.meltwright.core.planning.blend.BlendPart;
import org.meltwright.core.planning.blend.BlendQuestion;
import org.meltwright.core.planning.blend.Wish;
import org.meltwright.examples.studio.day.Chosen;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.day.Studio;
import org.meltwright.examples.studio.file.WishesDraft.BoundsDraft;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.ScaleInterval;

/**
 * Finds the recipe that wishes ask for: of the parts named, what was made earlier counted as paid
 * for, at least cost; without a price for each, nearest to the usual recipe.
 */
final class WishBinder {

  private static final double GRAMS = 1000;

  /** What may go in. */
  private record Candidate(Ingredient ingredient, BlendPart part, Balance balance) {}

  private final Entries<ShelfItem> shelf;
  private final List<Balance> balances;
  private final Map<String, Double> leftovers;
  private final StudioCurrency currency;

  WishBinder(
      Entries<ShelfItem> shelf,
      List<Balance> balances,
      Map<String, Double> leftovers,
      StudioCurrency currency) {
    this.shelf = shelf;
    this.balances = balances;
    this.leftovers = leftovers;
    this.currency = currency;
  }

  /** Returns what was found; empty if something could not be read, or the wishes contradict. */
  Optional<Chosen> chosen(FieldReader at, String name, WishesDraft d, StudioRecipes book) {
    Map<String, Candidate> candidates = candidates(at, d.from(), book);
    Optional<Double> make = at.parse("make", d.make(), Bounds.amount(QuantityKind.MASS));
    Optional<Recipe> usual = usual(at.optional(), d.usual(), book);
    List<Wish> wishes = wishes(at.optional(), d, candidates);
    boolean hasUsual = d.usual() == null || usual.isPresent();
    if (make.isEmpty() || candidates.size() < size(d.from()) || !hasUsual) {
      return Optional.empty();
    }
    Quantity<Mass> mass = QuantityKind.MASS.ofSi(make.get());
    wishes.add(0, Wish.amount(mass));
    return at.attempt(() -> found(name, candidates, wishes, usual.orElse(null), mass));
  }

  private static long size(@Nullable List<@Nullable String> ids) {
    return ids == null ? 1 : Math.max(1, ids.stream().distinct().count());
  }

  /** The usual recipe; one that leads back here is told as any part that does. */
  private static Optional<Recipe> usual(FieldReader may, @Nullable String id, StudioRecipes book) {
    return id != null && book.contains(id)
        ? book.ingredient(may, "usual", id).flatMap(Ingredient::recipe)
        : book.named(may, "usual", id);
  }

  private Map<String, Candidate> candidates(
      FieldReader at, @Nullable List<@Nullable String> ids, StudioRecipes book) {
    Map<String, Candidate> all = new LinkedHashMap<>();
    at.each("from", ids, id -> book.ingredient(id).map(in -> all.put(id, candidate(id, in))));
    return all;
  }

  private Candidate candidate(String id, Ingredient ingredient) {
    if (ingredient.material().isPresent()) {
      return fromShelf(id, ingredient, shelf.get(id).orElseThrow());
    }
    Double left = leftovers.get(id);
    if (left == null) {
      throw new ProblemException(
          Problem.of(StudioProblem.NOTHING_LEFT_OVER, id)
              .with("names", String.join(", ", leftovers.keySet())));
    }
    return leftOver(id, ingredient, left);
  }

  private static Candidate fromShelf(String id, Ingredient ingredient, ShelfItem item) {
    BlendPart part =
        BlendPart.of(id, ingredient.composition())
            .withStock(QuantityKind.MASS.ofSi(item.stockKilograms()));
    return new Candidate(ingredient, item.price().map(part::at).orElse(part), item.balance());
  }

  private Candidate leftOver(String id, Ingredient ingredient, double kilograms) {
    BlendPart part =
        BlendPart.of(id, ingredient.composition())
            .withStock(QuantityKind.MASS.ofSi(kilograms))
            .at(UnitPrice.perKilogram(Money.zero(currency.unit())));
    return new Candidate(ingredient, part, Studio.largest(balances));
  }

  private List<Wish> wishes(FieldReader may, WishesDraft d, Map<String, Candidate> candidates) {
    List<Wish> wishes = new ArrayList<>();
    share(may, "resin", d.resin(), ShareOf.RESIN).ifPresent(wishes::add);
    share(may, "oilPaint", d.oilPaint(), ShareOf.OIL_PAINT).ifPresent(wishes::add);
    share(may, "freeOil", d.freeOil(), ShareOf.FREE_OIL).ifPresent(wishes::add);
    share(may, "pigment", d.pigment(), ShareOf.PIGMENT).ifPresent(wishes::add);
    may.parse("costAtMost", d.costAtMost(), currency::price)
        .map(Price::unitPrice)
        .map(Wish::costAtMost)
        .ifPresent(wishes::add);
    may.read("partsAtMost", d.partsAtMost(), Wish::partsAtMost).ifPresent(wishes::add);
    wishes.addAll(inOrder(may.each("first", d.first(), id -> named(id, candidates))));
    return wishes;
  }

  private static Optional<Wish> share(
      FieldReader may, String name, @Nullable BoundsDraft d, ShareOf what) {
    if (d == null) {
      return Optional.empty();
    }
    FieldReader at = may.field(name).optional();
    Optional<MassFraction> low =
        at.parse("atLeast", d.atLeast(), QuantityParser::parseMassFraction);
    Optional<MassFraction> high = at.parse("atMost", d.atMost(), QuantityParser::parseMassFraction);
    return at.attempt(
        () ->
            Wish.share(
                what,
                new MassFractionRange(
                    low.orElse(MassFraction.ZERO), high.orElse(MassFraction.ONE))));
  }

  private static String named(String id, Map<String, Candidate> candidates) {
    if (!candidates.containsKey(id)) {
      throw Entries.unknown(id, candidates.keySet());
    }
    return id;
  }

  private static List<Wish> inOrder(List<String> first) {
    List<Wish> wishes = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      wishes.add(Wish.useUp(first.get(i)).ranked(i + 1));
    }
    return wishes;
  }

  private Chosen found(
      String name,
      Map<String, Candidate> candidates,
      List<Wish> wishes,
      @Nullable Recipe usual,
      Quantity<Mass> mass) {
    List<BlendPart> parts = candidates.values().stream().map(Candidate::part).toList();
    BlendQuestion question =
        BlendQuestion.of(parts, wishes).weighedTo(coarsest(candidates)).forEveryLot();
    if (usual != null) {
      question = question.withUsual(usual.composition());
    }
    BlendAnswer.Found found = answer(question, parts, usual).require();
    Recipe recipe = Recipe.of(name, lines(found, candidates));
    return new Chosen(recipe, found, usual, saved(found, usual, mass).orElse(null));
  }

  /** Where this is no step of a finer balance, the weighing sheet rounds the line to its own. */
  private static ScaleInterval coarsest(Map<String, Candidate> candidates) {
    return candidates.values().stream()
        .map(Candidate::balance)
        .max(Comparator.comparingDouble(Balance::intervalKilograms))
        .orElseThrow()
        .interval();
  }

  private static List<RecipePart> lines(
      BlendAnswer.Found found, Map<String, Candidate> candidates) {
    return found.lines().stream()
        .filter(line -> line.weighedKilograms() > 0)
        .map(
            line ->
                new RecipePart(
                    requireNonNull(candidates.get(line.part().name())).ingredient(),
                    line.weighedKilograms() * GRAMS))
        .toList();
  }

  private static BlendAnswer answer(
      BlendQuestion question, List<BlendPart> parts, @Nullable Recipe usual) {
    if (parts.stream().allMatch(p -> p.price().isPresent())) {
      return question.cheapest();
    }
    if (usual != null) {
      return question.nearestTo(usual.composition());
    }
    List<String> unpriced =
        parts.stream().filter(p -> p.price().isEmpty()).map(BlendPart::name).toList();
    throw new ProblemException(Problem.of(StudioProblem.NO_AIM, String.join(", ", unpriced)));
  }

  /** Against the usual recipe of the same mass, all of it from the shelf. */
  private Optional<ExactMoney> saved(
      BlendAnswer.Found found, @Nullable Recipe usual, Quantity<Mass> mass) {
    if (usual == null || found.cost().isEmpty()) {
      return Optional.empty();
    }
    Map<Material, UnitPrice> prices = new HashMap<>();
    shelf.values().forEach(i -> i.price().ifPresent(p -> prices.putIfAbsent(i.material(), p)));
    BatchPrices all = BatchPrices.of(prices);
    Batch fresh = Batch.of(usual, mass);
    return all.unpriced(fresh).isEmpty()
        ? Optional.of(all.cost(fresh).cost().minus(found.cost().get()))
        : Optional.empty();
  }
}
