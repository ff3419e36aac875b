// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Recipe;
import org.meltwright.core.cost.BatchPrices;
import org.meltwright.core.cost.CostItem;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.cost.ReadyMade;
import org.meltwright.core.cost.UnitPrice;
import org.meltwright.core.material.Material;
import org.meltwright.core.thermal.heat.EnergyUse;
import org.meltwright.core.thermal.heat.HeatAssumptions;
import org.meltwright.core.thermal.heat.HeatDemand;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.examples.studio.page.Say;
import org.meltwright.safety.heating.HeatingLimits;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperaturePoint;

/** What the jobs cost: materials, electricity to melt, and work; recipe in recipe. */
public final class Costing {

  /** The room that everything starts at. */
  public static final TemperaturePoint ROOM = TemperaturePoint.ofCelsius(20);

  /** The share of electricity that reaches a small pan on a large plate; common practice. */
  static final double LEAST_EFFICIENCY = 0.30;

  static final double MOST_EFFICIENCY = 0.60;

  private final Studio studio;
  private final Say say;
  private final List<Job> open;
  private final Set<Recipe> blocked;
  private final BatchPrices prices;

  /**
   * Looks at what is made today; what is blocked is not.
   *
   * @param pots the jobs whose pots could be reviewed
   * @param say the language of what is charged
   */
  Costing(Studio studio, List<PotSheet> pots, Say say) {
    this.studio = studio;
    this.say = say;
    this.open = pots.stream().filter(p -> !p.isBlocked()).map(PotSheet::job).toList();
    this.blocked = blocked(pots);
    this.prices = prices();
  }

  /** The recipes that are blocked in each job that would make them. */
  private static Set<Recipe> blocked(List<PotSheet> pots) {
    Set<Recipe> blocked = new HashSet<>();
    pots.stream().filter(PotSheet::isBlocked).forEach(p -> blocked.add(recipe(p)));
    pots.stream().filter(p -> !p.isBlocked()).forEach(p -> blocked.remove(recipe(p)));
    return blocked;
  }

  private static Recipe recipe(PotSheet pot) {
    return pot.job().recipe();
  }

  /** The names of the blocked recipes that a job calls for, recipe in recipe. */
  List<String> blockedWithin(Job job) {
    Set<Recipe> within = new LinkedHashSet<>();
    collect(job.recipe(), within);
    return within.stream().filter(blocked::contains).map(Recipe::name).sorted().toList();
  }

  private static void collect(Recipe recipe, Set<Recipe> within) {
    recipe.parts().stream()
        .flatMap(part -> part.ingredient().recipe().stream())
        .filter(within::add)
        .forEach(used -> collect(used, within));
  }

  /**
   * What another recipe makes costs what it costs as it is made today, or else, if it is not made
   * or blocked, its materials with their insolubles, without film loss, electricity and work.
   */
  private BatchPrices prices() {
    Map<Material, UnitPrice> shelf = new HashMap<>();
    studio
        .shelf()
        .forEach(item -> item.price().ifPresent(p -> shelf.putIfAbsent(item.material(), p)));
    BatchPrices all = BatchPrices.of(shelf).withLabels(m -> m.name(say.locale()));
    Set<Recipe> made = new HashSet<>();
    for (Job job : open) {
      Optional<Batch> batch = job.batch();
      if (batch.isPresent() && made.add(job.recipe())) {
        all = all.withMade(batch.get(), beside(job, batch.get()));
      }
    }
    return all;
  }

  /** The cost of a job with all that goes into it. */
  Known<CostRollUp> cost(Job job, Batch batch) {
    List<Material> unpriced = prices.unpriced(batch);
    return unpriced.isEmpty()
        ? Known.of(CostRollUp.of(prices.cost(batch, beside(job, batch))))
        : Known.not(NotKnown.price(Phrase.of("not-known.cost"), unpriced));
  }

  private List<CostItem> beside(Job job, Batch batch) {
    List<CostItem> beside = new ArrayList<>();
    electricity(job, batch)
        .flatMap(Known::value)
        .map(heat -> energyUse(heat).energy().central())
        .flatMap(
            energy ->
                perKilowattHour()
                    .map(price -> CostItem.energy(say.words("cost.electricity"), energy, price)))
        .ifPresent(beside::add);
    work(job, studio.about().perHour()).ifPresent(beside::add);
    return beside;
  }

  /**
   * Returns what melting draws from the meter.
   *
   * @param heat the heat that it takes
   * @return the energy
   */
  public static EnergyUse energyUse(HeatDemand heat) {
    return heat.energyUse(LEAST_EFFICIENCY, MOST_EFFICIENCY);
  }

  private Optional<Money> perKilowattHour() {
    return Optional.ofNullable(studio.about().perKilowattHour());
  }

  /** The heat that electricity is counted for; empty if its price is not stated. */
  Optional<Known<HeatDemand>> electricity(Job job, Batch batch) {
    return perKilowattHour().map(price -> heat(job, batch));
  }

  private static Known<HeatDemand> heat(Job job, Batch batch) {
    TemperaturePoint hot =
        Optional.ofNullable(job.heating().reading()).orElse(HeatingLimits.standard().target());
    return Known.of(
        HeatDemand.find(batch.charge(), ROOM, hot, HeatAssumptions.TYPICAL)
            .map(heat -> heat.withVessel(job.heating().vessel())),
        () ->
            NotKnown.clearPoint(
                Phrase.of("not-known.electricity"),
                batch.charge().composition(),
                Phrase.of("not-known.electricity.remedy")));
  }

  private Optional<CostItem> work(Job job, @Nullable Money perHour) {
    return perHour == null || job.activeSeconds().isEmpty()
        ? Optional.empty()
        : Optional.of(
            CostItem.labour(
                say.words("cost.work"),
                QuantityKind.TIME.ofSi(job.activeSeconds().getAsDouble()),
                perHour));
  }

  /** Own against ready-made, on the mass of the net product. */
  Optional<MakeOrBuy> makeOrBuy(Job job, Batch batch, CostRollUp cost) {
    ReadyMade offer = studio.offers().get(job.recipeId());
    return offer == null
        ? Optional.empty()
        : Optional.of(MakeOrBuy.of(cost, batch.net().mass(), List.of(offer)));
  }
}
