// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.WorkingWindow;
import org.meltwright.safety.heating.HeatingReview;

/** One job, worked out: the review first, then weights, casting and cost. */
final class JobSheet {

  private final PotSheet pot;
  private final WeighingSheet weighing;
  private final WorkingWindow window;
  private final CostRollUp cost;
  private final List<Source> electricitySources;
  private final List<String> blockedRecipes;
  private final @Nullable Casting casting;
  private final @Nullable MakeOrBuy makeOrBuy;

  static JobSheet of(PotSheet pot, Studio studio, Costing costing) {
    WeighingSheet weighing =
        WeighingSheet.of(pot.job().batch(), line -> studio.balance(line.ingredient()));
    return new JobSheet(pot, weighing, costing);
  }

  private JobSheet(PotSheet pot, WeighingSheet weighing, Costing costing) {
    Job job = pot.job();
    this.pot = pot;
    this.weighing = weighing;
    this.window = pot.review().workingWindow();
    this.cost = CostRollUp.of(costing.item(job));
    this.electricitySources = costing.electricitySources(job);
    this.blockedRecipes = costing.blockedWithin(job);
    this.casting = job.casting().map(c -> JobBinder.casting(job.batch().net(), c)).orElse(null);
    this.makeOrBuy = costing.makeOrBuy(job, cost).orElse(null);
  }

  Job job() {
    return pot.job();
  }

  Batch batch() {
    return pot.job().batch();
  }

  WeighingSheet weighing() {
    return weighing;
  }

  /** What is left to cast when the printed lines are weighed. */
  Mixture net() {
    return weighing.net();
  }

  VesselRoom room() {
    return pot.room();
  }

  HeatingReview review() {
    return pot.review();
  }

  WorkingWindow window() {
    return window;
  }

  CostRollUp cost() {
    return cost;
  }

  /** What the electricity rests on; empty if it is not counted. */
  List<Source> electricitySources() {
    return electricitySources;
  }

  /** The recipes within this one that are blocked today and made in no other way, by name. */
  List<String> blockedRecipes() {
    return blockedRecipes;
  }

  Optional<Casting> casting() {
    return Optional.ofNullable(casting);
  }

  Optional<MakeOrBuy> makeOrBuy() {
    return Optional.ofNullable(makeOrBuy);
  }

  boolean isBlocked() {
    return pot.isBlocked();
  }
}
