// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import static org.meltwright.units.MetricUnits.kilograms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.FreightTariff;
import org.meltwright.core.material.Material;
import org.meltwright.core.planning.ClassBudget;
import org.meltwright.core.planning.ClassPlan;
import org.meltwright.core.planning.Coverage;
import org.meltwright.core.planning.Need;
import org.meltwright.core.planning.PackageOffer;
import org.meltwright.core.planning.PurchasePlan;
import org.meltwright.core.planning.PurchaseQuestion;
import org.meltwright.core.planning.SupplierTerms;
import org.meltwright.examples.studio.day.ClassDay.Panels;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.units.QuantityKind;

/** What a class uses of each paint, what is left to make of it, and what has to be bought. */
public final class Provisions {

  /** All packages stand on one shelf list, so they are bought in one order. */
  private final String supplier;

  private final Locale reader;
  private final ClassDay day;
  private final Studio studio;
  private final Ledger ledger;
  private final ClassPlan plan;
  private final List<PaintNeed> paints;
  private final Map<String, Double> fromSubRecipes = new LinkedHashMap<>();
  private final List<Need> needs;
  private final List<Material> unpriced;
  private final @Nullable PurchasePlan purchase;

  /**
   * Works out what a class uses.
   *
   * @param density the density of all paints together, solid, in kg/m³
   * @param say the language of what is needed and bought
   * @throws org.meltwright.units.ProblemException if an amount cannot be
   */
  Provisions(
      ClassDay day,
      Studio studio,
      Ledger ledger,
      List<PaintSheet> paints,
      double density,
      Say say) {
    this.supplier = say.words("purchase.shop");
    this.reader = say.locale();
    this.day = day;
    this.studio = studio;
    this.ledger = ledger;
    this.plan = plan(day, density);
    this.paints = paints.stream().map(this::need).toList();
    this.needs = needs();
    this.unpriced = unpriced();
    this.purchase = missing().isEmpty() || !unpriced.isEmpty() ? null : purchase();
  }

  private static ClassPlan plan(ClassDay day, double density) {
    Panels panels = day.panels();
    Coverage coverage =
        Coverage.of(
                QuantityKind.LENGTH.ofSi(panels.film()),
                panels.layers(),
                QuantityKind.DENSITY.ofSi(density))
            .withLoss(panels.loss() == null ? 0 : panels.loss().value());
    return ClassPlan.of(day.learners(), List.of(panels.piece()), coverage)
        .withLeftInTins(kilograms(panels.leftInTinsKilograms().orElse(0)));
  }

  private PaintNeed need(PaintSheet sheet) {
    double needed = plan.totalKilograms() * sheet.paint().share().value();
    return new PaintNeed(sheet.paint(), needed, Math.min(needed, ledger.left(sheet.name())));
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
  private String name(ShelfItem item) {
    return item.material().name(reader);
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
      line.ingredient().recipe().ifPresent(r -> add(sums, r, lessLeft(r, line.massKilograms())));
    }
  }

  /** Insolubles, and the film that a job of today states for the recipe. */
  private Losses losses(Recipe recipe) {
    return studio.jobs().stream()
        .filter(job -> job.name().equals(recipe.name()))
        .map(Job::losses)
        .findFirst()
        .orElseGet(() -> studio.insolubles());
  }

  /** What has to be made of a recipe inside others, less what today leaves and no paint takes. */
  private double lessLeft(Recipe recipe, double kilograms) {
    String name = recipe.name();
    double asPaint =
        paints.stream().filter(p -> p.name().equals(name)).mapToDouble(PaintNeed::fromToday).sum();
    double there = ledger.left(name) - asPaint - fromSubRecipes.getOrDefault(name, 0.0);
    double taken = Math.max(0, Math.min(there, kilograms));
    if (taken > 0) {
      fromSubRecipes.merge(name, taken, Double::sum);
    }
    return kilograms - taken;
  }

  /** What has to be bought and has no package, so that nobody can say what it costs. */
  private List<Material> unpriced() {
    List<String> missing = missing();
    return studio.shelf().stream()
        .filter(item -> item.packages().isEmpty() && missing.contains(name(item)))
        .map(ShelfItem::material)
        .toList();
  }

  private List<String> missing() {
    return needs.stream().filter(n -> n.missingKilograms() > 0).map(Need::material).toList();
  }

  private PurchasePlan purchase() {
    List<PackageOffer> offers =
        studio.shelf().stream()
            .flatMap(
                item -> item.packages().stream().map(p -> PackageOffer.of(supplier, name(item), p)))
            .toList();
    FreightTariff freight = day.money().freight();
    SupplierTerms terms =
        freight == null
            ? SupplierTerms.free(supplier, studio.about().currency())
            : SupplierTerms.of(supplier, freight);
    return PurchaseQuestion.of(needs, offers, List.of(terms), day.about().date()).cheapest();
  }

  /**
   * Returns how many panels are painted, and what goes on them.
   *
   * @return the plan
   */
  public ClassPlan plan() {
    return plan;
  }

  /**
   * Returns what the class needs of each paint.
   *
   * @return the needs, in the order of the file
   */
  public List<PaintNeed> paints() {
    return paints;
  }

  /**
   * Returns what the class needs of each material.
   *
   * @return the needs
   */
  public List<Need> classNeeds() {
    return needs;
  }

  /**
   * Returns what today leaves of recipes that go into what is still to make.
   *
   * @return the masses in kg, by name
   */
  public Map<String, Double> leftIntoPaints() {
    return Collections.unmodifiableMap(fromSubRecipes);
  }

  /**
   * Returns the packages to buy.
   *
   * @return the plan; empty if all is there, or if something to buy has no price
   */
  public Optional<PurchasePlan> toBuy() {
    return Optional.ofNullable(purchase);
  }

  /**
   * Returns what is paid for packages and carriage.
   *
   * @return the money, nothing where all is there; or why it is not known
   */
  public Known<Money> bought() {
    return unpriced.isEmpty()
        ? Known.of(toBuy().map(PurchasePlan::total).orElse(Money.zero(studio.about().currency())))
        : Known.not(NotKnown.price(Phrase.of("not-known.packages"), unpriced));
  }

  /**
   * Returns whether all that the class needs is there.
   *
   * @return whether it is
   */
  public boolean isNothingToBuy() {
    return missing().isEmpty();
  }

  /**
   * Returns what the fee has to cover.
   *
   * @return the budget, or why it is not known; empty if no fee is to be worked out
   */
  public Optional<Known<ClassBudget>> budget() {
    return day.fee()
        .map(
            fee ->
                bought().map(b -> ClassBudget.of(day.learners(), b, fee.perPerson(), fee.fixed())));
  }
}
