// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import javax.measure.quantity.Volume;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;

/**
 * The pot of one job, before anything is weighed or costed: whether it may be heated as planned.
 *
 * @param job the job
 * @param room how full the pot is
 * @param review the review of its heating
 */
record PotSheet(Job job, VesselRoom room, HeatingReview review) {

  /** A plan takes no larger fill level; far below it the vessel overflows. */
  private static final double FULLEST = 1000;

  /**
   * Reviews a job.
   *
   * @throws org.meltwright.units.ProblemException if a density is missing
   */
  static PotSheet of(Job job, Studio.Place place) {
    VesselRoom room = room(job);
    return new PotSheet(job, room, HeatingRules.standard().review(plan(job, room, place)));
  }

  private static VesselRoom room(Job job) {
    Mixture charge = job.batch().charge();
    return job.casting()
        .flatMap(c -> c.measuredDensity().stream().boxed().findFirst())
        .map(density -> charge.massKilograms() / density)
        .map(v -> new VesselRoom(job.heating().vessel(), exactly(v)))
        .orElseGet(() -> VesselRoom.of(job.heating().vessel(), charge, DensityBasis.MELT));
  }

  private static Estimate<Volume> exactly(double cubicMetres) {
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
    if (job.batch().recipe().parts().stream().anyMatch(PotSheet::isPowder)) {
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

  boolean isBlocked() {
    return review.isBlocking();
  }
}
