// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.Locale;

/** A hazard pictogram, by the code of the law. */
public enum Pictogram {
  /** Exploding bomb. */
  GHS01,
  /** Flame. */
  GHS02,
  /** Flame over circle. */
  GHS03,
  /** Gas cylinder. */
  GHS04,
  /** Corrosion. */
  GHS05,
  /** Skull and crossbones. */
  GHS06,
  /** Exclamation mark. */
  GHS07,
  /** Health hazard. */
  GHS08,
  /** Environment. */
  GHS09;

  /**
   * Returns what the symbol shows.
   *
   * @param locale the reader's language: German for {@code de}, English for all others
   * @return for example "skull and crossbones"
   */
  public String symbol(Locale locale) {
    return HazardTexts.text("pictogram." + name(), locale);
  }
}
