// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.Ingredient;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.examples.studio.Job.Cast;
import org.meltwright.examples.studio.Job.Heating;
import org.meltwright.examples.studio.StudioBinder.Equipment;
import org.meltwright.examples.studio.StudioDraft.CastDraft;
import org.meltwright.examples.studio.StudioDraft.JobDraft;
import org.meltwright.examples.studio.StudioDraft.MakeDraft;
import org.meltwright.units.MassFraction;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/** Makes the jobs of the day from their drafts. */
final class JobBinder {

  private static final double SECONDS_PER_HOUR = 3600;

  private final Entries<ShelfItem> shelf;
  private final RecipeBook book;
  private final Equipment equipment;
  private final Leaves leaves;
  private final Gathered problems;

  JobBinder(
      Entries<ShelfItem> shelf,
      RecipeBook book,
      Equipment equipment,
      Leaves leaves,
      Gathered problems) {
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

  private Optional<Job> job(String path, JobDraft d) {
    Optional<Recipe> recipe = recipe(path + "/recipe", d.recipe());
    Optional<Losses> losses = losses(path, d);
    Optional<Heating> heating = heating(path, d);
    CastDraft drafted = d.cast();
    Optional<Cast> cast =
        drafted == null ? Optional.empty() : cast(path + "/cast", drafted);
    Optional<Double> active = leaves.amount(path + "/activeTime", d.activeTime(), QuantityKind.TIME);
    MakeDraft make = d.make();
    String recipeId = d.recipe();
    if (recipe.isEmpty() || losses.isEmpty() || make == null || recipeId == null) {
      return Optional.empty();
    }
    Optional<Batch> batch =
        batch(path + "/make", make, recipe.get(), losses.get(), cast.orElse(null));
    if (batch.isEmpty() || heating.isEmpty() || (drafted != null && cast.isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(
        new Job(
            recipeId,
            batch.get(),
            heating.get(),
            active.orElse(Double.NaN),
            cast.orElse(null)));
  }

  private Optional<Recipe> recipe(String path, @Nullable String id) {
    if (id == null) {
      return Optional.empty();
    }
    if (!book.contains(id)) {
      problems.add(
          Problem.of(StudioProblem.UNKNOWN_NAME, id)
              .with("names", String.join(", ", book.ids()))
              .under(path));
      return Optional.empty();
    }
    return book.recipe(id);
  }

  private Optional<Losses> losses(String path, JobDraft d) {
    Optional<MassFraction> film = leaves.massFraction(path + "/filmLoss", d.filmLoss());
    Optional<Double> atLeast =
        leaves.amount(path + "/filmLossAtLeast", d.filmLossAtLeast(), QuantityKind.MASS);
    return problems.attempt(
        path,
        () ->
            book.insolubles()
                .withFilm(
                    QuantityKind.MASS.ofSi(atLeast.orElse(0.0)), film.orElse(MassFraction.ZERO)));
  }

  private Optional<Heating> heating(String path, JobDraft d) {
    Optional<Vessel> vessel = equipment.vessels().named(path + "/vessel", d.vessel(), problems);
    Optional<HeatSource> source =
        equipment.heatSources().named(path + "/heatSource", d.heatSource(), problems);
    Optional<Thermometer> thermometer =
        equipment.thermometers().named(path + "/thermometer", d.thermometer(), problems);
    Optional<TemperaturePoint> reading =
        leaves.read(path + "/reading", d.reading(), p -> p::parseTemperature);
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
            held.map(s -> s / SECONDS_PER_HOUR).orElse(Double.NaN)));
  }

  private Optional<Cast> cast(String path, CastDraft d) {
    Optional<Mould> mould = equipment.moulds().named(path + "/mould", d.mould(), problems);
    Optional<VolumeFraction> fill = leaves.volumeFraction(path + "/fill", d.fill());
    Optional<Double> density =
        leaves.amount(path + "/meltDensity", d.meltDensity(), QuantityKind.DENSITY);
    if (mould.isEmpty() || fill.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Cast(mould.get(), fill.get(), density.orElse(Double.NaN)));
  }

  private Optional<Batch> batch(
      String path, MakeDraft make, Recipe recipe, Losses losses, @Nullable Cast cast) {
    long known =
        Stream.of(make.ingredient(), make.total(), make.net(), make.cakes())
            .filter(x -> x != null)
            .count();
    if (known != 1 || (make.mass() != null && make.ingredient() == null)) {
      problems.add(
          Problem.of(StudioProblem.ONE_OF, known + " of them")
              .with("fields", "ingredient (with mass), total, net, cakes")
              .under(path));
      return Optional.empty();
    }
    if (make.ingredient() != null) {
      return ofIngredient(path, make, recipe, losses);
    }
    if (make.cakes() != null) {
      return ofCakes(path + "/cakes", make.cakes(), recipe, losses, cast);
    }
    Optional<Quantity<Mass>> total = mass(path + "/total", make.total());
    Optional<Quantity<Mass>> net = mass(path + "/net", make.net());
    return total.isPresent()
        ? problems.attempt(path + "/total", () -> Batch.ofTotal(recipe, total.get(), losses))
        : net.flatMap(n -> problems.attempt(path + "/net", () -> Batch.ofNet(recipe, n, losses)));
  }

  private Optional<Batch> ofIngredient(
      String path, MakeDraft make, Recipe recipe, Losses losses) {
    Optional<Ingredient> ingredient = book.ingredient(path + "/ingredient", make.ingredient());
    if (ingredient.isEmpty()) {
      return Optional.empty();
    }
    Optional<Recipe> made = ingredient.get().recipe();
    if (make.mass() == null && made.isEmpty()) {
      double left = shelf.get(String.valueOf(make.ingredient())).orElseThrow().stockKilograms();
      return problems.attempt(
          path + "/ingredient",
          () ->
              Batch.usingUp(
                  recipe,
                  ingredient.get().material().orElseThrow(),
                  QuantityKind.MASS.ofSi(left),
                  losses));
    }
    if (make.mass() == null) {
      problems.add(Problem.of(StudioProblem.MASS_NEEDED, "nothing").under(path + "/mass"));
      return Optional.empty();
    }
    return mass(path + "/mass", make.mass())
        .flatMap(m -> problems.attempt(path, () -> holding(recipe, ingredient.get(), m, losses)));
  }

  private static Batch holding(
      Recipe recipe, Ingredient ingredient, Quantity<Mass> mass, Losses losses) {
    return ingredient
        .recipe()
        .map(made -> Batch.ofIngredient(recipe, made, mass, losses))
        .orElseGet(
            () ->
                Batch.ofIngredient(recipe, ingredient.material().orElseThrow(), mass, losses));
  }

  private Optional<Batch> ofCakes(
      String path, int cakes, Recipe recipe, Losses losses, @Nullable Cast cast) {
    return problems.attempt(
        path,
        () -> {
          if (cast == null) {
            throw new ProblemException(
                Problem.of(StudioProblem.CAST_NEEDED, Integer.toString(cakes)));
          }
          Mixture sample = Batch.ofTotal(recipe, QuantityKind.MASS.ofSi(1), losses).net();
          return Batch.ofCakes(recipe, cakes, casting(sample, cast).cake(), losses);
        });
  }

  /** The casting of a net amount, with the measured density of the melt where there is one. */
  static Casting casting(Mixture net, Cast cast) {
    return cast.measuredDensity().isPresent()
        ? Casting.of(
            net.mass(),
            cast.mould(),
            cast.fill(),
            Densities.exactly(cast.measuredDensity().getAsDouble()),
            net.composition().density(DensityBasis.SOLID))
        : Casting.of(net, cast.mould(), cast.fill(), DensityBasis.MELT);
  }

  private Optional<Quantity<Mass>> mass(String path, @Nullable String text) {
    return leaves.amount(path, text, QuantityKind.MASS).map(QuantityKind.MASS::ofSi);
  }
}
