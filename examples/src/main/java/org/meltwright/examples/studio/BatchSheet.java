// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.thermal.heat.HeatDemand;

/** A batch of a known amount, worked out: weights, casting and cost, as far as they are known. */
final class BatchSheet {

  private final Job job;
  private final Batch batch;
  private final WeighingSheet weighing;
  private final @Nullable Known<Casting> casting;
  private final Known<CostRollUp> cost;
  private final @Nullable Known<HeatDemand> electricity;
  private final @Nullable MakeOrBuy makeOrBuy;

  BatchSheet(Job job, Batch batch, Studio studio, Costing costing) {
    this.job = job;
    this.batch = batch;
    this.weighing = WeighingSheet.of(batch, line -> studio.balance(line.ingredient()));
    this.casting = job.casting().map(cast -> cast.casting(batch.net())).orElse(null);
    this.cost = costing.cost(job, batch);
    this.electricity = costing.electricity(job, batch).orElse(null);
    this.makeOrBuy = cost.value().flatMap(c -> costing.makeOrBuy(job, batch, c)).orElse(null);
  }

  Job job() {
    return job;
  }

  Batch batch() {
    return batch;
  }

  WeighingSheet weighing() {
    return weighing;
  }

  /** What is left to cast when the printed lines are weighed. */
  Mixture net() {
    return weighing.net();
  }

  /** The cakes; empty if nothing is cast. */
  Optional<Known<Casting>> casting() {
    return Optional.ofNullable(casting);
  }

  Known<CostRollUp> cost() {
    return cost;
  }

  /** The heat that the electricity is counted for; empty if it is not to be counted. */
  Optional<Known<HeatDemand>> electricity() {
    return Optional.ofNullable(electricity);
  }

  Optional<MakeOrBuy> makeOrBuy() {
    return Optional.ofNullable(makeOrBuy);
  }
}
