// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import static java.util.function.Function.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.examples.studio.day.Chosen;
import org.meltwright.examples.studio.day.Job;
import org.meltwright.examples.studio.day.Job.Cast;
import org.meltwright.examples.studio.day.Job.Heating;
import org.meltwright.examples.studio.day.Known;
import org.meltwright.examples.studio.day.NotKnown;
import org.meltwright.examples.studio.day.ShelfItem;
import org.meltwright.examples.studio.file.StudioBinder.Equipment;
import org.meltwright.examples.studio.file.StudioDraft.CastDraft;
import org.meltwright.examples.studio.file.StudioDraft.JobDraft;
import org.meltwright.examples.studio.file.StudioDraft.MakeDraft;
import org.meltwright.units.FieldReader;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.QuantityParser;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Makes the jobs of the day from their drafts. */
final class JobBinder {

  private static final double SECONDS_PER_HOUR = 3600;

  private final Entries<ShelfItem> shelf;
  private final StudioRecipes book;
  private final Equipment equipment;

  JobBinder(Entries<ShelfItem> shelf, StudioRecipes book, Equipment equipment) {
    this.shelf = shelf;
    this.book = book;
    this.equipment = equipment;
  }

  List<Job> jobs(FieldReader file, @Nullable List<@Nullable JobDraft> drafts) {
    List<Job> jobs = new ArrayList<>();
    Entries.eachAt(file, "today", drafts, (at, d) -> job(at, d).ifPresent(jobs::add));
    return jobs;
  }

