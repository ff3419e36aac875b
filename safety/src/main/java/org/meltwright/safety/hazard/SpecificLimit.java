// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.OptionalDouble;
import org.meltwright.units.Bilingual;
import org.meltwright.units.Problem;
import org.meltwright.units.ProblemException;

/**
 * A concentration limit that holds for one substance in place of the general one.
 *
 * <p>A limit is reached at its share and holds below the next. One with two ends and one that is
 * open:
 *
 * <pre>{@code
 * SpecificLimit limit = SpecificLimit.parse("Skin Corr. 1B H314 2 to 5");
 * limit.category(); // ONE_B
 * limit.fromPercent(); // 2 %
 * limit.belowPercent(); // 5 %
 * SpecificLimit.parse("Carc. 1B H350i 0.01").belowPercent().isEmpty(); // true
 * SpecificLimit.parse("Carc. 1B H350 150"); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param hazardClass the class
 * @param category the category that the mixture reaches
 * @param statement the code of the hazard statement
 * @param fromPercent the share by mass from which it is reached, in per cent
 * @param belowPercent the share below which it holds, in per cent; empty if it is open
 */
public record SpecificLimit(
    HazardClass hazardClass,
    Category category,
    String statement,
    double fromPercent,
    OptionalDouble belowPercent) {

  /**
   * Draws a problem if class, category and statement do not belong together, or the shares lie
   * outside or out of order.
   */
  public SpecificLimit {
    HazardNotation.requireBelonging(hazardClass, category, statement);
    double below = belowPercent.orElse(Double.POSITIVE_INFINITY);
    boolean ordered = fromPercent > 0 && fromPercent <= 100 && fromPercent < below;
    if (!ordered || (belowPercent.isPresent() && !(below <= 100))) {
      throw new ProblemException(Problem.of(HazardProblem.LIMIT, shown(fromPercent, belowPercent)));
    }
  }

  /** The same shares for category 2. */
  SpecificLimit asSuspected(String suspected) {
    return new SpecificLimit(hazardClass, Category.TWO, suspected, fromPercent, belowPercent);
  }

  /**
   * Reads a limit in the notation of the tables.
   *
   * @param text for example "Skin Corr. 1B H314 2 to 5" or "Carc. 1B H350i 0.01"
   * @return the limit
   * @throws ProblemException if the text cannot be read, class, category and statement do not
   *     belong together, or a share lies outside or out of order
   */
  public static SpecificLimit parse(String text) {
    return HazardNotation.limit(text);
  }

  private static Bilingual shown(double from, OptionalDouble below) {
    Bilingual low = Bilingual.of(from);
    Bilingual all =
        below.isPresent() ? Bilingual.range(low, Bilingual.of(below.getAsDouble())) : low;
    return all.plus(" %");
  }
}
