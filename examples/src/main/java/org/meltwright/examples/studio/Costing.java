// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.BatchLine;
import org.meltwright.core.batch.Losses;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.thermal.HeatAssumptions;
import org.meltwright.core.thermal.HeatDemand;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/** What the jobs cost: materials, electricity to melt, and work; recipe in recipe. */
final class Costing {

  /** The room that everything starts at. */
  static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);

  /** The share of electricity that reaches a small pan on a large plate; common practice. */
  static final double LEAST_EFFICIENCY = 0.30;

  static final double MOST_EFFICIENCY = 0.60;

  private final Studio studio;

  Costing(Studio studio) {
    this.studio = studio;
  }

  /** The cost of a job with all that goes into it. */
  CostItem item(Job job) {
    Batch batch = job.batch();
    List<CostItem> parts = new ArrayList<>();
    for (BatchLine line : batch.lines()) {
      parts.add(line(line));
    }
    Money perKilowattHour = studio.about().perKilowattHour();
    if (perKilowattHour != null) {
      parts.add(electricity(job, perKilowattHour));
    }
    work(job, studio.about().perHour()).ifPresent(parts::add);
    return CostItem.group(batch.recipe().name(), parts);
  }

  private CostItem line(BatchLine line) {
    return studio
        .item(line.ingredient())
        .map(
            item ->
                CostItem.material(
                    item.material().name(java.util.Locale.ENGLISH),
                    line.massKilograms(),
                    item.price()))
        .orElseGet(() -> made(line.ingredient().recipe().orElseThrow(), line.massKilograms()));
  }

  /**
   * What another recipe makes costs what making that much of it costs: as it is made today, or else
   * its materials with their insolubles, without film loss, electricity and work.
   */
  private CostItem made(Recipe recipe, double kilograms) {
    Optional<Job> today =
        studio.jobs().stream()
            .filter(j -> j.batch().recipe().name().equals(recipe.name()))
            .findFirst();
    if (today.isPresent()) {
      return item(today.get()).times(kilograms / today.get().batch().net().massKilograms());
    }
    Recipe written = studio.written(recipe.name());
    Losses insolubles = ShelfItem.insolubles(studio.shelf(), written);
    Batch batch = Batch.ofNet(written, QuantityKind.MASS.ofSi(kilograms), insolubles);
    return CostItem.group(recipe.name(), batch.lines().stream().map(this::line).toList());
  }

  private static CostItem electricity(Job job, Money perKilowattHour) {
    TemperaturePoint hot =
        Optional.ofNullable(job.heating().reading()).orElse(TemperatureTable.TARGET);
    double joules =
        HeatDemand.of(job.batch().charge(), ROOM, hot, HeatAssumptions.TYPICAL)
            .withVessel(job.heating().vessel())
            .energyUse(LEAST_EFFICIENCY, MOST_EFFICIENCY)
            .energy()
            .centralSi();
    return CostItem.energy(
        "Electricity to melt", QuantityKind.ENERGY.ofSi(joules), perKilowattHour);
  }

  private static Optional<CostItem> work(Job job, @Nullable Money perHour) {
    return perHour == null || job.activeTime().isEmpty()
        ? Optional.empty()
        : Optional.of(
            CostItem.labour(
                "Work", QuantityKind.TIME.ofSi(job.activeTime().getAsDouble()), perHour));
  }

  /** Own against ready-made, on the mass of the net product. */
  Optional<MakeOrBuy> makeOrBuy(Job job, CostRollUp cost) {
    ReadyMade offer = studio.offers().get(job.recipeId());
    return offer == null
        ? Optional.empty()
        : Optional.of(MakeOrBuy.of(cost, job.batch().net().mass(), List.of(offer)));
  }
}
