// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import static org.meltwright.core.material.MaterialProblem.CHECK;

import org.meltwright.units.TemperaturePoint;
import org.meltwright.units.TemperatureRange;

/**
 * A temperature range together with what was measured.
 *
 * <p>A source may give a lower bound only, such as "above 300 °C": then {@link #isOpenAbove()}
 * holds and both ends of the range are that bound.
 *
 * <p>For example:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * DefinedTemperature melting = wax.require(PropertyKey.MELTING_RANGE).value();
 * melting.range(); // 62.0–65.0 °C
 * melting.definition(); // CAPILLARY_RANGE
 * PropertyKey.FLASH_POINT.parse(">= 300 °C, flash-open-cup").isOpenAbove(); // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param range the range
 * @param definition what was measured
 * @param isOpenAbove whether the source gives a lower bound only
 */
public record DefinedTemperature(
    TemperatureRange range, TemperatureDefinition definition, boolean isOpenAbove) {

  private static final double COLDEST = 1;
  private static final double HOTTEST = 1e5;

  /**
   * Keeps of an open range its bound alone. Draws a problem if an end lies below 1 K or above
   * 100,000 K: no material has such a figure.
   */
  public DefinedTemperature {
    range = isOpenAbove ? TemperatureRange.of(range.low()) : range;
    CHECK.between(range.low().kelvin(), COLDEST, HOTTEST, "temperature in K");
    CHECK.between(range.high().kelvin(), COLDEST, HOTTEST, "temperature in K");
  }

  /**
   * Makes a range with both ends stated.
   *
   * @param range the range
   * @param definition what was measured
   * @throws org.meltwright.units.ProblemException if an end lies below 1 K or above 100,000 K
   */
  public DefinedTemperature(TemperatureRange range, TemperatureDefinition definition) {
    this(range, definition, false);
  }

  /**
   * Returns a lower bound.
   *
   * @param bound the lowest value that the source allows
   * @param definition what was measured
   * @return the bound
   * @throws org.meltwright.units.ProblemException if it lies below 1 K or above 100,000 K
   */
  public static DefinedTemperature atLeast(
      TemperaturePoint bound, TemperatureDefinition definition) {
    return new DefinedTemperature(TemperatureRange.of(bound), definition, true);
  }

  @Override
  public String toString() {
    return (isOpenAbove ? "≥ " : "") + range + " (" + definition + ")";
  }
}
