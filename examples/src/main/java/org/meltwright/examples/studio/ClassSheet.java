// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import static org.meltwright.units.MetricUnits.kilograms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.mixture.Composition;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.Piece;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.examples.studio.ClassDay.Paint;
import org.meltwright.examples.studio.ClassDay.Panels;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.QuantityKind;

/** A class, worked out: what is used, made and bought, whether it may be heated, what is loaded. */
final class ClassSheet {

  /** All packages stand on one shelf list, so they are bought in one order. */
  private static final String SUPPLIER = "shop";

  private final ClassDay day;
  private final Studio studio;
  private final Ledger ledger;
  private final ClassPlan plan;
  private final List<PaintSheet> paints;
  private final Map<String, Double> fromSubRecipes = new LinkedHashMap<>();
  private final List<Need> needs;
  private final List<CircuitSheet> circuits;
  private final @Nullable PurchasePlan purchase;

  /**
   * Works out a class.
   *
   * @throws org.meltwright.units.ProblemException if a figure is missing or an amount cannot be
   */
  static ClassSheet of(ClassDay day, Studio studio, List<JobSheet> jobs) {
    return new ClassSheet(day, studio, new Ledger(jobs));
  }

  private ClassSheet(ClassDay day, Studio studio, Ledger ledger) {
    this.day = day;
    this.studio = studio;
    this.ledger = ledger;
    List<Composition> mixes = day.paints().stream().map(p -> net(p.recipe())).toList();
    this.plan = plan(day, mixes);
    this.paints = paints(mixes);
    this.needs = needs();
    this.circuits =
        day.power().circuits().stream()
            .map(c -> CircuitSheet.of(c, day.power().continuousShare()))
            .toList();
    this.purchase = needs.stream().anyMatch(n -> n.missingKilograms() > 0) ? purchase() : null;
  }

  private Composition net(Recipe recipe) {
    return Batch.ofTotal(recipe, kilograms(1), ShelfItem.insolubles(studio.shelf(), recipe))
        .net()
        .composition();
  }

  /** The area at the density of all paints together, solid. */
  private static ClassPlan plan(ClassDay day, List<Composition> mixes) {
    double[] shares = day.paints().stream().mapToDouble(p -> p.share().value()).toArray();
    double density = Composition.blend(mixes, shares).density(DensityBasis.SOLID).centralSi();
    Panels panels = day.panels();
    Coverage coverage =
        Coverage.of(
                QuantityKind.LENGTH.ofSi(panels.film()),
                panels.layers(),
                QuantityKind.DENSITY.ofSi(density))
            .withLoss(panels.loss() == null ? 0 : panels.loss().value());
    Piece pieces = new Piece(panels.perPerson(), panels.width() * panels.height());
    return ClassPlan.of(day.learners(), List.of(pieces), coverage)
        .withLeftInTins(kilograms(panels.leftInTinsKilograms().orElse(0)));
  }

  private List<PaintSheet> paints(List<Composition> mixes) {
    List<PaintSheet> sheets = new ArrayList<>();
    for (int i = 0; i < mixes.size(); i++) {
      Paint paint = day.paints().get(i);
      double needed = plan.totalKilograms() * paint.share().value();
      double left = Math.min(needed, ledger.left(paint.recipe().name()));
      sheets.add(new PaintSheet(paint, mixes.get(i), needed, left, review(paint, mixes.get(i))));
    }
    return sheets;
  }

  /** How a paint is kept hot while the class is in the room; it was made before. */
  private HeatingReview review(Paint paint, Composition mix) {
    HeatingPlan.Builder heating =
        HeatingPlan.builder(mix)
            .heat(paint.source())
            .vessel(paint.vessel())
            .thermometer(paint.thermometer())
            .liquidReading(paint.reading())
            .hoursHeld(day.hours())
            .room(day.about().room())
            .people(day.people());
    if (paint.fill() != null) {
      heating.fillLevel(paint.fill().value());
    }
    tools().forEach(heating::tool);
    return HeatingRules.standard().review(heating.build());
  }

  /** What the shelf has to give for all that is still to be made, less what it holds by then. */
  private List<Need> needs() {
    Map<String, Double> sums = new LinkedHashMap<>();
    paints.forEach(p -> add(sums, p.paint().recipe(), p.toMake()));
    List<Need> all = new ArrayList<>();
    for (ShelfItem item : studio.shelf()) {
      double needed = sums.getOrDefault(item.material().id(), 0.0) + ledger.missing(item);
      if (needed > 0) {
        all.add(new Need(name(item), needed, ledger.left(item)));
      }
    }
    return all;
  }

  /** Needs and packages are called as the sheet prints them. */
  private static String name(ShelfItem item) {
    return item.material().name(Locale.ENGLISH);
  }

  /** Adds the materials of a net mass, recipe in recipe, each with what is lost in making it. */
  private void add(Map<String, Double> sums, Recipe recipe, double kilograms) {
    if (kilograms <= 0) {
      return;
    }
    Batch batch = Batch.ofNet(recipe, kilograms(kilograms), losses(recipe));
    for (BatchLine line : batch.lines()) {
      line.ingredient()
          .material()
          .ifPresent(m -> sums.merge(m.id(), line.massKilograms(), Double::sum));
      line.ingredient()
          .recipe()
          .ifPresent(r -> add(sums, studio.written(r.name()), lessLeft(r, line.massKilograms())));
    }
  }

