// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.Casting;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.batch.WeighingSheet;
import org.meltwright.core.cost.CostRollUp;
import org.meltwright.core.cost.MakeOrBuy;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.core.source.Source;
import org.meltwright.core.thermal.WorkingWindow;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.safety.heating.TemperatureTable;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;
import org.meltwright.units.TemperatureDifference;

/** One job, worked out: the review first, then weights, casting and cost. */
final class JobSheet {

  /** How far above its clear point a melt is brushed without setting; common practice. */
  static final TemperatureDifference BRUSH_MARGIN = TemperatureDifference.ofKelvin(10);

  /** The least room between the bounds that can be worked in; common practice. */
  static final TemperatureDifference LEAST_WIDTH = TemperatureDifference.ofKelvin(5);

  /** A plan takes no larger fill level; far below it the vessel overflows. */
  private static final double FULLEST = 1000;

  private final Job job;
  private final WeighingSheet weighing;
  private final VesselRoom room;
  private final HeatingReview review;
  private final WorkingWindow window;
  private final CostRollUp cost;
  private final List<Source> electricitySources;
  private final @Nullable Casting casting;
  private final @Nullable MakeOrBuy makeOrBuy;

  static JobSheet of(Job job, Studio studio, Costing costing) {
    WeighingSheet weighing =
        WeighingSheet.of(job.batch(), line -> studio.balance(line.ingredient()));
    return new JobSheet(job, weighing, studio.place(), costing);
  }

  private JobSheet(Job job, WeighingSheet weighing, Studio.Place place, Costing costing) {
    this.job = job;
    this.weighing = weighing;
    this.room = room(job);
    this.review = HeatingRules.standard().review(plan(job, room, place));
    this.window =
        WorkingWindow.of(
            job.batch().charge().composition(), TemperatureTable.TARGET, BRUSH_MARGIN, LEAST_WIDTH);
    this.cost = CostRollUp.of(costing.item(job));
    this.electricitySources = costing.electricitySources(job);
    this.casting = job.casting().map(c -> JobBinder.casting(job.batch().net(), c)).orElse(null);
    this.makeOrBuy = costing.makeOrBuy(job, cost).orElse(null);
  }

  private static VesselRoom room(Job job) {
    Mixture charge = job.batch().charge();
    return job.casting()
        .flatMap(c -> c.measuredDensity().stream().boxed().findFirst())
        .map(density -> charge.massKilograms() / density)
        .map(v -> new VesselRoom(job.heating().vessel(), exactly(v)))
        .orElseGet(() -> VesselRoom.of(job.heating().vessel(), charge, DensityBasis.MELT));
  }

  private static Estimate<javax.measure.quantity.Volume> exactly(double cubicMetres) {
    return new Estimate<>(QuantityKind.VOLUME, cubicMetres, cubicMetres, cubicMetres);
  }

  private static HeatingPlan plan(Job job, VesselRoom room, Studio.Place place) {
    Job.Heating heating = job.heating();
    HeatingPlan.Builder plan =
        HeatingPlan.builder(job.batch().charge().composition())
            .heat(heating.source())
            .vessel(heating.vessel())
            .fillLevel(Math.min(room.highestFillLevel(), FULLEST))
            .thermometer(heating.thermometer())
            .liquidReading(heating.reading())
            .room(place.room())
            .people(place.people());
    if (job.batch().recipe().parts().stream().anyMatch(JobSheet::isPowder)) {
      plan.circumstance(Circumstance.DRY_POWDER);
    }
    if (!Double.isNaN(heating.hoursHeld())) {
      plan.hoursHeld(heating.hoursHeld());
    }
    return plan.build();
  }

  /** A pigment or filler from the shelf is weighed out dry. */
  private static boolean isPowder(RecipePart part) {
    return part.ingredient()
        .material()
        .filter(m -> m.family() == MaterialFamily.PIGMENT || m.family() == MaterialFamily.FILLER)
        .isPresent();
  }

  Job job() {
    return job;
  }

  Batch batch() {
    return job.batch();
  }

  WeighingSheet weighing() {
    return weighing;
  }

  /** What is left to cast when the printed lines are weighed. */
  Mixture net() {
    return weighing.net();
  }

  VesselRoom room() {
    return room;
  }

  HeatingReview review() {
    return review;
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

  Optional<Casting> casting() {
    return Optional.ofNullable(casting);
  }

  Optional<MakeOrBuy> makeOrBuy() {
    return Optional.ofNullable(makeOrBuy);
  }

  boolean isBlocked() {
    return review.isBlocking();
  }
}
