// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

/**
 * What was measured when a temperature was written down; figures of two definitions do not compare.
 *
 * <p>For example, a calorimeter's peak of the same wax lies above its melting range in a tube:
 *
 * <pre>{@code
 * Material wax = MaterialCatalogue.standard().require("beeswax-yellow");
 * DefinedTemperature tube = wax.require(PropertyKey.MELTING_RANGE).value();
 * DefinedTemperature peak = wax.find(PropertyKey.MELTING_RANGE, "zhang-2011").get().value();
 * tube; // 62.0–65.0 °C (CAPILLARY_RANGE)
 * peak; // 70.34 °C (DSC_PEAK)
 * }</pre>
 */
public enum TemperatureDefinition {
  /** Melting range in a capillary tube. */
  CAPILLARY_RANGE,
  /** Temperature at which the first drop falls from the bulb. */
  DROP_POINT,
  /** Temperature at which a melt sets on a rotating bulb. */
  CONGEALING_POINT,
  /** Plateau of the cooling curve of a melt. */
  COOLING_CURVE,
  /** Peak of a differential scanning calorimetry curve, above the capillary range. */
  DSC_PEAK,
  /** Melting point of a pure substance. */
  MELTING_POINT,
  /** Temperature at which all is clear and liquid. */
  CLEAR_POINT,
  /** Softening by ring and ball, or as a description. */
  SOFTENING,
  /** Glass transition. */
  GLASS_TRANSITION,
  /** First sign of a change: discolouration, mass loss, dehydration, decomposition. */
  ONSET,
  /** Temperature up to which no change is seen. */
  STABLE_UP_TO,
  /** Flash point, closed cup. */
  FLASH_CLOSED_CUP,
  /** Flash point, open cup. */
  FLASH_OPEN_CUP,
  /** Spontaneous ignition in air. */
  AUTOIGNITION,
  /** Boiling at atmospheric pressure. */
  BOILING,
  /** The source does not say how it was measured. */
  NOT_STATED;

  /**
   * Returns the word that a materials file writes.
   *
   * @return lower case, words joined by hyphens, for example {@code capillary-range}
   */
  public String id() {
    return Words.of(this);
  }
}
