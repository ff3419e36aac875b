// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.units;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The state of matter that a figure holds for: one material has a density for each.
 *
 * <p>For example:
 *
 * <pre>{@code
 * QuantityParser parser = QuantityParser.localeFree();
 * StatedDensity scooped = parser.parseStatedDensity("0.55 g/ml bulk");
 * scooped.state(); // BULK
 * parser.parseStatedDensity("0.55 g/ml"); // throws ProblemException
 * MaterialState.LIQUID.word(); // melt
 * }</pre>
 */
public enum MaterialState {
  /** Solid, without air between pieces. */
  SOLID("solid"),
  /** Molten, or liquid at room temperature. */
  LIQUID("melt"),
  /** Loose bulk: pieces or powder with the air between them, as a scoop measures them. */
  BULK("bulk");

  static final Map<String, MaterialState> BY_WORD =
      Map.of(
          "solid", SOLID,
          "fest", SOLID,
          "melt", LIQUID,
          "molten", LIQUID,
          "geschmolzen", LIQUID,
          "bulk", BULK,
          "scooped", BULK,
          "loose", BULK,
          "lose", BULK,
          "geschüttet", BULK);

  private final String word;

  MaterialState(String word) {
    this.word = word;
  }

  static @Nullable MaterialState find(String word) {
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
