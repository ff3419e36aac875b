// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.day;

import java.util.Optional;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.batch.RecipePart;
import org.meltwright.core.batch.VesselRoom;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.material.MaterialFamily;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.examples.studio.page.Phrase;
import org.meltwright.safety.heating.Circumstance;
import org.meltwright.safety.heating.HeatingPlan;
import org.meltwright.safety.heating.HeatingPlanBuilder;
import org.meltwright.safety.heating.HeatingReview;
import org.meltwright.safety.heating.HeatingRules;
import org.meltwright.units.Estimate;
import org.meltwright.units.QuantityKind;

/**
 * The pot of one job, before anything is weighed or costed: whether it may be heated as planned. It
 * needs no density, price or amount; what is not known of them stands beside the review.
 */
public final class PotSheet {

  private static final Phrase ROOM = Phrase.of("not-known.room");

  private final Job job;
  private final Known<VesselRoom> room;
  private final @Nullable NotKnown shares;
  private final HeatingReview review;

  /** Reviews a job. */
  PotSheet(Job job, Studio studio) {
    this.job = job;
    this.room =
        job.batch()
            .map(batch -> Known.of(room(job, batch), () -> unknownRoom(job)))
            .orElseGet(() -> Known.not(unknownAmount()));
    this.shares = studio.unknownShares(job.recipe()).orElse(null);
    this.review = HeatingRules.standard().review(plan(studio.place()));
  }

  private static Optional<VesselRoom> room(Job job, Batch batch) {
    Vessel vessel = job.heating().vessel();
    return job.casting()
        .flatMap(c -> c.measuredDensity().stream().boxed().findFirst())
        .map(density -> new VesselRoom(vessel, exactly(batch.charge().massKilograms() / density)))
        .or(() -> VesselRoom.find(vessel, batch.charge(), DensityBasis.MELT));
  }

  private static NotKnown unknownRoom(Job job) {
    return NotKnown.density(
        ROOM,
        DensityBasis.MELT,
        job.mix().materials(),
        Phrase.of(
            job.casting().isPresent() ? "not-known.room.remedy-of-cast" : "not-known.room.remedy"));
  }

  private static NotKnown unknownAmount() {
    return new NotKnown(ROOM, Phrase.of("not-known.amount"), Phrase.of("not-known.amount.remedy"));
  }

  private static Estimate<Volume> exactly(double cubicMetres) {
    return new Estimate<>(QuantityKind.VOLUME, cubicMetres, cubicMetres, cubicMetres);
  }

  private HeatingPlan plan(Studio.Place place) {
    Job.Heating heating = job.heating();
    HeatingPlanBuilder plan =
        HeatingPlan.builder(job.mix()).heat(heating.source()).vessel(heating.vessel());
    Optional.ofNullable(heating.thermometer()).ifPresent(plan::thermometer);
    Optional.ofNullable(heating.reading()).ifPresent(plan::liquidReading);
    Optional.ofNullable(place.room()).ifPresent(plan::room);
    Optional.ofNullable(place.people()).ifPresent(plan::people);
    room.value()
        .ifPresent(r -> plan.filled(heating.vessel(), QuantityKind.VOLUME.ofSi(r.melt().highSi())));
    if (job.recipe().parts().stream().anyMatch(PotSheet::isPowder)) {
      plan.circumstance(Circumstance.DRY_POWDER);
    }
    heating.hoursHeld().ifPresent(plan::hoursHeld);
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

  /**
   * Returns how full the vessel is.
   *
   * @return the room, or why it is not known
   */
  public Known<VesselRoom> room() {
    return room;
  }

  /**
   * Returns why the mix that was reviewed is a guess.
   *
   * @return the reason; empty if its shares by mass are known
   */
  public Optional<NotKnown> unknownShares() {
    return Optional.ofNullable(shares);
  }

  HeatingReview review() {
    return review;
  }

  boolean isBlocked() {
    return review.isBlocked();
  }
}
