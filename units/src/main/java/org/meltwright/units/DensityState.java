// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The state that a density belongs to: one material has a density for each.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityParser parser = QuantityParser.localeFree();
 * StatedDensity scooped = parser.parseStatedDensity("0.55 g/ml bulk");
 * scooped.state(); // BULK
 * parser.parseStatedDensity("0.55 g/ml"); // throws ProblemException
 * DensityState.MELT.word(); // melt
 * }</pre>
 */
public enum DensityState {
  /** A solid piece without voids. */
  SOLID("solid"),
  /** The melt, at a stated temperature. */
  MELT("melt"),
  /** Loose powder or grains with the air between them, as a scoop measures them. */
  BULK("bulk");

  static final Map<String, DensityState> BY_WORD =
      Map.of(
          "solid", SOLID,
          "fest", SOLID,
          "melt", MELT,
          "molten", MELT,
          "geschmolzen", MELT,
          "bulk", BULK,
          "scooped", BULK,
          "loose", BULK,
          "lose", BULK,
          "geschüttet", BULK);

  private final String word;

  DensityState(String word) {
    this.word = word;
  }

  static @Nullable DensityState find(String word) {
    return BY_WORD.get(word.toLowerCase(Locale.ROOT));
  }

  static boolean endsText(String key) {
    return find(key.substring(key.lastIndexOf(' ') + 1)) != null;
  }

  /**
   * Returns the word that stands behind a density.
   *
   * @return "solid", "melt" or "bulk"
   */
  public String word() {
    return word;
  }
}
