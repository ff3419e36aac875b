// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

/**
 * How a figure came to us: the second axis of evidence, strongest first.
 *
 * <p>Two books on the softening of damar resin, one opened, one remembered:
 *
 * <pre>{@code
 * Material resin = MaterialCatalogue.standard().require("damar");
 * List<Sourced<DefinedTemperature>> softening = resin.figures(PropertyKey.SOFTENING_RANGE);
 * softening.get(0).knowledge(); // READ
 * softening.get(1).knowledge(); // REMEMBERED
 * }</pre>
 */
public enum Knowledge {
  /** Read in the source itself or a faithful copy of it. */
  READ,
  /** Read in another text that restates the source. */
  RESTATED,
  /** Worked out from a figure that was read. */
  DERIVED,
  /** Remembered; the source was not opened. */
  REMEMBERED
}
