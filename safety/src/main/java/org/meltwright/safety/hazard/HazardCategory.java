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
 * HazardCategory.parse("STOT RE 3 H373"); // throws ProblemException
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 *
 * @param hazardClass the class
 * @param category the category, for example "1B"; the class's own id where it has no categories
 * @param statement the code of its hazard statement, for example "H360Df"
 * @param details routes and organs that the statement names, in English, for example "kidney"
 * @param minimum whether the law marks it as a minimum: better data may be stricter
 * @param undivided whether a sheet says category 1 where the law has 1A and 1B: 1A is taken
 */
public record HazardCategory(
    HazardClass hazardClass,
    Category category,
    String statement,
    List<String> details,
    boolean minimum,
    boolean undivided) {

  /** Draws a problem if class, category and statement do not belong together. */
  public HazardCategory {
    details = List.copyOf(details);
    HazardNotation.requireBelonging(hazardClass, category, statement);
  }

  /**
   * Reads a category in the notation of the law.
   *
   * <p>A name of the class, the category where the class has any, the code of the statement, and
   * routes or organs in brackets, as {@link CopiedSheet} reads them: "skin sens. 1b, h317", "Skin
   * Sens. Cat. 1B H317" and "Sensibilisierung der Haut, Kategorie 1B; H317" are the same. A
   * statement that follows from class and category may be left out. In the letters after a code
   * case matters: H360Fd is not H360FD.
   *
   * <p>A category that the class does not have, and a statement that is not the category's, are
   * refused. Category 1 of mutagenicity, carcinogenicity and reproductive toxicity, as sheets from
   * outside Europe write it, is read as 1A, see {@link #undivided}; 1A and 1B share their limits
   * and statement. Category 5 of acute toxicity (H303, H313) counts under the UN rules only.
   *
   * @param text for example "Skin Sens. 1A H317" or "STOT RE 1 H372 (kidney, bone)"
   * @return the category
   * @throws org.meltwright.units.ProblemException if the text cannot be read, or class, category
   *     and statement do not belong together
   */
  public static HazardCategory parse(String text) {
    return HazardNotation.category(text);
  }

  /** The category with a form of its statement, as H360Df of H360. */
  HazardCategory withStatement(String form) {
    return new HazardCategory(hazardClass, category, form, details, minimum, undivided);
  }

  /** The category as a sheet means it that prints 1 in place of 1A or 1B. */
  HazardCategory asUndivided() {
    return new HazardCategory(hazardClass, category, statement, details, minimum, true);
  }

  static HazardCategory of(HazardClass hazardClass, Category category, String statement) {
    return new HazardCategory(hazardClass, category, statement, List.of(), false, false);
  }

  /**
   * Returns class, category and statement on one line, locale-free.
   *
   * @return for example "skin-sensitisation 1 H317"
   */
  @Override
  public String toString() {
    return (hazardClass.id() + " " + category.id()).strip() + " " + statement;
  }
}
