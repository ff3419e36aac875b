// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

/**
 * A concentration limit that holds for one substance in place of the general one.
 *
 * <p>A limit is reached at its share and holds below the next. One with two ends and one that is
 * open:
 *
 * <pre>{@code
 * SpecificLimit limit = SpecificLimit.parse("Skin Corr. 1B H314 2 to 5");
 * limit.category(); // 1B
 * limit.fromPercent(); // 2 %
 * limit.belowPercent(); // 5 %
 * SpecificLimit.parse("Carc. 1B H350i 0.01").belowPercent() > 100; // true
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param hazardClass the class
 * @param category the category that the mixture reaches
 * @param statement the code of the hazard statement
 * @param fromPercent the share by mass from which it is reached, in per cent
 * @param belowPercent the share below which it holds, in per cent; positive infinity if it is open
 */
public record SpecificLimit(
    HazardClass hazardClass,
    String category,
    String statement,
    double fromPercent,
    double belowPercent) {

  /**
   * Reads a limit in the notation of the tables.
   *
   * @param text for example "Skin Corr. 1B H314 2 to 5" or "Carc. 1B H350i 0.01"
   * @return the limit
   * @throws org.meltwright.units.ProblemException if the text cannot be read
   */
  public static SpecificLimit parse(String text) {
    return HazardNotation.limit(text);
  }
}
