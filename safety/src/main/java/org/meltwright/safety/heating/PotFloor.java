// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.units.TemperaturePoint;

/**
 * The wetted floor of a pot at its hottest: set point plus overshoot, or what was measured there if
 * that is more. A heated palette has no floor of its own: its surface is the wax. A reading that is
 * not reliable counts upwards only.
 *
 * <p>For example, a plate set to 85 °C that overshoots by 9 K, and one of which that is not stated:
 *
 * <pre>{@code
 * Composition wax = Composition.of(MaterialCatalogue.standard().require("beeswax-yellow"));
 * HeatSource plate =
 *     HeatSource.of("hot plate", HeatSource.Kind.HOT_PLATE).withSetPoint(ofCelsius(85));
 * HeatSource measured = plate.withOvershoot(TemperatureDifference.ofKelvin(9));
 * HeatingPlan.builder(wax).heat(measured).build().potFloor().get().value(); // 94.0 °C
 * PotFloor atLeast = HeatingPlan.builder(wax).heat(plate).build().potFloor().get();
 * atLeast.value(); // 85.0 °C
 * atLeast.isKnown(); // false
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param value the temperature; a lower bound if it is not known
 * @param isKnown whether the overshoot or a reliable reading tells it; else the value is a bare set
 *     point, or a reading that counts upwards only
 */
public record PotFloor(TemperaturePoint value, boolean isKnown) {

  /**
   * Works out the floor of a plan. A heated palette has none of its own; that of a water bath is
   * told by what is measured in the wax, or not at all. Where nobody says what heats, a surface
   * that was read counts as the floor.
   *
   * @param plan the plan
   * @return the floor; empty if there is none or nothing tells it
   */
  static Optional<PotFloor> of(HeatingPlan plan) {
    boolean hasNone =
        plan.heat()
            .map(HeatSource::kind)
            .filter(kind -> kind == Kind.HEATED_PALETTE || kind == Kind.WATER_BATH)
            .isPresent();
    return hasNone ? Optional.empty() : ofPot(plan);
  }

  private static Optional<PotFloor> ofPot(HeatingPlan plan) {
    Optional<TemperaturePoint> stated = plan.heat().flatMap(HeatSource::highestSurface);
    Optional<TemperaturePoint> reading = plan.surfaceReading();
    Optional<TemperaturePoint> least = stated.or(() -> plan.heat().flatMap(HeatSource::setPoint));
    // a reading below the set point cannot be the highest over one thermostat cycle
    boolean readingBinds =
        reading.isPresent() && least.filter(l -> l.isAbove(reading.get())).isEmpty();
    if (readingBinds) {
      return Optional.of(new PotFloor(reading.get(), plan.isSurfaceReadingReliable()));
    }
    return least.map(t -> new PotFloor(t, stated.isPresent()));
  }
}
