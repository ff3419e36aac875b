// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.batch;

import static org.meltwright.core.batch.BatchProblem.CHECK;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Volume;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.core.explain.Drivers;
import org.meltwright.core.explain.EstimateInput;
import org.meltwright.core.explain.Explanation;
import org.meltwright.core.explain.Symbol;
import org.meltwright.core.mixture.DensityBasis;
import org.meltwright.core.mixture.Mixture;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Estimate;
import org.meltwright.units.Limit;
import org.meltwright.units.VolumeFraction;

/**
 * The room of a melt in its vessel: how full it is, and the expansion space above.
 *
 * <p>Reported here; what is too full is for who reviews a plan to say.
 *
 * <p>For example, 900 g of molten beeswax, 1.09 l, in a pot of 1.5 l:
 *
 * <pre>{@code
 * Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
 * Vessel pot =
 *     Vessel.of(
 *         "pot", VesselMaterial.STAINLESS_STEEL, Lining.NONE, Vessel.Bottom.FLAT,
 *         litres(1.5), grams(600));
 * VesselRoom room = VesselRoom.of(pot, Mixture.of(wax, grams(900)), DensityBasis.MELT);
 * room.highestFillLevel(); // 0.73
 * VolumeFraction twoThirds = VolumeFraction.of(2.0 / 3);
 * room.exceeds(twoThirds); // true
 * room.shareThatFits(twoThirds); // 0.91
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param vessel the vessel
 * @param melt the volume of the melt in it
 */
public record VesselRoom(Vessel vessel, Estimate<Volume> melt) {

  private static final Symbol VOLUME = Symbol.beside(VesselRoom.class, "volume of the melt", "m³");
  private static final Symbol FILL = Symbol.beside(VesselRoom.class, "fill level", "");

  /** Draws a problem if the volume is negative or not finite. */
  public VesselRoom {
    CHECK.between(melt.lowSi(), 0, 1e6, "volume of the melt in m³");
    CHECK.between(melt.highSi(), 0, 1e6, "volume of the melt in m³");
  }

  /**
   * Returns the room of a mixture in a vessel. Where a density of one's own does not agree with the
   * one in print, the volume spans both.
   *
   * @param vessel the vessel
   * @param mixture what is in it
   * @param melt the state of the melt, and where its densities come from
   * @return the room
   * @throws org.meltwright.units.ProblemException if a density is missing
   */
  public static VesselRoom of(Vessel vessel, Mixture mixture, DensityBasis melt) {
    return new VesselRoom(vessel, mixture.volume(melt.forRules()));
  }

  /**
   * Returns the room of a mixture in a vessel, if its volume is known.
   *
   * @param vessel the vessel
   * @param mixture what is in it
   * @param melt the state of the melt, and where its densities come from
   * @return the room; empty if a density is missing, and {@link DensityBasis#unknown} names whose
   */
  public static Optional<VesselRoom> find(Vessel vessel, Mixture mixture, DensityBasis melt) {
    return melt.findTable(mixture.composition().materials())
        .map(known -> of(vessel, mixture, melt));
  }

  /**
   * Returns the fill level with the density at the middle of its range.
   *
   * @return the fill level, where 1 is full to the brim
   */
  public double fillLevel() {
    return vessel.fillLevel(melt.centralSi());
  }

  /**
   * Returns the fill level with the density at its low end: the safe one.
   *
   * @return the fill level, where 1 is full to the brim
   */
  public double highestFillLevel() {
    return vessel.fillLevel(melt.highSi());
  }

  /**
   * Returns what the fill level hangs on. The highest fill level is that of the worst range.
   *
   * @return the drivers: the volume of the melt, which its density decides
   */
  public Drivers fillLevelDrivers() {
    EstimateInput volume = EstimateInput.of(VOLUME, melt, EstimateInput.Direction.RAISES);
    return Drivers.of(FILL, List.of(volume), values -> vessel.fillLevel(values.of(volume)));
  }

  /**
   * Returns the expansion space that is surely left.
   *
   * @return the volume between melt and brim in m³; negative if it may overflow
   */
  public double expansionSpaceCubicMetres() {
    return vessel.capacityCubicMetres() - melt.highSi();
  }

  /**
   * Tells whether the vessel may be fuller than a limit, at the safe end of the range.
   *
   * @param limit the fill level allowed, itself included
   * @return whether it may be above
   */
  public boolean exceeds(VolumeFraction limit) {
    return Limit.exceeds(highestFillLevel(), limit.value());
  }

  /**
   * Returns the share of this melt that the vessel takes up to a limit.
   *
   * @param limit the fill level allowed
   * @return the share, at most 1: above two thirds full by a tenth it is 0.91
   */
  public double shareThatFits(VolumeFraction limit) {
    double level = highestFillLevel();
    return level > 0 ? Math.min(1, limit.value() / level) : 1;
  }

  /**
   * Returns how the fill level comes about.
   *
   * @return the explanation
   */
  public Explanation explanation() {
    Bilingual highest = CHECK.name("highest");
    return BatchWorking.builder("working.room", Bilingual.of(vessel.name()))
        .given(BatchWorking.MELT_VOLUME, melt.centralSi())
        .given(BatchWorking.MELT_VOLUME.of(highest), melt.highSi())
        .stated(BatchWorking.CAPACITY, vessel.capacityCubicMetres())
        .step(BatchWorking.FILL, fillLevel())
        .step(BatchWorking.FILL, highest, highestFillLevel())
        .build();
  }
}
