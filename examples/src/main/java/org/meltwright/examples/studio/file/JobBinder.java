// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
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
import org.meltwright.examples.json.JsonProblem;
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
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.Problems;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Makes the jobs of the day from their drafts. */
final class JobBinder {

  private static final double SECONDS_PER_HOUR = 3600;
  private final Entries<ShelfItem> shelf;
  private final StudioRecipes book;
  private final Equipment equipment;
  private final Leaves leaves;
  private final Problems problems;

  JobBinder(
      Entries<ShelfItem> shelf,
      StudioRecipes book,
      Equipment equipment,
      Leaves leaves,
      Problems problems) {
    this.shelf = shelf;
    this.book = book;
    this.equipment = equipment;
    this.leaves = leaves;
    this.problems = problems;
  }

  List<Job> jobs(@Nullable List<JobDraft> drafts) {
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; drafts != null && i < drafts.size(); i++) {
      if (drafts.get(i) != null) {
        job("/today/" + i, drafts.get(i)).ifPresent(jobs::add);
      }
    }
    return jobs;
  }

  /** Every text of a job is read, also when its recipe could not be built. */
  private Optional<Job> job(String path, JobDraft d) {
    Optional<Recipe> recipe = book.named(path + "/recipe", d.recipe());
    Film film = film(path, d);
    Optional<Heating> heating = heating(path, d);
    CastDraft drafted = d.cast();
    Optional<Cast> cast = drafted == null ? Optional.empty() : cast(path + "/cast", drafted);
    Optional<Double> active =
        leaves.amount(path + "/activeTime", d.activeTime(), QuantityKind.TIME);
    String recipeId = d.recipe();
    Optional<Stated> stated =
        d.make() == null ? wished(path, recipeId) : stated(path + "/make", d.make());
    boolean hasBadCast = drafted != null && cast.isEmpty();
    if (recipe.isEmpty() || stated.isEmpty() || recipeId == null || hasBadCast) {
      return Optional.empty();
    }
    Losses losses =
        book.insolubles().withFilm(QuantityKind.MASS.ofSi(film.atLeastKilograms()), film.share());
    Optional<Known<Batch>> amount =
        amount(path + "/make", stated.get(), recipe.get(), losses, cast.orElse(null));
    if (amount.isEmpty() || heating.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
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

  private Film film(String path, JobDraft d) {
    return new Film(
        leaves.massFraction(path + "/filmLoss", d.filmLoss()).orElse(MassFraction.ZERO),
        leaves
            .amount(path + "/filmLossAtLeast", d.filmLossAtLeast(), QuantityKind.MASS)
            .orElse(0.0));
  }

  private Optional<Heating> heating(String path, JobDraft d) {
    Optional<Vessel> vessel = equipment.vessels().named(path + "/vessel", d.vessel(), problems);
    Optional<HeatSource> source =
        equipment.heatSources().named(path + "/heatSource", d.heatSource(), problems);
    Optional<Thermometer> thermometer =
        equipment.thermometers().named(path + "/thermometer", d.thermometer(), problems);
    Optional<TemperaturePoint> reading = leaves.molten(path + "/reading", d.reading());
    Optional<Double> held = leaves.amount(path + "/held", d.held(), QuantityKind.TIME);
    if (vessel.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
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

  private Optional<Cast> cast(String path, CastDraft d) {
    Optional<Mould> mould = equipment.moulds().named(path + "/mould", d.mould(), problems);
    Optional<VolumeFraction> fill = leaves.volumeFraction(path + "/fill", d.fill());
    Optional<Double> density =
        leaves.amount(path + "/meltDensity", d.meltDensity(), QuantityKind.DENSITY);
    if (mould.isEmpty() || fill.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Cast(mould.get(), fill.get(), orEmpty(density)));
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
  private Optional<Stated> wished(String path, @Nullable String recipeId) {
    Chosen chosen = book.chosen().get(String.valueOf(recipeId));
    if (chosen == null && !book.isOfWishes(recipeId)) {
      problems.add(
          Problem.of(JsonProblem.MISSING_FIELD, StudioProblem.CHECK.name("nothing"))
              .under(path + "/make"));
    }
    return Optional.ofNullable(chosen).map(c -> new Stated(Stated.Kind.TOTAL, c.kilograms(), null));
  }

  private Optional<Stated> stated(String path, MakeDraft make) {
    long count =
        Stream.of(make.ingredient(), make.total(), make.net(), make.cakes())
            .filter(Objects::nonNull)
            .count();
    Optional<Double> mass = leaves.amount(path + "/mass", make.mass(), QuantityKind.MASS);
    Optional<Double> total = leaves.amount(path + "/total", make.total(), QuantityKind.MASS);
    Optional<Double> net = leaves.amount(path + "/net", make.net(), QuantityKind.MASS);
    if (count != 1 || (make.mass() != null && make.ingredient() == null)) {
      problems.add(
          Problem.of(
                  StudioProblem.ONE_OF, StudioProblem.CHECK.name(count == 0 ? "none" : "several"))
              .with("fields", "ingredient (with mass), total, net, cakes")
              .under(path));
      return Optional.empty();
    }
    if (make.ingredient() != null && make.mass() == null) {
      return Optional.of(new Stated(Stated.Kind.ALL_THAT_IS_LEFT, 0, make.ingredient()));
    }
    return Stream.of(
            mass.map(m -> new Stated(Stated.Kind.INGREDIENT, m, make.ingredient())),
            total.map(m -> new Stated(Stated.Kind.TOTAL, m, null)),
            net.map(m -> new Stated(Stated.Kind.NET, m, null)),
            Optional.ofNullable(make.cakes()).map(n -> new Stated(Stated.Kind.CAKES, n, null)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** How much is made; what is stated is checked also where the shares by mass are not known. */
  private Optional<Known<Batch>> amount(
      String path, Stated stated, Recipe recipe, Losses losses, @Nullable Cast cast) {
    Optional<NotKnown> unknownShares = book.unknownShares(recipe);
    return batch(path, stated, recipe, losses, cast)
        .map(amount -> unknownShares.map(Known::<Batch>not).orElse(amount));
  }

  private Optional<Known<Batch>> batch(
      String path, Stated stated, Recipe recipe, Losses losses, @Nullable Cast cast) {
    Quantity<Mass> mass = QuantityKind.MASS.ofSi(stated.amount());
    return switch (stated.kind()) {
      case TOTAL -> attempt(path + "/total", () -> Batch.ofTotal(recipe, mass, losses));
      case NET -> attempt(path + "/net", () -> Batch.ofNet(recipe, mass, losses));
      case CAKES -> ofCakes(path + "/cakes", (int) stated.amount(), recipe, losses, cast);
      case INGREDIENT ->
          book.ingredient(path + "/ingredient", stated.ingredient())
              .flatMap(i -> attempt(path, () -> Batch.ofIngredient(recipe, i, mass, losses)));
      case ALL_THAT_IS_LEFT -> usingUp(path, stated, recipe, losses);
    };
  }

  private Optional<Known<Batch>> attempt(String path, Supplier<Batch> batch) {
    return problems.attempt(path, () -> Known.of(batch.get()));
  }

  private Optional<Known<Batch>> usingUp(String path, Stated stated, Recipe recipe, Losses losses) {
    Optional<Ingredient> ingredient = book.ingredient(path + "/ingredient", stated.ingredient());
    Optional<ShelfItem> item = shelf.get(String.valueOf(stated.ingredient()));
    if (ingredient.isPresent() && item.isEmpty()) {
      problems.add(
          Problem.of(StudioProblem.MASS_NEEDED, StudioProblem.CHECK.name("nothing"))
              .under(path + "/mass"));
    }
    return item.flatMap(
        i ->
            attempt(
                path + "/ingredient",
                () ->
                    Batch.usingUp(
                        recipe, i.material(), QuantityKind.MASS.ofSi(i.stockKilograms()), losses)));
  }

  private Optional<Known<Batch>> ofCakes(
      String path, int cakes, Recipe recipe, Losses losses, @Nullable Cast cast) {
    return problems.attempt(
        path,
        () -> {
          if (cast == null) {
            throw new ProblemException(
                Problem.of(StudioProblem.CAST_NEEDED, Integer.toString(cakes)));
          }
          Mixture sample = Batch.ofTotal(recipe, QuantityKind.MASS.ofSi(1), losses).net();
          return cast.casting(sample).map(c -> Batch.ofCakes(recipe, cakes, c.cake(), losses));
        });
  }
}
