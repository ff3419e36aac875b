// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.meltwright.core.batch.Batch;
import org.meltwright.core.equipment.HeatSource;
import org.meltwright.core.equipment.Mould;
import org.meltwright.core.equipment.Thermometer;
import org.meltwright.core.equipment.Vessel;
import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.VolumeFraction;

/**
 * Something to make today: a batch, and what it is melted, measured and cast with.
 *
 * @param recipeId the id of its recipe in the file
 * @param batch how much of it
 * @param heating what it is melted with
 * @param activeSeconds how long someone works on it, in s; NaN if not stated
 * @param cast how it is cast; null if it stays in the pot
 */
record Job(
    String recipeId, Batch batch, Heating heating, double activeSeconds, @Nullable Cast cast) {

  /**
   * What a batch is melted with.
   *
   * @param vessel the vessel
   * @param source what heats it
   * @param thermometer the thermometer; null if there is none
   * @param reading what the thermometer shows; null if not stated
   * @param hoursHeld how long it is kept molten, in h; NaN if not stated
   */
  record Heating(
      Vessel vessel,
      HeatSource source,
      @Nullable Thermometer thermometer,
      @Nullable TemperaturePoint reading,
      double hoursHeld) {}

  /**
   * How a batch is cast.
   *
   * @param mould the mould
   * @param fill how full each cup is poured
   * @param meltDensity the measured density of the melt in kg/m³; NaN if the catalogue's is used
   */
  record Cast(Mould mould, VolumeFraction fill, double meltDensity) {

    OptionalDouble measuredDensity() {
      return Double.isNaN(meltDensity) ? OptionalDouble.empty() : OptionalDouble.of(meltDensity);
    }
  }

  Optional<Cast> casting() {
    return Optional.ofNullable(cast);
  }

  OptionalDouble activeTime() {
    return Double.isNaN(activeSeconds) ? OptionalDouble.empty() : OptionalDouble.of(activeSeconds);
  }
}
