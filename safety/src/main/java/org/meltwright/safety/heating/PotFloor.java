// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating;

import java.util.Optional;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.HeatSource.Kind;
import org.meltwright.units.TemperaturePoint;

/**
 * The wetted floor of a pot at its hottest: set point plus overshoot, or what was measured there if
 * that is more. A heated palette has no floor of its own: its surface is the wax.
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
 * @param isKnown whether the overshoot or a reading is stated; else the value is the bare set point
 */
public record PotFloor(TemperaturePoint value, boolean isKnown) {

  /** A water bath is no hotter than water boils at sea level, as long as there is water in it. */
  private static final TemperaturePoint BOILING_BATH = TemperaturePoint.ofCelsius(100);

  /**
   * Works out the floor of a plan.
   *
   * @param plan the plan
   * @return the floor; empty if there is none or nothing tells it
   */
  static Optional<PotFloor> of(HeatingPlan plan) {
    return plan.heat()
        .filter(heat -> heat.kind() != Kind.HEATED_PALETTE)
        .flatMap(heat -> of(heat, plan.surfaceReading()));
  }

  private static Optional<PotFloor> of(HeatSource heat, Optional<TemperaturePoint> reading) {
    Optional<TemperaturePoint> setPoint = heat.setPoint();
    Optional<TemperaturePoint> stated = heat.highestSurface();
    if (stated.isPresent()) {
      return Optional.of(new PotFloor(higher(stated.get(), reading), true));
    }
    if (reading.isPresent()) {
      // a reading below the set point cannot be the highest over one thermostat cycle
      TemperaturePoint floor = higher(reading.get(), setPoint);
      return Optional.of(new PotFloor(floor, floor.equals(reading.get())));
    }
    if (heat.kind() == Kind.WATER_BATH && setPoint.isEmpty()) {
      return Optional.of(new PotFloor(BOILING_BATH, true));
    }
    return setPoint.map(t -> new PotFloor(t, false));
  }

  private static TemperaturePoint higher(TemperaturePoint one, Optional<TemperaturePoint> other) {
    return other.filter(o -> o.isAbove(one)).orElse(one);
  }
}
