// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.hazard;

import java.util.List;

/**
 * A category of a hazard class with its statement, such as skin sensitisation, category 1, H317.
 *
 * <p>A line from section 3 of a safety data sheet:
 *
 * <pre>{@code
 * HazardCategory category = HazardCategory.parse("STOT RE 1 H372 (kidney, bone)");
 * category.hazardClass(); // STOT_REPEATED
 * category.statement(); // H372
 * category.details(); // [kidney, bone]
 * category; // stot-repeated 1 H372
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param hazardClass the class
 * @param category the category, for example "1B"; the class's own id where it has no categories
 * @param statement the code of its hazard statement, for example "H360Df"
 * @param details routes and organs that the statement names, in English, for example "kidney"
 * @param minimum whether the law marks it as a minimum: better data may be stricter
 */
public record HazardCategory(
    HazardClass hazardClass,
    String category,
    String statement,
    List<String> details,
    boolean minimum) {

  /**
   * Copies the details.
   *
   * @param hazardClass the class
   * @param category the category
   * @param statement the code of its hazard statement
   * @param details routes and organs
   * @param minimum whether it is a minimum
   */
  public HazardCategory {
    details = List.copyOf(details);
  }

  /**
   * Reads a category in the notation of the law.
   *
   * @param text for example "Skin Sens. 1A H317" or "STOT RE 1 H372 (kidney, bone)"
   * @return the category
   * @throws org.meltwright.units.ProblemException if the text cannot be read
   */
  public static HazardCategory parse(String text) {
    return HazardNotation.category(text);
  }

  static HazardCategory of(HazardClass hazardClass, String category, String statement) {
    return new HazardCategory(hazardClass, category, statement, List.of(), false);
  }

  /**
   * Returns class, category and statement on one line, locale-free.
   *
   * @return for example "skin-sensitisation 1 H317"
   */
  @Override
  public String toString() {
    return hazardClass.id() + " " + category + " " + statement;
  }
}