  /** Every text of a job is read, also when its recipe could not be built. */
  private Optional<Job> job(FieldReader at, JobDraft d) {
    FieldReader may = at.optional();
    Optional<Recipe> recipe = book.named(at, "recipe", d.recipe());
    Film film = film(may, d);
    Optional<Heating> heating = heating(at, d);
    Optional<Cast> cast =
        may.read("cast", d.cast(), c -> cast(at.field("cast"), c)).flatMap(identity());
    Optional<Double> active =
        may.parse("activeTime", d.activeTime(), Bounds.amount(QuantityKind.TIME));
    String recipeId = String.valueOf(d.recipe());
    Optional<Stated> stated =
        d.make() == null ? wished(at, recipeId) : stated(at.field("make"), d.make());
    boolean hasBadCast = d.cast() != null && cast.isEmpty();
    if (recipe.isEmpty() || stated.isEmpty() || hasBadCast) {
      return Optional.empty();
    }
    Losses losses =
        book.insolubles().withFilm(QuantityKind.MASS.ofSi(film.atLeastKilograms()), film.share());
    Optional<Known<Batch>> amount =
        amount(at.field("make"), stated.get(), recipe.get(), losses, cast.orElse(null));
    return amount.isEmpty() || heating.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Job(
                recipeId,
                recipe.get(),
                losses,
                amount.get(),
                heating.get(),
                orEmpty(active),
                cast.orElse(null)));
  }

  private record Film(MassFraction share, double atLeastKilograms) {}

  private static Film film(FieldReader may, JobDraft d) {
    return new Film(
        may.parse("filmLoss", d.filmLoss(), QuantityParser::parseMassFraction)
            .orElse(MassFraction.ZERO),
        may.parse("filmLossAtLeast", d.filmLossAtLeast(), Bounds.amount(QuantityKind.MASS))
            .orElse(0.0));
  }

  private Optional<Heating> heating(FieldReader at, JobDraft d) {
    FieldReader may = at.optional();
    Optional<Vessel> vessel = equipment.vessels().named(at, "vessel", d.vessel());
    Optional<HeatSource> source = equipment.heatSources().named(at, "heatSource", d.heatSource());
    Optional<Thermometer> thermometer =
        equipment.thermometers().named(may, "thermometer", d.thermometer());
    Optional<TemperaturePoint> reading = may.parse("reading", d.reading(), Bounds::molten);
    Optional<Double> held = may.parse("held", d.held(), Bounds.amount(QuantityKind.TIME));
    return vessel.isEmpty() || source.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Heating(
                vessel.get(),
                source.get(),
                thermometer.orElse(null),
                reading.orElse(null),
                orEmpty(held.map(s -> s / SECONDS_PER_HOUR))));
  }

  private static OptionalDouble orEmpty(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private Optional<Cast> cast(FieldReader at, CastDraft d) {
    Optional<Mould> mould = equipment.moulds().named(at, "mould", d.mould());
    Optional<VolumeFraction> fill = at.parse("fill", d.fill(), QuantityParser::parseVolumeFraction);
    Optional<Double> density =
        at.optional().parse("meltDensity", d.meltDensity(), Bounds.amount(QuantityKind.DENSITY));
    return mould.isEmpty() || fill.isEmpty()
        ? Optional.empty()
        : Optional.of(new Cast(mould.get(), fill.get(), orEmpty(density)));
  }

  /** The one thing that is stated of a batch; the mass of a number of cakes is their number. */
  private record Stated(Kind kind, double amount, @Nullable String ingredient) {

    enum Kind {
      INGREDIENT,
      ALL_THAT_IS_LEFT,
      TOTAL,
      NET,
      CAKES
    }
  }

  /** Wishes say how much is made; of any other recipe it has to be stated. */
  private Optional<Stated> wished(FieldReader at, String recipeId) {
    Chosen chosen = book.chosen().get(recipeId);
    if (chosen == null && !book.isOfWishes(recipeId)) {
      at.value("make", null);
    }
    return Optional.ofNullable(chosen).map(c -> new Stated(Stated.Kind.TOTAL, c.kilograms(), null));
  }

  private static Optional<Stated> stated(FieldReader at, MakeDraft make) {
    long count =
        Stream.of(make.ingredient(), make.total(), make.net(), make.cakes())
            .filter(Objects::nonNull)
            .count();
    FieldReader may = at.optional();
    Optional<Double> mass = may.parse("mass", make.mass(), Bounds.amount(QuantityKind.MASS));
    Optional<Double> total = may.parse("total", make.total(), Bounds.amount(QuantityKind.MASS));
    Optional<Double> net = may.parse("net", make.net(), Bounds.amount(QuantityKind.MASS));
    Optional<Integer> cakes = may.read("cakes", make.cakes(), n -> Bounds.count(n, "cakes"));
    if (count != 1 || (make.mass() != null && make.ingredient() == null)) {
      at.problems()
          .add(
              Problem.of(
                      StudioProblem.ONE_OF,
                      StudioProblem.CHECK.name(count == 0 ? "none" : "several"))
                  .with("fields", "ingredient (with mass), total, net, cakes")
                  .under(at.path()));
      return Optional.empty();
    }
    if (make.ingredient() != null && make.mass() == null) {
      return Optional.of(new Stated(Stated.Kind.ALL_THAT_IS_LEFT, 0, make.ingredient()));
    }
    return Stream.of(
            mass.map(m -> new Stated(Stated.Kind.INGREDIENT, m, make.ingredient())),
            total.map(m -> new Stated(Stated.Kind.TOTAL, m, null)),
            net.map(m -> new Stated(Stated.Kind.NET, m, null)),
            cakes.map(n -> new Stated(Stated.Kind.CAKES, n, null)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** How much is made; what is stated is checked also where the shares by mass are not known. */
  private Optional<Known<Batch>> amount(
      FieldReader at, Stated stated, Recipe recipe, Losses losses, @Nullable Cast cast) {
    Optional<NotKnown> unknownShares = book.unknownShares(recipe);
    return batch(at, stated, recipe, losses, cast)
        .map(amount -> unknownShares.map(Known::<Batch>not).orElse(amount));
  }

  private Optional<Known<Batch>> batch(
      FieldReader at, Stated stated, Recipe recipe, Losses losses, @Nullable Cast cast) {
    Quantity<Mass> mass = QuantityKind.MASS.ofSi(stated.amount());
    return switch (stated.kind()) {
      case TOTAL -> at.read("total", mass, m -> Known.of(Batch.ofTotal(recipe, m, losses)));
      case NET -> at.read("net", mass, m -> Known.of(Batch.ofNet(recipe, m, losses)));
      case CAKES -> at.read("cakes", (int) stated.amount(), n -> ofCakes(n, recipe, losses, cast));
      case INGREDIENT ->
          book.ingredient(at, "ingredient", stated.ingredient())
              .flatMap(
                  i ->
                      at.problems()
                          .attempt(
                              at.path(),
                              () -> Known.of(Batch.ofIngredient(recipe, i, mass, losses))));
      case ALL_THAT_IS_LEFT -> usingUp(at, stated, recipe, losses);
    };
  }

  private Optional<Known<Batch>> usingUp(
      FieldReader at, Stated stated, Recipe recipe, Losses losses) {
    Optional<Ingredient> ingredient = book.ingredient(at, "ingredient", stated.ingredient());
    Optional<ShelfItem> item = shelf.get(String.valueOf(stated.ingredient()));
    if (ingredient.isPresent() && item.isEmpty()) {
      at.problems()
          .add(
              Problem.of(StudioProblem.MASS_NEEDED, StudioProblem.CHECK.name("nothing"))
                  .under(at.path() + "/mass"));
    }
    return item.flatMap(
        shelved -> at.read("ingredient", shelved, i -> Known.of(usingUp(recipe, i, losses))));
  }

  private static Batch usingUp(Recipe recipe, ShelfItem item, Losses losses) {
    return Batch.usingUp(
        recipe, item.material(), QuantityKind.MASS.ofSi(item.stockKilograms()), losses);
  }

  private static Known<Batch> ofCakes(
      int cakes, Recipe recipe, Losses losses, @Nullable Cast cast) {
    if (cast == null) {
      throw new ProblemException(Problem.of(StudioProblem.CAST_NEEDED, Integer.toString(cakes)));
    }
    Mixture sample = Batch.ofTotal(recipe, QuantityKind.MASS.ofSi(1), losses).net();
    return cast.casting(sample).map(c -> Batch.ofCakes(recipe, cakes, c.cake(), losses));
  }
}
