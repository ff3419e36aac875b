// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

import org.meltwright.units.Bilingual;

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
 * softening.get(1).knowledge().inWords(); // from memory, source not opened
 * }</pre>
 */
public enum Knowledge {
  /** Measured by whoever states it, on the material itself. */
  MEASURED("measured"),
  /** Read in the source itself or a faithful copy of it. */
  READ("read in the source or a copy"),
  /** Read in another text that restates the source. */
  RESTATED("restated by another text"),
  /** Worked out from a figure that was read. */
  DERIVED("derived from another figure"),
  /** Remembered; the source was not opened. */
  REMEMBERED("from memory, source not opened");

  private final String words;

  Knowledge(String words) {
    this.words = words;
  }

  /**
   * Returns what a reader is told.
   *
   * @return for example "from memory, source not opened", in both languages
   */
  public Bilingual inWords() {
    return Source.CHECK.name(words);
  }
}
