// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.equipment;

import static org.meltwright.core.equipment.EquipmentProblem.CHECK;

import org.meltwright.units.TemperatureDifference;

/**
 * A thermometer: where it measures, in what steps, and how far it may be off.
 *
 * <p>For example, how hot a melt may be when a probe that may be 2 K off shows 88 °C:
 *
 * <pre>{@code
 * TemperatureDifference tenth = TemperatureDifference.ofKelvin(0.1);
 * TemperatureDifference off = TemperatureDifference.ofKelvin(2);
 * Thermometer probe = new Thermometer("probe", Thermometer.Place.LIQUID, tenth, off);
 * ofCelsius(88).plus(probe.tolerance()); // 90.0 °C
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param name what the studio calls it
 * @param place where it measures
 * @param interval its scale interval, above zero
 * @param tolerance how far it may be off, either way, not negative
 */
public record Thermometer(
    String name, Place place, TemperatureDifference interval, TemperatureDifference tolerance) {

  /** Where a thermometer measures. */
  public enum Place {
    /** In the melt itself. */
    LIQUID,
    /** On the surface of a plate or a heated palette. */
    SURFACE,
    /** In the air, as at the outlet of a heat gun. */
    AIR
  }

  /**
   * Draws a problem if the name is blank, the interval is not above zero or the tolerance is
   * negative.
   */
  public Thermometer {
    CHECK.named(name, "thermometer");
    checkedInterval(interval);
    checkedTolerance(tolerance);
  }

  /**
   * Returns this thermometer as it is written down.
   *
   * @return the draft, which reads back as an equal thermometer
   */
  public ThermometerDraft toDraft() {
    return ThermometerDraft.of(this);
  }

  static TemperatureDifference checkedInterval(TemperatureDifference interval) {
    CHECK.between(interval.kelvin(), 1e-6, 1000, "scale interval in K");
    return interval;
  }

  static TemperatureDifference checkedTolerance(TemperatureDifference tolerance) {
    CHECK.between(tolerance.kelvin(), 0, 1000, "tolerance in K");
    return tolerance;
  }
}