  /** Insolubles, and the film that a job of today states for the recipe. */
  private Losses losses(Recipe recipe) {
    return studio.jobs().stream()
        .map(Job::batch)
        .filter(batch -> batch.recipe().name().equals(recipe.name()))
        .map(Batch::losses)
        .findFirst()
        .orElseGet(() -> ShelfItem.insolubles(studio.shelf(), recipe));
  }

  /** What has to be made of a recipe inside others, less what today leaves and no paint takes. */
  private double lessLeft(Recipe recipe, double kilograms) {
    String name = recipe.name();
    double asPaint =
        paints.stream().filter(p -> p.name().equals(name)).mapToDouble(PaintSheet::fromToday).sum();
    double there = ledger.left(name) - asPaint - fromSubRecipes.getOrDefault(name, 0.0);
    double taken = Math.max(0, Math.min(there, kilograms));
    if (taken > 0) {
      fromSubRecipes.merge(name, taken, Double::sum);
    }
    return kilograms - taken;
  }

  private PurchasePlan purchase() {
    List<PackageOffer> offers =
        studio.shelf().stream()
            .flatMap(
                item -> item.packages().stream().map(p -> PackageOffer.of(SUPPLIER, name(item), p)))
            .toList();
    FreightTariff freight = day.money().freight();
    SupplierTerms terms =
        freight == null
            ? SupplierTerms.free(SUPPLIER, studio.about().currency())
            : SupplierTerms.of(SUPPLIER, freight);
    return PurchaseQuestion.of(needs, offers, List.of(terms), day.about().date()).cheapest();
  }

  ClassDay day() {
    return day;
  }

  Ledger ledger() {
    return ledger;
  }

  ClassPlan plan() {
    return plan;
  }

  List<PaintSheet> paints() {
    return paints;
  }

  List<Need> classNeeds() {
    return needs;
  }

  /** What today leaves of recipes that go into what is still to make, in kg by name. */
  Map<String, Double> leftIntoPaints() {
    return Collections.unmodifiableMap(fromSubRecipes);
  }

  List<CircuitSheet> circuits() {
    return circuits;
  }

  Optional<PurchasePlan> toBuy() {
    return Optional.ofNullable(purchase);
  }

  /** What is paid for packages and carriage; nothing where all is there. */
  Money bought() {
    return toBuy().map(PurchasePlan::total).orElse(Money.zero(studio.about().currency()));
  }

  Optional<ClassBudget> budget() {
    return day.fee().map(f -> ClassBudget.of(day.learners(), bought(), f.perPerson(), f.fixed()));
  }

  /** What heats beside the pots: the tools, and what hangs on a circuit and is nothing else. */
  List<HeatSource> tools() {
    List<HeatSource> tools = new ArrayList<>(day.power().tools());
    Set<HeatSource> known = new HashSet<>(tools);
    day.paints().forEach(p -> Optional.ofNullable(p.source()).ifPresent(known::add));
    day.power().circuits().stream()
        .flatMap(c -> c.sources().stream())
        .filter(known::add)
        .forEach(tools::add);
    return tools;
  }

  /** The paints of which it is not stated what keeps them hot. */
  List<PaintSheet> withoutSource() {
    return paints.stream().filter(p -> p.paint().source() == null).toList();
  }

  /** The pieces that hang on no circuit of the file, by heat source; a torch needs none. */
  Map<HeatSource, Integer> onNoCircuit() {
    Map<HeatSource, Integer> pieces =
        new TreeMap<>(Comparator.comparing(HeatSource::name).thenComparing(HeatSource::kind));
    day.power().tools().forEach(s -> pieces.merge(s, 1, Integer::sum));
    day.paints()
        .forEach(
            p -> Optional.ofNullable(p.source()).ifPresent(s -> pieces.merge(s, 1, Integer::sum)));
    day.power().circuits().stream()
        .flatMap(c -> c.sources().stream())
        .forEach(s -> pieces.computeIfPresent(s, (same, count) -> count > 1 ? count - 1 : null));
    pieces.keySet().removeIf(s -> s.kind() == HeatSource.Kind.TORCH);
    return pieces;
  }

  /** Whether the class may not be held as planned, or a recipe that it needs may not be made. */
  boolean isBlocked() {
    return paints.stream().anyMatch(p -> p.review().isBlocking()) || !blockedJobs().isEmpty();
  }

  /** The blocked jobs of today that make what the class needs. */
  List<JobSheet> blockedJobs() {
    Set<String> names = new HashSet<>();
    paints.forEach(p -> collect(p.paint().recipe(), names));
    return ledger.jobs().stream()
        .filter(JobSheet::isBlocked)
        .filter(j -> names.contains(j.batch().recipe().name()))
        .toList();
  }

  private void collect(Recipe recipe, Set<String> names) {
    if (names.add(recipe.name())) {
      recipe
          .parts()
          .forEach(
              p ->
                  p.ingredient().recipe().ifPresent(r -> collect(studio.written(r.name()), names)));
    }
  }
}
