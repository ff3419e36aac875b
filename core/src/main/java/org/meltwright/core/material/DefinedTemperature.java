// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.material;

import org.meltwright.units.TemperatureRange;

/**
 * A temperature range together with what was measured.
 *
 * <p>Immutable and thread-safe.
 *
 * @param range the range
 * @param definition what was measured
 */
public record DefinedTemperature(TemperatureRange range, TemperatureDefinition definition) {

  @Override
  public String toString() {
    return range + " (" + definition + ")";
  }
}
