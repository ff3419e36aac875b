// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

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
public final class BatchSheet {

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

  /**
   * Returns what is to be made.
   *
   * @return the job
   */
  public Job job() {
    return job;
  }

  /**
   * Returns what goes in and what comes out.
   *
   * @return the batch
   */
  public Batch batch() {
    return batch;
  }

  /**
   * Returns what is weighed, each on its balance.
   *
   * @return the lines
   */
  public WeighingSheet weighing() {
    return weighing;
  }

  /**
   * Returns what is left to cast when the printed lines are weighed.
   *
   * @return the mixture
   */
  public Mixture net() {
    return weighing.net();
  }

  /**
   * Returns the cakes.
   *
   * @return the casting, or why it is not known; empty if nothing is cast
   */
  public Optional<Known<Casting>> casting() {
    return Optional.ofNullable(casting);
  }

  /**
   * Returns what it costs.
   *
   * @return the cost, or why it is not known
   */
  public Known<CostRollUp> cost() {
    return cost;
  }

  /**
   * Returns the heat that the electricity is counted for.
   *
   * @return the heat, or why it is not known; empty if it is not to be counted
   */
  public Optional<Known<HeatDemand>> electricity() {
    return Optional.ofNullable(electricity);
  }

  /**
   * Returns what it saves against a ready-made offer.
   *
   * @return the comparison; empty if there is no offer or no cost
   */
  public Optional<MakeOrBuy> makeOrBuy() {
    return Optional.ofNullable(makeOrBuy);
  }
}
